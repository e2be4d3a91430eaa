package org.gaugeline.ops;

import java.nio.charset.StandardCharsets;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.gaugeline.advice.Advisor;
import org.gaugeline.assembly.HolderCatalogue;
import org.gaugeline.http.Recommendations;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.tables.CatalogueTables;
import org.gaugeline.tables.ReferenceTables;
import org.gaugeline.wording.TemplateWords;
import org.gaugeline.wording.Words;

/**
 * What needs no settings, and so can be done while the framework starts: the tables and the words
 * are read, and one intent is answered, which loads the classes that every answer needs.
 *
 * @param series the built-in holders, without the shop's
 */
record Groundwork(ReferenceData data, HolderCatalogue series, Words words) {
  private static final FutureTask<Groundwork> LAID = new FutureTask<>(Groundwork::lay);

  private static final byte[] LEAST_INTENT =
      """
      {"workpiece":{"material":"C45"},"operation":{"kind":"side-milling"},
       "tool":{"kind":"end-mill","diameterMm":12},"machine":{"interface":"BT40"}}
      """
          .getBytes(StandardCharsets.UTF_8);

  /** Begins in the background. */
  static void begin() {
    Thread thread = new Thread(() -> laid().rehearse(), "groundwork");
    thread.setDaemon(true);
    thread.start();
  }

  /** Does the work here where nobody has begun it; waits where somebody has. */
  static Groundwork laid() {
    LAID.run();
    try {
      return LAID.get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      throw new IllegalStateException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private static Groundwork lay() {
    ReferenceData data = ReferenceTables.load();
    return new Groundwork(data, CatalogueTables.load(data, null), TemplateWords.load());
  }

  private void rehearse() {
    answersLeast(new Recommendations(new Advisor(data, series)::recommend, words, data, series));
  }

  /** Whether the shortest intent is answered. */
  static boolean answersLeast(Recommendations recommendations) {
    return recommendations.answer(LEAST_INTENT).length > 0;
  }
}
