package org.gaugeline.job;

import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ReferenceData;
import org.jspecify.annotations.Nullable;

/**
 * Completes the thread that a thread mill makes: its size from the mill, its pitch from its size.
 */
public final class ThreadCompletion {
  /** Both diameters lose five eighths of the triangle of height √3/2·P (ISO 68-1). */
  private static final double MINOR_DROP_PER_PITCH = 5 * Math.sqrt(3) / 8;

  private ThreadCompletion() {}

  /** Pitch of a milled thread: given, or about that of the coarse series; NaN for other tools. */
  static double pitchM(Intent intent, ReferenceData data, Assumptions assumptions) {
    Double given = intent.tool().pitchM();
    if (given != null) {
      return given;
    }
    if (intent.operation().kind() != OperationKind.THREAD_MILLING) {
      return Double.NaN;
    }
    return assumptions.assume(
        "/tool/pitchMm",
        coarsePitchM(intent.feature().nominalSizeM(), intent.tool().diameterM(), data),
        "usual-for-thread",
        data.practiceRow("coarsePitchFactor").sourceKey());
  }

  /** About the pitch of the coarse series, for the thread or else for one that suits the mill. */
  public static double coarsePitchM(@Nullable Double nominalM, double millM, ReferenceData data) {
    double nominal = nominalM != null ? nominalM : data.practice("threadDiameterPerMill") * millM;
    double millimetres = nominal * 1e3;
    double coarse =
        data.practice("coarsePitchFactor")
            * Math.pow(millimetres, data.practice("coarsePitchExponent"))
            / 1e3;
    return Math.min(coarse, data.practice("steepestPitchShare") * nominal);
  }

  /** Nominal diameter of the thread that suits a mill where none is given. */
  static double nominalM(Job.Tool tool, ReferenceData data) {
    double room = data.practice("threadMillLeastRoomShare") * tool.diameterM();
    return Math.max(
        data.practice("threadDiameterPerMill") * tool.diameterM(),
        tool.diameterM() + MINOR_DROP_PER_PITCH * tool.pitchM() + room);
  }

  /** What both sides of an internal thread's profile take off its diameter. */
  public static double profileM(double pitchM) {
    return MINOR_DROP_PER_PITCH * pitchM;
  }

  /** Depth of an internal thread's profile, five sixteenths of √3·P. */
  static double depthM(double pitchM) {
    return MINOR_DROP_PER_PITCH / 2 * pitchM;
  }
}
