package org.gaugeline.http;

import org.gaugeline.advice.Recommendation;
import org.gaugeline.job.Intent;

/** What the front asks of the engine. */
@FunctionalInterface
public interface RecommendationEngine {
  /**
   * Answers one intent.
   *
   * @throws org.gaugeline.job.IntentFaultException where the intent names what the tables lack, or
   *     contradicts itself in a way that only they can tell
   */
  Recommendation recommend(Intent intent);
}
