package org.gaugeline.assessment;

import org.gaugeline.job.Job;
import org.gaugeline.reference.AllowedRunout;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.Stage;

/** What a job tolerates: runout at the tip and error of size. */
final class Allowances {
  private Allowances() {}

  /** Allowed runout at the tip, TIR, by the first row for this operation, stage and substrate. */
  static double runoutM(Job job, ReferenceData data) {
    for (AllowedRunout row : data.allowedRunouts()) {
      if (row.operations().contains(job.operation().kind())
          && row.stages().contains(job.operation().stage())
          && row.substrates().contains(job.tool().substrate())) {
        double asked =
            row.absoluteM()
                + row.perFeed() * job.operation().feedPerToothM()
                + row.perTolerance() * job.feature().toleranceBandM();
        return Math.max(row.floorM(), asked);
      }
    }
    throw new IllegalStateException(
        "no allowed runout for " + job.operation().kind().id() + " in the tables");
  }

  /**
   * Size error that runout and deflection may use: a share of the tolerance. A surface that is cut
   * again later must only leave that pass something to cut everywhere: half of its stock.
   */
  static double sizeErrorM(Job job, ReferenceData data) {
    double share = data.practice("toleranceShareRunoutDeflection");
    return Math.max(
        share * job.feature().toleranceBandM(), stockM(job.operation().stage(), data) / 2);
  }

  private static double stockM(Stage stage, ReferenceData data) {
    return switch (stage) {
      case ROUGHING -> data.practice("stockAfterRoughingM");
      case SEMI_FINISHING -> data.practice("stockAfterSemiFinishingM");
      case FINISHING -> 0;
    };
  }
}
