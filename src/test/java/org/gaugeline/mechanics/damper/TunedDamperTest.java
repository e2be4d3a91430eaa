package org.gaugeline.mechanics.damper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.gaugeline.mechanics.beam.BeamChain;
import org.gaugeline.mechanics.beam.BeamMaterial;
import org.gaugeline.mechanics.beam.BeamSegment;
import org.gaugeline.mechanics.beam.BendingModes;
import org.gaugeline.mechanics.beam.ReducedChain;
import org.gaugeline.mechanics.beam.ReducedModes;
import org.junit.jupiter.api.Test;

class TunedDamperTest {
  /** Peak √(1 + 2/µ) (Den Hartog; memory); 6.408 and 6.446 computed by a second route. */
  @Test
  void classicalTuningHasDenHartogsPeak() {
    double peak = DamperGain.largestResponse(TunedDamper.denHartog(0.05), 0);
    assertThat(peak).isCloseTo(6.408, within(1e-3)).isCloseTo(Math.sqrt(41), withinPercentage(0.1));
    // The damping that relates to the host, taken for the absorber's by mistake.
    double mistaken = Math.sqrt(3 * 0.05 / (8 * Math.pow(1.05, 3)));
    assertThat(DamperGain.largestResponse(new TunedDamper(0.05, 1 / 1.05, mistaken), 0))
        .isCloseTo(6.446, within(1e-3));
  }

  /** Den Hartog's fixed points: with f = 1/(1 + µ) two heights do not depend on the damping. */
  @Test
  void responsePassesTheFixedPoints() {
    double mu = 0.05;
    double root = Math.sqrt(mu / (2 + mu));
    double[] one = new double[2];
    double[] two = new double[2];
    for (double sign : new double[] {-1, 1}) {
      double r = Math.sqrt((1 + sign * root) / (1 + mu));
      new TunedDamper(mu, 1 / (1 + mu), 0.03).response(r, 0, one);
      new TunedDamper(mu, 1 / (1 + mu), 0.4).response(r, 0, two);
      assertThat(Math.hypot(one[0], one[1]))
          .isCloseTo(Math.hypot(two[0], two[1]), withinPercentage(1e-6))
          .isCloseTo(Math.sqrt(1 + 2 / mu), withinPercentage(1e-6));
    }
  }

  /** Sims 2007 (memory) against the numerical optimum: f within 0.03 %, depth within 0.2 %. */
  @Test
  void chatterTuningIsTheNumericalOptimumOfAnUndampedHost() {
    for (double mu : new double[] {0.01, 0.05, 0.1}) {
      TunedDamper best = DamperGain.optimum(mu, 0);
      assertThat(TunedDamper.chatter(mu).frequencyRatio())
          .isCloseTo(best.frequencyRatio(), withinPercentage(0.03));
      assertThat(TunedDamper.leastNegativeRealUndamped(mu))
          .isCloseTo(DamperGain.negativeReal(best, 0), withinPercentage(0.2));
      assertThat(DamperGain.negativeReal(TunedDamper.chatter(mu), 0))
          .isCloseTo(DamperGain.negativeReal(best, 0), withinPercentage(1));
    }
  }

  /**
   * Gain in one-mode critical depth, optimum and classical tuning (computed by one other route).
   */
  @Test
  void gainsAsTabled() {
    double[] mu = {0.01, 0.02, 0.05, 0.10, 0.20};
    double[] host = {0.01, 0.02, 0.03, 0.05};
    double[][] optimum = {
      {4.7, 2.8, 2.2, 1.7},
      {6.5, 3.7, 2.8, 2.1},
      {10.2, 5.6, 4.1, 2.9},
      {15.0, 8.0, 5.7, 3.8},
      {22.6, 11.9, 8.3, 5.4}
    };
    double[][] classical = {
      {3.3, 2.1, 1.7, 1.3},
      {4.5, 2.7, 2.0, 1.6},
      {6.9, 3.9, 2.9, 2.1},
      {9.8, 5.3, 3.8, 2.7},
      {14.1, 7.5, 5.3, 3.6}
    };
    for (int i = 0; i < mu.length; i++) {
      for (int j = 0; j < host.length; j++) {
        TunedDamper best = DamperGain.optimum(mu[i], host[j]);
        String where = "mass ratio " + mu[i] + ", host damping " + host[j];
        assertThat(DamperGain.of(best, host[j])).as(where).isCloseTo(optimum[i][j], within(0.055));
        assertThat(DamperGain.of(TunedDamper.denHartog(mu[i]), host[j]))
            .as(where)
            .isCloseTo(classical[i][j], within(0.055));
      }
    }
  }

