package org.gaugeline.advice;

import org.gaugeline.job.Job;

/**
 * Whether the numbers would make more sense in inches: a cutter of 2 mm or less whose diameter,
 * read as inches, is a whole number of sixteenths, on a spindle of size 40 or more, with depths of
 * the same scale.
 */
final class UnitSuspicion {
  private static final double INCH_MM = 25.4;
  private static final double SIXTEENTH = 16;

  private UnitSuspicion() {}

  static boolean of(Job job) {
    double diameterMm = job.tool().diameterM() * 1e3;
    double asSixteenths = diameterMm * SIXTEENTH;
    boolean roundFraction = Math.abs(asSixteenths - Math.rint(asSixteenths)) < 1e-6;
    boolean small = diameterMm <= 2 && diameterMm >= 0.125;
    boolean largeSpindle = job.machine().spindle().flangeDiameterM() > 50 / 1e3;
    boolean deepAsInch = job.feature().depthM() * 1e3 < INCH_MM / 4;
    return roundFraction && small && largeSpindle && deepAsInch;
  }
}
