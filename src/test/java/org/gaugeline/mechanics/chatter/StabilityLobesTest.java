package org.gaugeline.mechanics.chatter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.gaugeline.mechanics.chatter.Benchmarks.TWO_PI;
import static org.gaugeline.mechanics.chatter.Benchmarks.radPerS;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.gaugeline.mechanics.cutting.MillingEngagement;
import org.gaugeline.mechanics.receptance.ModalResponse;
import org.gaugeline.mechanics.receptance.SampledResponse;
import org.gaugeline.mechanics.receptance.TipMode;
import org.gaugeline.mechanics.receptance.TipModel;
import org.gaugeline.mechanics.receptance.TipResponse;
import org.junit.jupiter.api.Test;

class StabilityLobesTest {
  /**
   * Data of Altintas 2012, p. 162 (published script); limits computed by a second route. The book's
   * experiment (memory): 3 mm chatters near 1448 Hz at 9500 rpm and is stable at 14 000.
   */
  @Test
  void bookExample() {
    StabilityLobes lobes = StabilityLobes.milling(Benchmarks.BOOK_CUT, Benchmarks.BOOK_TIP);
    double[] rpm = {5000, 7000, 9500, 11_000, 14_000};
    double[] depthMm = {1.028, 2.222, 1.021, 2.127, 5.048};
    double[] hz = {1437, 1481, 1444, 1411, 1537};
    for (int i = 0; i < rpm.length; i++) {
      ChatterLimit limit = lobes.limitAt(radPerS(rpm[i]));
      assertThat(limit.depthM() * 1e3).as("%s rpm", rpm[i]).isCloseTo(depthMm[i], within(6e-4));
      assertThat(limit.chatterHz()).as("%s rpm", rpm[i]).isCloseTo(hz[i], within(0.6));
    }
    assertThat(lobes.guaranteed().depthM()).isCloseTo(1.015e-3, within(6e-7));
    assertThat(lobes.guaranteed().chatterHz()).isCloseTo(1441, within(0.6));
    assertThat(lobes.limitAt(radPerS(9500)).depthM()).isLessThan(3e-3);
    assertThat(lobes.limitAt(radPerS(9500)).chatterHz()).isCloseTo(1448, within(8.0));
    assertThat(lobes.limitAt(radPerS(14_000)).depthM()).isGreaterThan(3e-3);
  }

  /**
   * Example of Altintas and Budak 1995 with its data from memory: floors of our own computation, to
   * notice changes, not a comparison with the paper.
   */
  @Test
  void floorsOfTheFirstPapersExampleStandStill() {
    TipModel tip =
        new TipModel(
            ModalResponse.of(TipMode.ofStiffness(TWO_PI * 603, 5.59e6, 0.039)),
            ModalResponse.of(TipMode.ofStiffness(TWO_PI * 666, 5.715e6, 0.035)));
    ChatterLimit up =
        StabilityLobes.milling(new MillingProcess(3, 600e6, 0.07, MillingEngagement.up(1, 2)), tip)
            .guaranteed();
    ChatterLimit down =
        StabilityLobes.milling(
                new MillingProcess(3, 600e6, 0.07, MillingEngagement.down(1, 2)), tip)
            .guaranteed();
    assertThat(up.depthM()).isCloseTo(1.087e-3, within(1e-6));
    assertThat(up.chatterHz()).isCloseTo(633, within(0.5));
    assertThat(down.depthM()).isCloseTo(3.519e-3, within(1e-6));
    assertThat(down.chatterHz()).isCloseTo(606.5, within(0.5));
  }

  /** Quarter immersion in the style of Schmitz and Smith 2009, ch. 4 (set-up memory, computed). */
  @Test
  void meanAngleEstimateIsOptimistic() {
    TipModel tip = TipModel.symmetric(Benchmarks.SYMMETRIC);
    StabilityLobes line = StabilityLobes.averageAngle(Benchmarks.QUARTER_UP, tip);
    StabilityLobes plane = StabilityLobes.milling(Benchmarks.QUARTER_UP, tip);
    assertThat(line.guaranteed().depthM()).isCloseTo(1.743e-3, within(1e-6));
    assertThat(line.guaranteed().chatterHz()).isCloseTo(509.9, within(0.1));
    assertThat(plane.guaranteed().depthM()).isCloseTo(1.314e-3, within(1e-6));
    double[] rpm = {3000, 4000, 5000};
    double[] lineMm = {2.55, 2.67, 3.16};
    double[] planeMm = {1.42, 2.86, 1.46};
    for (int i = 0; i < rpm.length; i++) {
      assertThat(line.limitAt(radPerS(rpm[i])).depthM() * 1e3).isCloseTo(lineMm[i], within(6e-3));
      assertThat(plane.limitAt(radPerS(rpm[i])).depthM() * 1e3).isCloseTo(planeMm[i], within(6e-3));
    }
  }

