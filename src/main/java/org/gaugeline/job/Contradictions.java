package org.gaugeline.job;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Finds members of one intent that cannot both be true. */
final class Contradictions {
  private Contradictions() {}

  static void check(Intent intent, List<IntentFault> faults) {
    Intent.Operation operation = intent.operation();
    Intent.Tool tool = intent.tool();
    if (operation.cuttingSpeedMPerS() != null && operation.spindleSpeedRadPerS() != null) {
      faults.add(
          new IntentFault(
              "/operation/spindleSpeedRpm",
              "two-speeds",
              Map.of("other", "/operation/cuttingSpeedMPerMin")));
    }
    if (operation.feedPerToothM() != null && operation.feedPerRevM() != null) {
      faults.add(
          new IntentFault(
              "/operation/feedPerRevMm",
              "two-feeds",
              Map.of("other", "/operation/feedPerToothMm")));
    }
    notAbove(
        "/tool/fluteLengthMm",
        tool.fluteLengthM(),
        "/tool/overallLengthMm",
        tool.overallLengthM(),
        faults);
    notAbove(
        "/tool/neckLengthMm",
        tool.neckLengthM(),
        "/tool/overallLengthMm",
        tool.overallLengthM(),
        faults);
    notAbove(
        "/operation/radialDepthMm",
        operation.radialDepthM(),
        "/tool/diameterMm",
        tool.diameterM(),
        faults);
    notAbove(
        "/operation/preDrilledDiameterMm",
        operation.preDrilledDiameterM(),
        "/tool/diameterMm",
        tool.diameterM(),
        faults);
    Double radius = tool.cornerRadiusM();
    if (radius != null && radius > tool.diameterM() / 2 * (1 + 1e-9)) {
      notAbove("/tool/cornerRadiusMm", radius, "/tool/diameterMm", tool.diameterM() / 2, faults);
    }
    ascendingCurve(intent.machine().torqueCurve(), faults);
  }

  private static void notAbove(
      String pointer,
      @Nullable Double value,
      String boundPointer,
      @Nullable Double bound,
      List<IntentFault> faults) {
    if (value != null && bound != null && value > bound * (1 + 1e-9)) {
      faults.add(
          new IntentFault(
              pointer,
              "larger-than-other",
              Map.of("actualM", value, "boundM", bound, "other", boundPointer)));
    }
  }

  private static void ascendingCurve(List<Intent.CurvePoint> curve, List<IntentFault> faults) {
    for (int i = 1; i < curve.size(); i++) {
      if (curve.get(i).spindleSpeedRadPerS() <= curve.get(i - 1).spindleSpeedRadPerS()) {
        faults.add(
            new IntentFault(
                "/machine/torqueCurve/" + i + "/spindleSpeedRpm", "curve-not-ascending", Map.of()));
      }
    }
  }
}
