package org.gaugeline.mechanics.chatter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.gaugeline.mechanics.chatter.Benchmarks.TWO_PI;
import static org.gaugeline.mechanics.chatter.Benchmarks.radPerS;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.gaugeline.mechanics.cutting.MillingEngagement;
import org.gaugeline.mechanics.receptance.HostMode;
import org.gaugeline.mechanics.receptance.ModalResponse;
import org.gaugeline.mechanics.receptance.TipMode;
import org.gaugeline.mechanics.receptance.TipModel;
import org.gaugeline.mechanics.receptance.TunedMass;
import org.gaugeline.mechanics.receptance.TunedResponse;
import org.junit.jupiter.api.Test;

/** Damping by rubbing flanks in both stability solvers. */
class ProcessDampingTest {
  private static final double RADIUS_M = 8e-3;

  /** Without any length both routes to the zeroth-order solution are one. */
  @Test
  void fadesIntoTheUndampedSolution() {
    SplittableRandom random = new SplittableRandom(71);
    for (int i = 0; i < 300; i++) {
      MillingProcess plain = process(random);
      MillingProcess rubbed = plain.with(new ProcessDamping(1e-14, RADIUS_M));
      TipModel tip = new TipModel(response(random), response(random));
      StabilityLobes one = StabilityLobes.milling(plain, tip);
      StabilityLobes other = StabilityLobes.milling(rubbed, tip);
      double speed = radPerS(Math.exp(random.nextDouble(Math.log(600), Math.log(30_000))));
      double depth = one.limitAt(speed).depthM();
      assertThat(other.limitAt(speed).depthM())
          .as("case %d: followed along frequency against solved by phase", i)
          .isCloseTo(depth, withinPercentage(0.5));
      assertThat(other.guaranteed()).isEqualTo(one.guaranteed());
    }
  }

  /**
   * With one direction that moves, rubbing is viscous damping of its modes: a limit found with it
   * is the limit without it, of a mode with that much more damping. This is how Tyler and Schmitz
   * (J. Manuf. Process. 15 (2013); memory) solve it, by iteration.
   */
  @Test
  void isMoreDampingOfTheMode() {
    SplittableRandom random = new SplittableRandom(72);
    int limited = 0;
    for (int i = 0; i < 200; i++) {
      double length = random.nextDouble(2e-5, 2e-4);
      double omega = TWO_PI * random.nextDouble(300, 3000);
      double stiffness = random.nextDouble(3e6, 3e7);
      double zeta = random.nextDouble(0.01, 0.05);
      MillingProcess plain =
          new MillingProcess(
              random.nextInt(1, 6),
              1.8e9,
              0.3,
              MillingEngagement.down(random.nextDouble(0.2, 1), 1));
      MillingProcess rubbed = plain.with(new ProcessDamping(length, RADIUS_M));
      double speed = radPerS(random.nextDouble(500, 6000));
      TipModel tip = alongNormal(TipMode.ofStiffness(omega, stiffness, zeta));
      double depth = StabilityLobes.milling(rubbed, tip).limitAt(speed).depthM();
      if (Double.isInfinite(depth)) {
        continue;
      }
      limited++;
      double entry = plain.engagement().entryRad();
      double exit = plain.engagement().exitRad();
      double across = (exit - entry) / 2 + (Math.sin(2 * exit) - Math.sin(2 * entry)) / 4;
      double viscous =
          depth * 1.8e9 * length / (speed * RADIUS_M) * plain.teeth() * across / TWO_PI;
      double more = zeta + viscous * omega / (2 * stiffness);
      if (more >= 1) {
        continue;
      }
      TipModel damped = alongNormal(TipMode.ofStiffness(omega, stiffness, more));
      assertThat(StabilityLobes.milling(plain, damped).limitAt(speed).depthM())
          .as("case %d: depth %s m with %s of damping", i, depth, more)
          .isCloseTo(depth, withinPercentage(0.5));
    }
    assertThat(limited).isGreaterThan(50);
  }

  private static TipModel alongNormal(TipMode mode) {
    return new TipModel(new ModalResponse(List.of(), 0), ModalResponse.of(mode));
  }

  /**
   * Second route: semi-discretization. In a slot with three teeth or more the directional factors
   * do not change as the cutter turns, and both must agree; elsewhere their mean errs.
   */
  @Test
  void semiDiscretizationSeesTheSameDamping() {
    ModalResponse response =
        ModalResponse.of(
            TipMode.ofStiffness(TWO_PI * 800, 1.2e7, 0.03),
            TipMode.ofStiffness(TWO_PI * 2100, 0.9e7, 0.02));
    compare(response, 4, MillingEngagement.slot(), 1);
    compare(response, 6, MillingEngagement.slot(), 1);
    compare(response, 6, MillingEngagement.down(0.6, 1), 15);
  }

