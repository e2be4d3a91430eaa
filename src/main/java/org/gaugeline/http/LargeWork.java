package org.gaugeline.http;

import jakarta.annotation.PreDestroy;
import jakarta.inject.Singleton;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.Executor;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Works on large bodies beside the event loop: as many at once as there are processors, and no more
 * waiting than a caller has patience for. What comes on top is refused with a {@link
 * java.util.concurrent.RejectedExecutionException}.
 */
@Singleton
public class LargeWork implements Executor {
  private final ThreadPoolExecutor workers;

  LargeWork(@ConfigProperty(name = "gaugeline.recommendations.max-waiting") int maxWaiting) {
    int processors = Runtime.getRuntime().availableProcessors();
    this.workers =
        new ThreadPoolExecutor(
            processors,
            processors,
            1,
            TimeUnit.MINUTES,
            new ArrayBlockingQueue<>(maxWaiting),
            work -> new Thread(work, "large-work"));
    workers.allowCoreThreadTimeOut(true);
  }

  @Override
  public void execute(Runnable work) {
    workers.execute(work);
  }

  @PreDestroy
  void finish() {
    workers.shutdown();
  }
}