  /**
   * Abstract of Sims 2007: 40 to 50 % more critical depth than classical tuning (published); 34 to
   * 56 % over mass ratios 0.01 to 0.1 and host damping 0 to 0.03 (computed by one other route).
   */
  @Test
  void chatterTuningBeatsClassicalByWhatItsAbstractSays() {
    for (double mu : new double[] {0.01, 0.03, 0.1}) {
      for (double host : new double[] {0, 0.01, 0.03}) {
        double ratio =
            DamperGain.negativeReal(TunedDamper.denHartog(mu), host)
                / DamperGain.negativeReal(DamperGain.optimum(mu, host), host);
        assertThat(ratio).isBetween(1.33, 1.57);
      }
    }
  }

  @Test
  void detuningCostsAndAHeavyDamperForgivesIt() {
    double host = 0.02;
    double lightShare = shareKept(0.01, host);
    double heavyShare = shareKept(0.2, host);
    assertThat(lightShare).isLessThan(0.7);
    assertThat(heavyShare).isBetween(0.6, 0.75).isGreaterThan(lightShare);
    TunedDamper best = DamperGain.optimum(0.05, host);
    assertThat(DamperGain.least(best, host, 0, 0))
        .isCloseTo(DamperGain.of(best, host), withinPercentage(1e-9));
    // The optimum is flat in damping, steep in frequency.
    assertThat(DamperGain.least(best, host, 0, 0.1) / DamperGain.of(best, host))
        .isGreaterThan(0.93);
    assertThat(DamperGain.least(best, host, 0.1, 0) / DamperGain.of(best, host)).isLessThan(0.6);
  }

  private static double shareKept(double mu, double host) {
    TunedDamper best = DamperGain.optimum(mu, host);
    return DamperGain.least(best, host, 0.05, 0) / DamperGain.of(best, host);
  }

  /**
   * First shape of a slender cantilever, cosh − cos − 0.7341(sinh − sin) of 1.8751 z/L over 2
   * (Thomson, appendix D), and the tip's modal mass ¼ρAL.
   */
  @Test
  void massRatioFollowsTheShape() {
    double l = 1;
    double d = 0.01;
    BeamMaterial steel = new BeamMaterial(210e9, 0.3, 7850);
    BeamChain bar = BeamChain.of(BeamSegment.cylinder(l, d, steel));
    BendingModes modes = new BendingModes(60);
    modes.solve(bar, 1);
    ReducedModes reduced = new ReducedModes();
    for (double z : new double[] {0, 0.25, 0.5, 0.8, 0.93, 1}) {
      reduced.solve(ReducedChain.of(bar, 0, z), new double[0]);
      assertThat(reduced.angularFrequencyRadPerS(0))
          .isCloseTo(modes.angularFrequencyRadPerS(0), withinPercentage(0.01));
      double x = 1.87510407 * z;
      double expected =
          (Math.cosh(x) - Math.cos(x) - 0.73409551 * (Math.sinh(x) - Math.sin(x))) / 2;
      assertThat(reduced.placeShape(0) / reduced.tipShape(0))
          .as("z %s", z)
          .isCloseTo(expected, within(1e-4));
    }
    double tipMass = bar.massKg() / 4;
    reduced.solve(ReducedChain.of(bar, 0, 0.8), new double[0]);
    double ratio = reduced.placeShape(0) / reduced.tipShape(0);
    assertThat(TunedDamper.effectiveMassRatio(0.02, ratio, tipMass))
        .isCloseTo(0.02 * 0.7248 * 0.7248 / tipMass, withinPercentage(0.2))
        .isCloseTo(0.02 * Math.pow(reduced.placeShape(0), 2), withinPercentage(0.1));
  }

  @Test
  void refusesWhatIsNoDamper() {
    assertThatThrownBy(() -> new TunedDamper(0, 1, 0.1)).hasMessageContaining("massRatio is 0.0");
    assertThatThrownBy(() -> new TunedDamper(0.1, 0, 0.1)).hasMessageContaining("frequencyRatio");
    assertThatThrownBy(() -> DamperGain.of(TunedDamper.chatter(0.1), 0))
        .hasMessageContaining("hostDampingRatio is 0.0");
  }
}