  private static void compare(
      ModalResponse response, int teeth, MillingEngagement arc, double percent) {
    MillingProcess cut =
        new MillingProcess(teeth, 1.8e9, 0.3, arc, new ProcessDamping(6e-5, RADIUS_M));
    StabilityLobes lobes = StabilityLobes.milling(cut, TipModel.symmetric(response));
    SemiDiscretization exact = new SemiDiscretization(cut, response, response, 400);
    for (double rpm : new double[] {4000, 6000, 9000}) {
      double mean = lobes.limitAt(radPerS(rpm)).depthM();
      SemiDiscreteLimit limit = exact.limit(radPerS(rpm), mean / 4, 4 * mean);
      assertThat(limit.isReached()).isTrue();
      assertThat(limit.depthM())
          .as("%s with %d teeth at %s rpm", arc, teeth, rpm)
          .isCloseTo(mean, withinPercentage(percent));
    }
  }

  /**
   * For tips alike in both directions the limit has a route of its own, along fixed frequencies.
   */
  @Test
  void aPreparedCutGivesTheSameLimits() {
    SplittableRandom random = new SplittableRandom(74);
    for (int i = 0; i < 300; i++) {
      MillingProcess cut =
          process(random).with(new ProcessDamping(random.nextDouble(2e-5, 2e-4), RADIUS_M));
      ModalResponse response = response(random);
      double speed = radPerS(Math.exp(random.nextDouble(Math.log(1000), Math.log(30_000))));
      double depth =
          StabilityLobes.milling(cut, TipModel.symmetric(response)).limitAt(speed).depthM();
      double other =
          new PreparedCut(cut, TWO_PI * 100, TWO_PI * 10_000).limit(response, speed).depthM();
      if (depth < 0.2) {
        assertThat(other).as("case %d", i).isCloseTo(depth, withinPercentage(0.5));
      } else {
        assertThat(other).as("case %d: deeper than any flute", i).isGreaterThan(0.1);
      }
    }
  }

  /** Chip and rubbing flanks depend on phase alone, so that one table serves every speed. */
  @Test
  void onePreparedCutServesAllSpeedsAndTips() {
    SplittableRandom random = new SplittableRandom(76);
    for (int i = 0; i < 10; i++) {
      MillingProcess cut =
          process(random).with(new ProcessDamping(random.nextDouble(2e-5, 2e-4), RADIUS_M));
      PreparedCut often = new PreparedCut(cut, TWO_PI * 100, TWO_PI * 10_000);
      for (int k = 0; k < 30; k++) {
        ModalResponse response = response(random);
        double speed = radPerS(Math.exp(random.nextDouble(Math.log(300), Math.log(40_000))));
        PreparedCut once = new PreparedCut(cut, TWO_PI * 100, TWO_PI * 10_000);
        assertThat(often.limit(response, speed))
            .as("cut %d, limit %d", i, k)
            .isEqualTo(once.limit(response, speed));
      }
    }
  }

  /** What is deeper than what is of interest is not looked for, and nothing else is lost. */
  @Test
  void aLimitIsFoundUpToTheDepthOfInterest() {
    SplittableRandom random = new SplittableRandom(77);
    for (int i = 0; i < 300; i++) {
      MillingProcess cut =
          process(random).with(new ProcessDamping(random.nextDouble(2e-5, 2e-4), RADIUS_M));
      PreparedCut prepared = new PreparedCut(cut, TWO_PI * 100, TWO_PI * 10_000);
      ModalResponse response = response(random);
      double speed = radPerS(Math.exp(random.nextDouble(Math.log(800), Math.log(30_000))));
      double depth = prepared.limit(response, speed).depthM();
      double most = Math.exp(random.nextDouble(Math.log(1e-4), Math.log(1)));
      double upTo = prepared.limit(response, speed, most).depthM();
      if (depth > most) {
        assertThat(upTo).as("case %d, %s m", i, depth).isInfinite();
      } else {
        assertThat(upTo).as("case %d", i).isCloseTo(depth, withinPercentage(1e-3));
      }
    }
  }

  /** The same with a tuned mass in the bar, whose resonances split. */
  @Test
  void aPreparedCutKnowsTunedMasses() {
    SplittableRandom random = new SplittableRandom(75);
    for (int i = 0; i < 400; i++) {
      double first = TWO_PI * random.nextDouble(200, 700);
      double zeta = random.nextDouble(0.006, 0.05);
      double shape = random.nextDouble(0.5, 2);
      TunedResponse tuned =
          new TunedResponse(
              List.of(
                  new HostMode(first, zeta, shape, random.nextDouble(0.2, 1) * shape),
                  new HostMode(
                      first * random.nextDouble(2, 4),
                      zeta,
                      shape,
                      random.nextDouble(-1, 1) * shape)),
              1e-9,
              0,
              1e-9,
              new TunedMass(
                  random.nextDouble(0.02, 0.3),
                  first * random.nextDouble(0.8, 1.2),
                  random.nextDouble(0.02, 0.3)));
      MillingProcess cut =
          process(random).with(new ProcessDamping(random.nextDouble(2e-5, 2e-4), RADIUS_M));
      double speed = radPerS(Math.exp(random.nextDouble(Math.log(800), Math.log(20_000))));
      double depth = StabilityLobes.milling(cut, TipModel.symmetric(tuned)).limitAt(speed).depthM();
      double other =
          new PreparedCut(cut, TWO_PI * 20, TWO_PI * 10_000).limit(tuned, speed).depthM();
      if (depth < 0.2) {
        assertThat(other).as("case %d", i).isCloseTo(depth, withinPercentage(0.5));
      }
    }
  }

