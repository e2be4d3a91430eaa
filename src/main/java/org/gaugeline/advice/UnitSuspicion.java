package org.gaugeline.advice;

import org.gaugeline.assessment.JobContext;
import org.gaugeline.job.Job;
import org.gaugeline.quantity.UnitSuffix;

/**
 * Whether the numbers would make more sense in inches: a small cutter whose diameter in millimetres
 * is a whole number of sixteenths, on a large spindle, with depths of the same scale.
 */
final class UnitSuspicion {
  private static final double SAME = 1e-6;

  private UnitSuspicion() {}

  static boolean of(JobContext context) {
    Job job = context.job();
    double diameter = job.tool().diameterM();
    double parts = UnitSuffix.MM.fromSi(diameter) * context.practice("unitSuspicionPartsOfInch");
    boolean roundFraction = Math.abs(parts - Math.rint(parts)) < SAME;
    boolean small =
        diameter <= context.practice("unitSuspicionMostDiameterM")
            && diameter >= context.practice("unitSuspicionLeastDiameterM");
    boolean largeSpindle =
        job.machine().spindle().flangeDiameterM() > context.practice("unitSuspicionFlangeM");
    boolean deepAsInch = job.feature().depthM() < context.practice("unitSuspicionDepthM");
    return roundFraction && small && largeSpindle && deepAsInch;
  }
}
