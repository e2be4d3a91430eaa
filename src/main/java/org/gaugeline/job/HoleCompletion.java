package org.gaugeline.job;

import org.gaugeline.reference.HoleEnd;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.Stage;
import org.gaugeline.reference.TapForm;
import org.gaugeline.reference.TappingMode;

/** Completes what only holes have: the hole before the cut, its end, the coupling of a tap. */
final class HoleCompletion {
  private final ReferenceData data;

  HoleCompletion(ReferenceData data) {
    this.data = data;
  }

  /** The hole that is there before the cut; 0 for none. */
  double preDrilled(Intent.Operation asked, Stage stage, Job.Tool tool, Assumptions assumptions) {
    Double given = asked.preDrilledDiameterM();
    if (given != null) {
      return given;
    }
    String at = "/operation/preDrilledDiameterMm";
    double d = tool.diameterM();
    return switch (asked.kind()) {
      case REAMING ->
          assumptions.assume(
              at,
              d * data.practice("preDrilledShareReaming"),
              "usual-for-operation",
              "cutting-practice");
      case TAPPING -> {
        boolean form = tool.tapForm() == TapForm.FORM;
        double share = form ? data.practice("tapDrillPitchShareForm") : 1;
        yield assumptions.assume(at, d - share * tool.pitchM(), "tap-drill", "tapping-practice");
      }
      case BORING -> {
        Double depth = asked.radialDepthM();
        String usual = "boringDepth" + OperationCompletion.pascal(stage.id()) + "M";
        yield depth != null
            ? assumptions.assume(at, d - 2 * depth, "bore-less-depth", "")
            : assumptions.assume(
                at,
                d - 2 * Math.min(data.practice(usual), d * data.practice("boringDepthShareAtMost")),
                "usual-for-operation",
                data.practiceRow(usual).sourceKey());
      }
      case SIDE_MILLING,
          SLOTTING,
          FACE_MILLING,
          HIGH_EFFICIENCY_MILLING,
          PROFILING,
          PLUNGE_MILLING,
          RAMPING,
          CHAMFERING,
          DRILLING,
          THREAD_MILLING ->
          0.0;
    };
  }

  static TappingMode tapping(Intent.Operation asked, Assumptions assumptions) {
    if (asked.kind() != OperationKind.TAPPING) {
      return asked.tapping() == null ? TappingMode.SYNCHRONOUS : asked.tapping();
    }
    return assumptions.given(
        asked.tapping(),
        "/operation/tapping",
        TappingMode.SYNCHRONOUS,
        "usual-for-machines",
        "tapping-practice");
  }

  static HoleEnd holeEnd(Intent.Operation asked, Assumptions assumptions) {
    if (asked.kind() != OperationKind.TAPPING) {
      return asked.hole() == null ? HoleEnd.BLIND : asked.hole();
    }
    return assumptions.given(
        asked.hole(), "/operation/hole", HoleEnd.BLIND, "not-stated", "tapping-practice");
  }

  /** A tap feeds its pitch a turn, whatever is said. */
  static double tapFeedPerTooth(Intent.Operation asked, Job.Tool tool, Assumptions assumptions) {
    if (asked.feedPerRevM() == null && asked.feedPerToothM() == null) {
      assumptions.assume("/operation/feedPerRevMm", tool.pitchM(), "feed-is-pitch", "");
    }
    return tool.pitchM() / tool.teeth();
  }
}
