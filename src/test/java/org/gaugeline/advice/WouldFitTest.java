package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.gaugeline.assembly.GivenAssembly.Component;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.job.StockEntry.InlineHolder;
import org.gaugeline.quantity.UnitSuffix;
import org.junit.jupiter.api.Test;

/**
 * A change that would make an unfit assembly fit does so as it is sent, and is the smallest: a
 * thousandth of the value less of it brings an error back.
 */
public class WouldFitTest {
  private static final int CASES = 600;
  private static final double PART = 1e-3;
  private static final String STICK_OUT = "/assembly/stickOutMm";

  /** Draws an assembly for a random job, on purpose not always a good one. */
  public static Scene scene(long seed) {
    SplittableRandom random = new SplittableRandom(seed ^ 0x5ca1ab1eL);
    Intents intents = RandomIntents.ofSeed(seed);
    String spindle = intents.text("/machine/interface");
    double shankM = intents.number("/tool/shank/diameterMm") * 1e-3;
    List<HolderBody> holders =
        Bench.CATALOGUE.byInterface().getOrDefault(spindle, List.of()).stream()
            .filter(holder -> holder.takes(shankM) || random.nextInt(20) == 0)
            .toList();
    HolderBody holder = holders.get(random.nextInt(holders.size()));
    Scene scene =
        random.nextBoolean()
            ? Scene.of(intents, holder)
            : Scene.of(intents)
                .plus(null, null, InlineHolder.NONE.withFamily(holder.family().id()));
    if (random.nextInt(3) == 0) {
      scene =
          scene
              .without("/operation/spindleSpeedRpm")
              .with("/operation/cuttingSpeedMPerMin", random.nextDouble(30, 400));
    }
    if (random.nextInt(4) == 0 && intents.has("/operation/feedPerToothMm")) {
      double feed = intents.number("/operation/feedPerToothMm");
      scene =
          scene
              .without("/operation/feedPerToothMm")
              .with("/operation/feedPerRevMm", feed * random.nextDouble(2, 12));
    }
    double overall = intents.number("/tool/overallLengthMm");
    return random.nextBoolean()
        ? scene
        : scene.standingOutMm(overall * random.nextDouble(0.3, 0.95));
  }

  @Test
  void everyChangeMakesItFitAndNoneIsLargerThanNeeded() {
    List<String> wrong = new ArrayList<>();
    int unfit = 0;
    int changes = 0;
    for (long seed = 0; seed < CASES; seed++) {
      Scene scene = scene(seed);
      if (scene.judged().verdict() != Verdict.UNFIT) {
        continue;
      }
      unfit++;
      for (Recommendation.Change change : scene.assessed().wouldFitIf()) {
        changes++;
        check(seed, scene, change, wrong);
      }
    }
    assertThat(unfit).as("unfit cases").isGreaterThanOrEqualTo(200);
    assertThat(changes).as("changes proposed").isGreaterThanOrEqualTo(200);
    assertThat(wrong).as("of %d changes for %d unfit cases", changes, unfit).isEmpty();
  }

  private static void check(
      long seed, Scene scene, Recommendation.Change change, List<String> wrong) {
    String name = "seed " + seed + " " + change;
    if (changed(scene, change.pointer(), change.to()).judged().verdict() == Verdict.UNFIT) {
      wrong.add(name + " leaves an error");
    }
    if (change.to() instanceof Double to && change.from() instanceof Double from) {
      double less = to > from ? Math.max(from, to * (1 - PART)) : Math.min(from, to * (1 + PART));
      if (changed(scene, change.pointer(), less).judged().verdict() != Verdict.UNFIT) {
        wrong.add(name + " is larger than needed");
      }
    }
  }

  /** The request with a member set, as a caller would set it. */
  private static Scene changed(Scene scene, String pointer, Object to) {
    if (to instanceof Double si) {
      String name = pointer.substring(pointer.lastIndexOf('/') + 1);
      double sent = Objects.requireNonNull(UnitSuffix.findOf(name)).fromSi(si);
      return pointer.equals(STICK_OUT) ? scene.standingOutMm(sent) : scene.with(pointer, sent);
    }
    Component now = scene.given().components().get(0);
    assertThat(pointer).startsWith(now.pointer());
    return pointer.endsWith("/ref")
        ? Scene.of(scene.intents(), (String) to).standingAs(scene)
        : Scene.of(scene.intents())
            .plus(null, null, now.details().withFamily((String) to))
            .standingAs(scene);
  }
}
