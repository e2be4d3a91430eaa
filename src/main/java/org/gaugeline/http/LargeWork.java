package org.gaugeline.http;

import io.smallrye.mutiny.Uni;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Singleton;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;

/**
 * Works on large bodies beside the event loop: as many at once as there are processors, and no more
 * waiting than a caller has patience for. What comes on top is refused at once.
 */
@Singleton
public class LargeWork implements Executor {
  private static final Logger LOG = Logger.getLogger(LargeWork.class);

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

  /**
   * Hands over work that ends in an answer.
   *
   * @throws ProblemException where the queue is full
   */
  <T> Uni<T> beside(Supplier<T> work) {
    try {
      return Uni.createFrom().completionStage(CompletableFuture.supplyAsync(work, this));
    } catch (RejectedExecutionException e) {
      LOG.debug("too much large work at once", e);
      throw new ProblemException(Problem.overloaded());
    }
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
