package org.gaugeline.http;

import org.gaugeline.advice.Recommendation;
import org.gaugeline.job.Intent;

/** What the front asks of the engine. */
@FunctionalInterface
public interface RecommendationEngine {
  /**
   * Answers one intent.
   *
   * @throws org.gaugeline.job.IntentFaultException where too little is said of a holder in stock
   */
  Recommendation recommend(Intent intent);
}
