package org.gaugeline.assessment;

import org.gaugeline.mechanics.FalsePosition;
import org.gaugeline.mechanics.beam.BeamChain;
import org.gaugeline.mechanics.beam.BeamMaterial;
import org.gaugeline.mechanics.beam.BeamSegment;
import org.gaugeline.mechanics.beam.ElasticJoint;
import org.gaugeline.mechanics.beam.ReducedChain;
import org.gaugeline.mechanics.beam.ReducedModes;
import org.gaugeline.mechanics.chatter.MillingProcess;
import org.gaugeline.mechanics.chatter.StabilityLobes;
import org.gaugeline.mechanics.damper.TuningHost;
import org.gaugeline.mechanics.receptance.ModalResponse;
import org.gaugeline.mechanics.receptance.TipModel;
import org.gaugeline.mechanics.receptance.TunedResponse;
import org.jspecify.annotations.Nullable;

/**
 * Depth that one cut bears at any speed on the end of a uniform round bar, over the bar's overhang.
 *
 * <p>The bar stands on a joint without mass and ends at the cutting edges; it is as round and as
 * thick there as everywhere. Three modes and a residual, as a stack without a tuned mass. With one,
 * the mass is tuned against chatter to the bar at each overhang. The depth falls with the overhang:
 * for a slender bar on a rigid base as E·d⁴/L³, whatever the cut.
 *
 * @param joint what holds the bar
 * @param diameterM d, m, greater than 0
 * @param material of the bar
 * @param room hollow with a tuned mass; null for a solid bar
 * @param dampingRatio ζ of its modes, above 0 to below 1
 * @param process the cut
 */
record BarDepth(
    ElasticJoint joint,
    double diameterM,
    BeamMaterial material,
    PlainBar.@Nullable Room room,
    double dampingRatio,
    MillingProcess process) {
  private static final int MOST_STEPS = 40;
  private static final double CLOSE = 1e-6;

  /**
   * The depth, m; +∞ where no depth chatters.
   *
   * @param overhangM L, m, greater than 0
   */
  double guaranteedM(double overhangM) {
    return StabilityLobes.milling(process, tip(overhangM)).guaranteed().depthM();
  }

  private TipModel tip(double overhangM) {
    PlainBar.Room mass = room;
    ReducedModes modes = modes(overhangM);
    return TipModel.symmetric(
        mass == null
            ? ModalResponse.of(modes, any -> dampingRatio)
            : TunedResponse.of(
                modes,
                any -> dampingRatio,
                TuningHost.of(modes, massKg(mass, overhangM)).chatterTuned()));
  }

  /** Modes of the bar without its mass, with the place of the mass watched. */
  ReducedModes modes(double overhangM) {
    BeamChain chain = chain(overhangM);
    PlainBar.Room mass = room;
    ReducedModes modes = new ReducedModes();
    modes.solve(
        mass == null
            ? ReducedChain.of(chain, 1)
            : ReducedChain.of(chain, 1, mass.atShare() * overhangM),
        new double[] {joint.translationNPerM(), joint.rotationNmPerRad()});
    return modes;
  }

  /** The bar on its joint, hollow where a mass hangs, without that mass. */
  BeamChain chain(double overhangM) {
    BeamChain.Builder builder = BeamChain.fromBase().add(joint);
    PlainBar.Room mass = room;
    if (mass == null) {
      return builder.add(BeamSegment.cylinder(overhangM, diameterM, material)).toTip();
    }
    double half = mass.lengthShare() / 2;
    return builder
        .add(piece((mass.atShare() - half) * overhangM))
        .add(piece(2 * half * overhangM).withBore(mass.diameterShare() * diameterM))
        .add(piece((1 - mass.atShare() - half) * overhangM))
        .toTip();
  }

  private BeamSegment piece(double lengthM) {
    return BeamSegment.cylinder(lengthM, diameterM, material);
  }

  /** The hollow filled. */
  double massKg(PlainBar.Room mass, double overhangM) {
    double d = mass.diameterShare() * diameterM;
    return mass.densityKgPerM3() * Math.PI / 4 * d * d * mass.lengthShare() * overhangM;
  }

  /**
   * The overhang from which the depth is less than asked, by false position on logarithms, in which
   * the depth is nearly straight; halving where no depth chatters.
   *
   * @param depthM asked depth, m, greater than 0
   * @param shortestM where the search begins, m
   * @param longestM where it ends, m
   * @return overhang, m; 0 where the shortest bar already bears less, +∞ where the longest bears it
   */
  double losesAtM(double depthM, double shortestM, double longestM) {
    double low = Math.log(shortestM);
    double high = Math.log(longestM);
    double atLow = Math.log(guaranteedM(shortestM) / depthM);
    double atHigh = Math.log(guaranteedM(longestM) / depthM);
    if (atLow < 0) {
      return 0;
    }
    if (atHigh >= 0) {
      return Double.POSITIVE_INFINITY;
    }
    FalsePosition bracket = new FalsePosition(low, atLow, high, atHigh);
    double x = low;
    for (int step = 0; step < MOST_STEPS && bracket.width() > CLOSE; step++) {
      x = bracket.next();
      double value = Math.log(guaranteedM(Math.exp(x)) / depthM);
      if (Math.abs(value) < CLOSE) {
        break;
      }
      bracket.narrow(x, value);
    }
    return Math.exp(x);
  }
}
