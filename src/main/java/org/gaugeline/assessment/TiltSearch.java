package org.gaugeline.assessment;

import java.util.List;
import org.gaugeline.job.Job;
import org.gaugeline.job.OperationCompletion;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ToolKind;
import org.jspecify.annotations.Nullable;

/**
 * The tilts of a ball-nose tool, away from the wall, at which a stack clears that does not clear
 * upright: near wall, far wall and floor together, at the stick-out as it stands.
 *
 * <p>A point at distance ρ from the ball's centre moves by no more than ρ·Δβ, so the search may
 * step as far as the gap falls short; it stays on a grid of tenths of a degree, so that what is
 * told is what was found.
 */
public final class TiltSearch {
  static final String CODE = "tilt-that-clears";

  private static final int PER_DEGREE = 10;
  private static final int FIVE_AXES = 5;

  private final JobContext context;
  private final Appraisal appraisal;
  private final Margin asked;
  private final double lever;

  private TiltSearch(JobContext context, Appraisal appraisal, Margin asked) {
    this.context = context;
    this.appraisal = appraisal;
    this.asked = asked;
    this.lever = appraisal.geometry().gaugeLengthM() + appraisal.body().largestDiameterM() / 2;
  }

  /**
   * The least and the largest tilt that clear, or why none is told; null where tilt is not to be
   * asked.
   */
  public static @Nullable Reason reason(JobContext context, Appraisal appraisal) {
    Margin gap = appraisal.margin(Pair.GAP);
    boolean blocked = appraisal.margin(Pair.TOOL_GAP) != null;
    if (gap == null || !mayTilt(context.job) || (gap.ratio() >= 1 && !blocked)) {
      return null;
    }
    if (context.job.tool().kind() != ToolKind.BALL_END_MILL) {
      String kind = context.job.tool().kind().id().replace('-', ' ');
      return told("tilt-not-proposed", Double.NaN, Double.NaN, kind);
    }
    return new TiltSearch(context, appraisal, gap).search();
  }

  private static boolean mayTilt(Job job) {
    return job.machine().axes() >= FIVE_AXES
        && job.feature().tiltRad() == 0
        && !OperationCompletion.isHole(job.operation().kind())
        && job.operation().kind() != OperationKind.FACE_MILLING;
  }

  private Reason search() {
    int last = (int) (Math.toDegrees(context.practice("tiltSearchEndRad")) * PER_DEGREE);
    int least = first(1, last, false);
    if (least > last) {
      return told("no-tilt-clears", Double.NaN, radians(last), "");
    }
    int largest = Math.min(last, first(least + 1, last, true) - 1);
    return told(CODE, radians(least), radians(largest), "");
  }

  private static Reason told(String code, double fromRad, double toRad, String subject) {
    return new Reason(
        Criterion.REACH,
        code,
        Tone.NEUTRAL,
        fromRad,
        toRad,
        Measure.ANGLE,
        subject,
        List.of("plane-geometry"));
  }

  /** First step from one on that clears, or that no longer does; beyond the last where none. */
  private int first(int from, int last, boolean ends) {
    int step = from;
    while (step <= last) {
      double spare = spareM(radians(step));
      if (ends == spare < 0) {
        return step;
      }
      step += Math.max(1, (int) (Math.toDegrees(Math.abs(spare) / lever) * PER_DEGREE));
    }
    return step;
  }

  private double spareM(double tiltRad) {
    Reach reach = Reach.atTilt(context.job, tiltRad);
    double stickOut = appraisal.assembly().stickOutM();
    double holder = reach.holderGapM(appraisal.body(), stickOut) - asked.demand();
    return Math.min(holder, reach.ownGapM(stickOut) + Reach.TOUCH_M);
  }

  private static double radians(int step) {
    return Math.toRadians((double) step / PER_DEGREE);
  }
}
