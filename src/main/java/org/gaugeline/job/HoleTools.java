package org.gaugeline.job;

import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.ShankSize;
import org.gaugeline.reference.TapForm;
import org.gaugeline.reference.TapSize;
import org.gaugeline.reference.ToolKind;
import org.jspecify.annotations.Nullable;

/** Completes what only taps and boring bars have. */
final class HoleTools {
  private static final String PRACTICE = "cutting-practice";

  private final ReferenceData data;

  HoleTools(ReferenceData data) {
    this.data = data;
  }

  /** A bar reaches through its bore and a little further; a tap is as long as its standard says. */
  double overall(
      Intent intent, @Nullable TapSize tap, double neckLength, double shank, ShankSize size) {
    double gripped = size.lengthM() * Math.max(1, shank / size.diameterM());
    double usual = neckLength + gripped;
    if (tap != null) {
      return Math.max(usual, tap.overallLengthM());
    }
    if (intent.tool().kind() != ToolKind.BORING_TOOL) {
      return usual;
    }
    Double asked = intent.feature().depthM();
    double depth =
        asked == null ? data.practice("boredDepthPerDiameter") * intent.tool().diameterM() : asked;
    return Math.max(usual, depth + shank + gripped);
  }

  double cornerRadius(Intent.Tool asked, Assumptions assumptions) {
    if (asked.kind() == ToolKind.BORING_TOOL) {
      return assumptions.given(
          asked.cornerRadiusM(),
          "/tool/cornerRadiusMm",
          Math.min(
              data.practice("boringCornerRadiusM"),
              asked.diameterM() * data.practice("boringDepthShareAtMost")),
          "usual-for-tool",
          data.practiceRow("boringCornerRadiusM").sourceKey());
    }
    Double radius = asked.cornerRadiusM();
    if (radius != null) {
      return radius;
    }
    return asked.kind() == ToolKind.BALL_END_MILL ? asked.diameterM() / 2 : 0;
  }

  static TapForm tapForm(Intent.Tool asked, Assumptions assumptions) {
    if (asked.kind() != ToolKind.TAP) {
      return asked.tapForm() == null ? TapForm.CUT : asked.tapForm();
    }
    return assumptions.given(
        asked.tapForm(), "/tool/tapForm", TapForm.CUT, "usual-for-tool", PRACTICE);
  }

  static double pitch(Intent intent, @Nullable TapSize tap, Assumptions assumptions) {
    Double given = intent.tool().pitchM();
    if (given != null) {
      return given;
    }
    Double feed = intent.operation().feedPerRevM();
    if (intent.operation().kind() == OperationKind.TAPPING && feed != null) {
      return assumptions.assume("/tool/pitchMm", feed, "feed-is-pitch", "");
    }
    return tap == null
        ? Double.NaN
        : assumptions.assume("/tool/pitchMm", tap.pitchM(), "coarse-pitch", tap.pitchSourceKey());
  }

  /** The thickest standard shank that leaves room for chips in the bore. */
  ShankSize barFor(double boreM) {
    double thickest = data.practice("boringBarShare") * boreM;
    ShankSize best = data.shankSizes().get(0);
    for (ShankSize size : data.shankSizes()) {
      boolean metric = !size.id().endsWith(" in");
      if (metric && size.diameterM() <= thickest && size.diameterM() > best.diameterM()) {
        best = size;
      }
    }
    return best;
  }
}