  /**
   * Textbook turning problem (data and plot published): the plot reads 7.3 and 9.6 mm within 0.3;
   * the floors 7.18 mm at 253 Hz and 9.46 mm at 151.5 Hz are computed.
   */
  @Test
  void turningProblem() {
    double cosine30 = Math.cos(Math.toRadians(30));
    double cosine45 = Math.cos(Math.toRadians(-45));
    StabilityLobes lobes =
        StabilityLobes.boring(
            1000e6,
            List.of(
                new DirectedResponse(
                    ModalResponse.of(TipMode.ofStiffness(TWO_PI * 250, 226e6, 0.012)),
                    cosine30 * cosine30),
                new DirectedResponse(
                    ModalResponse.of(TipMode.ofStiffness(TWO_PI * 150, 213e6, 0.010)),
                    cosine45 * cosine45)));
    ChatterLimit floor = lobes.guaranteed();
    assertThat(floor.depthM()).isCloseTo(7.18e-3, within(6e-6)).isCloseTo(7.3e-3, within(3e-4));
    assertThat(floor.chatterHz()).isCloseTo(253, within(0.1));
    double second =
        IntStream.range(0, 1000)
            .mapToDouble(i -> lobes.depthAtFrequencyM(TWO_PI * (150 + 0.005 * i)))
            .min()
            .orElseThrow();
    assertThat(second).isCloseTo(9.46e-3, within(6e-6)).isCloseTo(9.6e-3, within(3e-4));
  }

  /**
   * One mode: floor kζ(1 + ζ)·2/(K µ) (Tlusty; memory), and b at other speeds is never below it.
   */
  @Test
  void boringOneModeHasTlustysFloor() {
    ModalResponse mode = ModalResponse.of(TipMode.ofStiffness(TWO_PI * 400, 5e6, 0.03));
    StabilityLobes lobes = StabilityLobes.boring(2000e6, List.of(new DirectedResponse(mode, 0.6)));
    double floor = 5e6 * 0.03 * 1.03 * 2 / (2000e6 * 0.6);
    assertThat(lobes.guaranteed().depthM()).isCloseTo(floor, withinPercentage(1e-4));
    for (double rpm = 300; rpm < 20_000; rpm *= 1.03) {
      assertThat(lobes.limitAt(radPerS(rpm)).depthM()).isGreaterThan(floor * (1 - 1e-6));
    }
  }

  @Test
  void agreesWithTheLobesDrawnByFrequency() {
    MillingProcess slot = new MillingProcess(3, 900e6, 0.3, MillingEngagement.slot());
    for (MillingProcess cut : List.of(Benchmarks.BOOK_CUT, slot)) {
      StabilityLobes lobes = StabilityLobes.milling(cut, Benchmarks.BOOK_TIP);
      ClassicalLobes classical =
          new ClassicalLobes(cut, Benchmarks.BOOK_TIP, TWO_PI * 0.25, TWO_PI * 5000);
      for (double rpm : new double[] {2300, 4100, 6700, 8200, 12_500, 17_000, 22_000}) {
        assertThat(lobes.limitAt(radPerS(rpm)).depthM())
            .as("%s teeth, %s rpm", cut.teeth(), rpm)
            .isCloseTo(classical.limitM(radPerS(rpm)), withinPercentage(0.2));
      }
    }
  }

