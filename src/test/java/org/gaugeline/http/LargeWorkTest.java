package org.gaugeline.http;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.RejectedExecutionException;
import org.junit.jupiter.api.Test;

/** What comes on top of a full queue is refused at once, and told when to come back. */
@QuarkusTest
class LargeWorkTest {
  private static final String ADDRESS = "/v1/recommendations";
  private static final String LEAST =
      """
      {"workpiece": {"material": "C45"}, "operation": {"kind": "side-milling"},
       "tool": {"kind": "end-mill", "diameterMm": 12}, "machine": {"interface": "BT40"}}
      """;

  @Inject LargeWork largeWork;

  @Test
  void refusesLargeBodiesWhileTheQueueIsFull() {
    String large = LEAST + " ".repeat(40_000);
    CountDownLatch released = new CountDownLatch(1);
    try {
      fill(released);
      Response refused = post(large);
      assertThat(refused.statusCode()).isEqualTo(503);
      assertThat(refused.header("Retry-After")).isEqualTo("1");
      assertThat(Problems.problem(refused).path("type").asText()).endsWith(":overloaded");
      assertThat(post(LEAST).statusCode()).as("small bodies do not wait").isEqualTo(200);
    } finally {
      released.countDown();
    }
    assertThat(accepted(large)).isEqualTo(200);
  }

  /** Every worker waits, and then the queue behind them is filled until nothing more is taken. */
  private void fill(CountDownLatch released) {
    int workers = Runtime.getRuntime().availableProcessors();
    CountDownLatch begun = new CountDownLatch(workers);
    for (int i = 0; i < workers; i++) {
      largeWork.execute(
          () -> {
            begun.countDown();
            await(released);
          });
    }
    await(begun);
    boolean full = false;
    while (!full) {
      try {
        largeWork.execute(() -> await(released));
      } catch (RejectedExecutionException e) {
        full = true;
      }
    }
  }

  private static void await(CountDownLatch released) {
    try {
      released.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** The queue empties in its own time. */
  private static int accepted(String body) {
    int status = 503;
    for (int attempt = 0; status == 503 && attempt < 1000; attempt++) {
      status = post(body).statusCode();
    }
    return status;
  }

  private static Response post(String body) {
    return given().contentType("application/json").body(body).post(ADDRESS);
  }
}
