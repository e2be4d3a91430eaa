package org.gaugeline.mechanics.runout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RunoutStackTest {
  /** Known quantiles of the Rayleigh distribution, in sigma: 1.1774, 2.4477, 3.4394. */
  @ParameterizedTest
  @CsvSource({"0.5, 1.1774", "0.95, 2.4477", "0.9973, 3.4394"})
  void rayleighQuantiles(double probability, double perSigma) {
    RunoutStack stack = new RunoutStack(3e-6);
    double tirM = stack.quantileTirM(probability);
    assertThat(tirM / 6e-6).isCloseTo(perSigma, within(0.0001));
    assertThat(stack.probabilityAtMost(tirM)).isCloseTo(probability, within(1e-12));
  }

  /** Percentiles of ISO 22514-2 (memory) in TIR: X50 = 2.3548σ, X99.865 = 7.2706σ. */
  @Test
  void capabilityPercentiles() {
    RunoutStack stack = new RunoutStack(1);
    assertThat(stack.medianTirM()).isCloseTo(2.3548, within(0.00005));
    assertThat(stack.quantileTirM(0.99865)).isCloseTo(7.2706, within(0.0005));
    assertThat(stack.quantileTirM(0)).isZero();
  }

  /** Collet run-out of ISO 15488 class 2 (0.015 and 0.020 mm) read as a 95 % point. */
  @ParameterizedTest
  @CsvSource({"10, 2.043", "15, 3.064", "20, 4.086"})
  void sigmaFromP95(double tirUm, double sigmaUm) {
    double sigmaM = RunoutStack.sigmaFromP95TirM(tirUm * 1e-6);
    assertThat(sigmaM * 1e6).isCloseTo(sigmaUm, within(0.001));
    assertThat(new RunoutStack(sigmaM).quantileTirM(0.95)).isCloseTo(tirUm * 1e-6, within(1e-15));
  }

  /**
   * Second calculation: spindle 3 µm and 1 µm on 63 mm at 200 mm, module 4 µm and 2 µm on 50 mm at
   * 120 mm, collet 5 µm and 3 µm of slope give 30.9 µm at worst and 13.8 µm as root of the squares;
   * offset and tilt count as separate errors.
   */
  @Test
  void threeJointsWorstAndRootSumSquare() {
    List<RunoutJoint> joints =
        List.of(
            new RunoutJoint(1.5e-6, 1e-6 / 0.063, 0.200),
            new RunoutJoint(2.0e-6, 2e-6 / 0.050, 0.120),
            new RunoutJoint(2.5e-6, 0.025e-3, 0.060));
    assertThat(RunoutStack.worstCaseTirM(joints) * 1e6).isCloseTo(30.95, within(0.01));
    assertThat(RunoutStack.rootSumSquareTirM(joints) * 1e6).isCloseTo(13.8, within(0.05));
  }

  /** Seeded sampling of the vectors themselves; sampling error of a probability is 0.0011. */
  @Test
  void agreesWithSampledVectors() {
    List<RunoutJoint> joints =
        List.of(new RunoutJoint(2e-6, 1e-5, 0.2), new RunoutJoint(3e-6, 3e-5, 0.1));
    RunoutStack stack = RunoutStack.of(joints);
    double limitM = stack.quantileTirM(0.8);
    SplittableRandom random = new SplittableRandom(61);
    int trials = 200_000;
    int within = 0;
    for (int i = 0; i < trials; i++) {
      double x = 0;
      double y = 0;
      for (RunoutJoint joint : joints) {
        x += joint.offsetM() * random.nextGaussian();
        x += joint.armM() * joint.tiltRad() * random.nextGaussian();
        y += joint.offsetM() * random.nextGaussian();
        y += joint.armM() * joint.tiltRad() * random.nextGaussian();
      }
      within += 2 * Math.hypot(x, y) <= limitM ? 1 : 0;
    }
    assertThat((double) within / trials).as("seed 61").isCloseTo(0.8, within(0.005));
  }

  @Test
  void jointsAndArmsNeverTakeRunoutAway() {
    SplittableRandom random = new SplittableRandom(67);
    for (int i = 0; i < 300; i++) {
      List<RunoutJoint> joints = new ArrayList<>();
      List<RunoutJoint> longer = new ArrayList<>();
      for (int j = 0; j < 3; j++) {
        double offsetM = random.nextDouble(0, 1e-5);
        double tiltRad = random.nextDouble(0, 1e-4);
        double armM = random.nextDouble(0, 0.3);
        joints.add(new RunoutJoint(offsetM, tiltRad, armM));
        longer.add(new RunoutJoint(offsetM, tiltRad, armM + 0.05));
      }
      RunoutStack stack = RunoutStack.of(joints);
      assertThat(stack.medianTirM())
          .as("seed 67, joint added to %s", joints)
          .isGreaterThanOrEqualTo(RunoutStack.of(joints.subList(0, 2)).medianTirM());
      assertThat(RunoutStack.of(joints.subList(0, 2)).with(joints.get(2)).sigmaM())
          .as("seed 67, %s", joints)
          .isCloseTo(stack.sigmaM(), within(1e-18));
      assertThat(RunoutStack.of(longer).medianTirM())
          .as("seed 67, longer arms on %s", joints)
          .isGreaterThanOrEqualTo(stack.medianTirM());
      assertThat(RunoutStack.worstCaseTirM(joints))
          .as("seed 67, %s", joints)
          .isGreaterThanOrEqualTo(RunoutStack.rootSumSquareTirM(joints));
    }
  }

  @Test
  void stackWithoutScatterIsCertain() {
    RunoutStack still = RunoutStack.of(List.of());
    assertThat(still.medianTirM()).isZero();
    assertThat(still.probabilityAtMost(0)).isEqualTo(1);
    assertThat(still.probabilityAtMost(-1e-6)).isZero();
  }

  /** Geometry: c = 10 µm, l = 40 mm, L = 80 mm bounds the eccentricity to 25 µm. */
  @Test
  void shankLooseInItsBore() {
    ClearanceFit fit = new ClearanceFit(10e-6, 0.040);
    assertThat(fit.eccentricityBoundM(0.080)).isCloseTo(25e-6, within(1e-15));
    assertThat(fit.eccentricityBoundM(0)).isCloseTo(5e-6, within(1e-15));
  }

  @Test
  void rangesAreChecked() {
    assertThatThrownBy(() -> new RunoutStack(1e-6).quantileTirM(1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("probability is 1.0");
    assertThatThrownBy(() -> new RunoutJoint(-1e-6, 0, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("offsetM is -1.0E-6");
  }
}