  @Test
  void guaranteedDepthIsTheLeastOverAllSpeeds() {
    long seed = 81;
    SplittableRandom random = new SplittableRandom(seed);
    for (int run = 0; run < 40; run++) {
      TipModel tip = new TipModel(randomResponse(random), randomResponse(random));
      StabilityLobes lobes = StabilityLobes.milling(randomCut(random), tip);
      double floor = lobes.guaranteed().depthM();
      double least = Double.POSITIVE_INFINITY;
      for (double rpm = 1500; rpm < 4000; rpm *= 1.001) {
        least = Math.min(least, lobes.limitAt(radPerS(rpm)).depthM());
      }
      assertThat(least / floor).as("seed %s run %s", seed, run).isBetween(1 - 1e-6, 1.02);
    }
  }

  /**
   * Twice the stiffness at the same damping carries twice the depth; twice the force half of it.
   */
  @Test
  void depthGrowsWithStiffnessAndFallsWithForce() {
    long seed = 82;
    SplittableRandom random = new SplittableRandom(seed);
    for (int run = 0; run < 40; run++) {
      double hz = between(random, 300, 3000);
      double k = between(random, 2e6, 4e7);
      double zeta = between(random, 0.01, 0.08);
      MillingProcess cut = randomCut(random);
      MillingProcess harder =
          new MillingProcess(
              cut.teeth(), 2 * cut.tangentialPa(), cut.radialRatio(), cut.engagement());
      double speed = radPerS(between(random, 1000, 20_000));
      double depth = limit(cut, hz, k, zeta, speed);
      String where = "seed " + seed + " run " + run;
      assertThat(limit(cut, hz, 2 * k, zeta, speed) / depth).as(where).isCloseTo(2, within(1e-6));
      assertThat(limit(harder, hz, k, zeta, speed) / depth).as(where).isCloseTo(0.5, within(1e-6));
      // Time scaled: twice the frequency at twice the speed is the same cut.
      assertThat(limit(cut, 2 * hz, k, zeta, 2 * speed) / depth)
          .as(where)
          .isCloseTo(1, within(1e-6));
    }
  }

  private static double limit(
      MillingProcess cut, double hz, double k, double zeta, double spindleRadPerS) {
    ModalResponse mode = ModalResponse.of(TipMode.ofStiffness(TWO_PI * hz, k, zeta));
    return StabilityLobes.milling(cut, TipModel.symmetric(mode)).limitAt(spindleRadPerS).depthM();
  }

  @Test
  void sampledResponseGivesTheSameLimits() {
    TipModel sampled = new TipModel(sampled(Benchmarks.BOOK_X), sampled(Benchmarks.BOOK_Y));
    StabilityLobes modal = StabilityLobes.milling(Benchmarks.BOOK_CUT, Benchmarks.BOOK_TIP);
    StabilityLobes samples = StabilityLobes.milling(Benchmarks.BOOK_CUT, sampled);
    for (double rpm = 3000; rpm < 16_000; rpm += 370) {
      assertThat(samples.limitAt(radPerS(rpm)).depthM())
          .as("%s rpm", rpm)
          .isCloseTo(modal.limitAt(radPerS(rpm)).depthM(), withinPercentage(0.1));
    }
    assertThat(samples.guaranteed().depthM())
        .isCloseTo(modal.guaranteed().depthM(), withinPercentage(0.05));
  }

  private static SampledResponse sampled(TipResponse response) {
    double[] omega = IntStream.range(50, 8000).mapToDouble(i -> TWO_PI * 0.5 * i).toArray();
    double[] re = new double[omega.length];
    double[] im = new double[omega.length];
    double[] g = new double[2];
    for (int i = 0; i < omega.length; i++) {
      response.at(omega[i], g, 0);
      re[i] = g[0];
      im[i] = g[1];
    }
    return new SampledResponse(omega, re, im);
  }

  @Test
  void chartIsTheLimitAtEachSpeed() {
    StabilityLobes lobes = StabilityLobes.milling(Benchmarks.BOOK_CUT, Benchmarks.BOOK_TIP);
    double[] speed = IntStream.range(0, 50).mapToDouble(i -> radPerS(4000 + 200 * i)).toArray();
    double[] depth = new double[50];
    double[] chatter = new double[50];
    lobes.limits(speed, depth, chatter);
    for (int i = 0; i < speed.length; i++) {
      ChatterLimit limit = lobes.limitAt(speed[i]);
      assertThat(depth[i]).isEqualTo(limit.depthM());
      assertThat(chatter[i]).isEqualTo(limit.chatterRadPerS());
    }
    assertThatThrownBy(() -> lobes.limits(speed, depth, new double[3]))
        .hasMessageContaining("50, 50 and 3");
  }

