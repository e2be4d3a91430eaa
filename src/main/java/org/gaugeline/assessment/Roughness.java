package org.gaugeline.assessment;

import java.util.List;
import org.gaugeline.mechanics.cutting.Boring;
import org.gaugeline.mechanics.runout.RunoutEffects;
import org.gaugeline.reference.ClampingFamily;
import org.gaugeline.reference.OperationKind;

/**
 * Roughness across a milled wall, where the runout decides which tooth leaves the cusps, and along
 * a bore, where the corner radius leaves its feed marks.
 */
final class Roughness {
  private Roughness() {}

  /**
   * Roughness across a milled wall. Runout lets one tooth set the cusps, which cannot get higher
   * than the feed per turn makes them, nor than the even cusp plus the runout itself.
   */
  static void add(
      JobContext context, RunoutModel runout, ClampingFamily family, List<Margin> margins) {
    double asked = context.job.feature().raM();
    if (Double.isNaN(asked) || !leavesCusps(context)) {
      return;
    }
    double median = meanRoughnessM(context, runout.medianTirM());
    double upper =
        meanRoughnessM(context, runout.quantileTirM(context.job.preferences().confidence()));
    margins.add(
        new Margin(
            Pair.ROUGHNESS,
            median,
            upper,
            asked,
            asked,
            () -> probabilityOfRoughness(context, runout, asked),
            List.of("cusp-geometry", family.sourceKey())));
  }

  static boolean leavesCusps(JobContext context) {
    return switch (context.job.operation().kind()) {
      case SIDE_MILLING, SLOTTING, HIGH_EFFICIENCY_MILLING -> true;
      case BORING -> context.job.tool().cornerRadiusM() > 0;
      case FACE_MILLING,
          PROFILING,
          DRILLING,
          REAMING,
          PLUNGE_MILLING,
          RAMPING,
          CHAMFERING,
          TAPPING,
          THREAD_MILLING ->
          false;
    };
  }

  static double meanRoughnessM(JobContext context, double tirM) {
    return meanRoughnessM(context, context.job.operation().feedPerToothM(), tirM);
  }

  static double meanRoughnessM(JobContext context, double feed, double tirM) {
    double diameter = context.job.tool().diameterM();
    if (context.job.operation().kind() == OperationKind.BORING) {
      return Boring.meanRoughnessM(
          feed * context.job.tool().teeth(), context.job.tool().cornerRadiusM());
    }
    double even = RunoutEffects.sideMilledCuspM(feed, diameter);
    double single = RunoutEffects.sideMilledCuspM(feed * context.job.tool().teeth(), diameter);
    return RunoutEffects.meanRoughnessM(Math.min(single, even + tirM));
  }

  private static double probabilityOfRoughness(
      JobContext context, RunoutModel runout, double askedM) {
    if (meanRoughnessM(context, Double.MAX_VALUE) <= askedM) {
      return 1;
    }
    double none = meanRoughnessM(context, 0);
    if (none > askedM) {
      return 0;
    }
    double perTir = meanRoughnessM(context, 1e-9) - none;
    return runout.probabilityAtMost((askedM - none) / perTir * 1e-9);
  }
}