  /** Common practice: waves shorter than about a millimetre are rubbed flat, long ones are not. */
  @Test
  void shortWavesAreRubbedFlat() {
    TipModel tip =
        TipModel.symmetric(ModalResponse.of(TipMode.ofStiffness(TWO_PI * 2000, 1e7, 0.02)));
    MillingProcess plain = new MillingProcess(4, 1.8e9, 0.3, MillingEngagement.down(0.5, 1));
    StabilityLobes rubbed =
        StabilityLobes.milling(plain.with(new ProcessDamping(1e-3 / TWO_PI, RADIUS_M)), tip);
    double floor = StabilityLobes.milling(plain, tip).guaranteed().depthM();
    double slow = 0.5e-3 * 2000 / RADIUS_M;
    double fast = 20e-3 * 2000 / RADIUS_M;
    assertThat(rubbed.limitAt(slow).depthM()).isGreaterThan(5 * floor);
    double least =
        IntStream.range(0, 200)
            .mapToDouble(i -> rubbed.limitAt(fast * (1 + 1e-3 * i)).depthM())
            .min()
            .orElseThrow();
    assertThat(least / floor).isBetween(1.0, 1.3);
  }

  /** The floor over an octave of speeds, which holds several lobes, rises as the cut slows down. */
  @Test
  void slowerCutsAreQuieter() {
    SplittableRandom random = new SplittableRandom(73);
    for (int i = 0; i < 10; i++) {
      MillingProcess cut =
          new MillingProcess(
              random.nextInt(1, 4),
              1.8e9,
              0.3,
              MillingEngagement.down(random.nextDouble(0.2, 1), 1),
              new ProcessDamping(8e-5, RADIUS_M));
      StabilityLobes lobes =
          StabilityLobes.milling(
              cut, TipModel.symmetric(ModalResponse.of(mode(random, 900, 3000))));
      double before = 0;
      for (double rpm : new double[] {4000, 2000, 1000, 500}) {
        double floor =
            IntStream.range(0, 120)
                .mapToDouble(k -> lobes.limitAt(radPerS(rpm * (1 + k / 120.0))).depthM())
                .min()
                .orElseThrow();
        assertThat(floor).as("case %d, %s rpm", i, rpm).isGreaterThan(0.98 * before);
        before = floor;
      }
    }
  }

  /** Depth against force: all of the cut's forces scale, so that only their product counts. */
  @Test
  void depthFallsInverselyWithForce() {
    TipModel tip =
        TipModel.symmetric(ModalResponse.of(TipMode.ofStiffness(TWO_PI * 900, 1e7, 0.03)));
    ProcessDamping damping = new ProcessDamping(3e-5, RADIUS_M);
    MillingEngagement arc = MillingEngagement.up(0.4, 1);
    double soft =
        StabilityLobes.milling(new MillingProcess(3, 1e9, 0.3, arc, damping), tip)
            .limitAt(radPerS(4000))
            .depthM();
    double hard =
        StabilityLobes.milling(new MillingProcess(3, 2.5e9, 0.3, arc, damping), tip)
            .limitAt(radPerS(4000))
            .depthM();
    assertThat(soft / hard).isCloseTo(2.5, within(1e-6));
  }

  private static MillingProcess process(SplittableRandom random) {
    double radial = random.nextDouble(0.1, 1);
    MillingEngagement arc =
        random.nextBoolean() ? MillingEngagement.up(radial, 1) : MillingEngagement.down(radial, 1);
    return new MillingProcess(
        random.nextInt(1, 7), random.nextDouble(5e8, 3e9), random.nextDouble(0.1, 0.6), arc);
  }

  private static ModalResponse response(SplittableRandom random) {
    return ModalResponse.of(mode(random, 300, 900), mode(random, 900, 4000));
  }

  private static TipMode mode(SplittableRandom random, double lowHz, double highHz) {
    return TipMode.ofStiffness(
        TWO_PI * random.nextDouble(lowHz, highHz),
        random.nextDouble(3e6, 3e7),
        random.nextDouble(0.01, 0.06));
  }
}