  /** Between the lobes of a one-mode tip the pockets lie near f_n/(N k), the first ones deepest. */
  @Test
  void bestSpeedsLieWhereTheToothFrequencyMeetsTheMode() {
    StabilityLobes lobes =
        StabilityLobes.milling(Benchmarks.QUARTER_UP, TipModel.symmetric(Benchmarks.SYMMETRIC));
    List<StablePocket> pockets =
        StablePockets.best(lobes, radPerS(2000), radPerS(8200), 300, 12, 3);
    assertThat(pockets).hasSize(3);
    for (int lobe = 1; lobe <= 3; lobe++) {
      StablePocket pocket = pockets.get(lobe - 1);
      double rpm = pocket.spindleRadPerS() * 60 / TWO_PI;
      assertThat(rpm * lobe).isCloseTo(500 * 60 / 4.0, withinPercentage(3));
      assertThat(pocket.depthM()).isEqualTo(lobes.limitAt(pocket.spindleRadPerS()).depthM());
      for (double off : new double[] {0.97, 1.03}) {
        assertThat(lobes.limitAt(off * pocket.spindleRadPerS()).depthM())
            .isLessThan(pocket.depthM());
      }
    }
    assertThatThrownBy(() -> StablePockets.best(lobes, 10, 10, 300, 12, 3))
        .hasMessageContaining("highRadPerS - lowRadPerS");
  }

  /** A few samples and straight lines find the pockets that all samples find. */
  @Test
  void coarseLobesKnowWhereThePocketsAre() {
    SplittableRandom random = new SplittableRandom(17);
    for (int i = 0; i < 60; i++) {
      MillingProcess cut =
          new MillingProcess(
              random.nextInt(2, 6), 1.8e9, 0.3, MillingEngagement.down(between(random, 0.2, 1), 1));
      TipModel tip = TipModel.symmetric(randomResponse(random));
      StabilityLobes lobes = StabilityLobes.milling(cut, tip);
      double top = radPerS(between(random, 6000, 30_000));
      StablePocket best = StablePockets.best(lobes, 0.1 * top, top, 400, 12, 1).get(0);
      StablePocket found =
          StablePockets.best(StabilityLobes.coarseMilling(cut, tip), 0.1 * top, top, 40, 5, 1)
              .get(0);
      assertThat(lobes.limitAt(found.spindleRadPerS()).depthM())
          .as("case %d: depth at the speed that coarse lobes find", i)
          .isGreaterThan(0.7 * best.depthM());
    }
  }

  @Test
  void rigidTipHasNoLimit() {
    ModalResponse rigid = ModalResponse.of();
    StabilityLobes lobes = StabilityLobes.milling(Benchmarks.BOOK_CUT, new TipModel(rigid, rigid));
    assertThat(lobes.limitAt(100).depthM()).isInfinite();
    assertThat(lobes.guaranteed().depthM()).isInfinite();
    assertThatThrownBy(() -> lobes.limitAt(0)).hasMessageContaining("spindleRadPerS is 0.0");
    assertThatThrownBy(() -> new DirectedResponse(rigid, 2)).hasMessageContaining("factor is 2.0");
  }

  private static ModalResponse randomResponse(SplittableRandom random) {
    return ModalResponse.of(
        TipMode.ofStiffness(
            TWO_PI * between(random, 400, 900),
            between(random, 3e6, 2e7),
            between(random, 0.01, 0.05)),
        TipMode.ofStiffness(
            TWO_PI * between(random, 1000, 2500),
            between(random, 5e6, 5e7),
            between(random, 0.01, 0.05)));
  }

  private static MillingProcess randomCut(SplittableRandom random) {
    double width = between(random, 0.1, 1);
    MillingEngagement engagement =
        random.nextBoolean() ? MillingEngagement.up(width, 1) : MillingEngagement.down(width, 1);
    return new MillingProcess(
        random.nextInt(1, 7), between(random, 5e8, 3e9), between(random, 0.1, 0.6), engagement);
  }

  private static double between(SplittableRandom random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }
}
