package org.gaugeline.mechanics.cutting;

/**
 * {@link SpecificForce} prepared for evaluation: both routes are straight lines in ln kc over ln h,
 * so one logarithm and one exponential give the force per width.
 */
final class ForceLaw {
  private static final double LN_MILLIMETRE = Math.log(1e-3);
  private static final double LN_2 = Math.log(2);
  private static final double FULL_WEIGHT = 0.5;

  private final double calibratedM;
  private final double lnCalibrated;
  private final double kienzleLn;
  private final double mc;
  private final double maxWeight;
  private final double secondLn;
  private final double secondExponent;

  private ForceLaw(
      double calibratedM, double kienzleLn, double mc, double secondLn, double secondExponent) {
    this.calibratedM = calibratedM;
    this.lnCalibrated = Math.log(calibratedM);
    this.kienzleLn = kienzleLn;
    this.mc = mc;
    this.maxWeight = Double.isNaN(secondLn) ? 0 : FULL_WEIGHT;
    this.secondLn = Double.isNaN(secondLn) ? 0 : secondLn;
    this.secondExponent = secondExponent;
  }

  static ForceLaw of(double kc11Pa, double mc, double calibratedFromM, ThinChipRoute route) {
    double kienzleLn = Math.log(kc11Pa) + mc * LN_MILLIMETRE;
    if (route instanceof ThinChipRoute.Handbook handbook) {
      double atReference = Math.log(handbook.powerPa() * handbook.workFactor());
      double exponent = handbook.feedExponent();
      double secondLn = atReference + exponent * Math.log(ThinChipRoute.HANDBOOK_REFERENCE_M);
      return new ForceLaw(calibratedFromM, kienzleLn, mc, secondLn, exponent);
    }
    if (route instanceof ThinChipRoute.Anchored anchored) {
      double exponent = anchored.feedExponent();
      double secondLn = kienzleLn + (exponent - mc) * Math.log(calibratedFromM);
      return new ForceLaw(calibratedFromM, kienzleLn, mc, secondLn, exponent);
    }
    return new ForceLaw(calibratedFromM, kienzleLn, mc, Double.NaN, 0);
  }

  /** kc·h in N/m; 0 for h &le; 0, which rounding at the ends of an arc can produce. */
  double forcePerWidth(double chipThicknessM) {
    if (chipThicknessM <= 0) {
      return 0;
    }
    double lnH = Math.log(chipThicknessM);
    double kienzle = kienzleLn - mc * lnH;
    double below = lnCalibrated - lnH;
    if (below <= 0 || maxWeight == 0) {
      return Math.exp(kienzle + lnH);
    }
    double weight = Math.min(maxWeight, maxWeight * below / LN_2);
    double second = secondLn - secondExponent * lnH;
    return Math.exp(kienzle + weight * (second - kienzle) + lnH);
  }

  /** Thickness above which the Kienzle line holds alone, m. */
  double calibratedM() {
    return calibratedM;
  }

  /** Whether the law leaves the Kienzle line: over the octave below the calibrated thickness. */
  boolean bends() {
    return maxWeight > 0;
  }

  /** Factor on the force where a chip at or above twice the calibrated thickness is halved. */
  double halfOfThick() {
    return Math.exp(-LN_2 * (1 - mc));
  }

  /** Factor on the force where a chip at or below half the calibrated thickness is halved. */
  double halfOfThin() {
    return Math.exp(-LN_2 * thinSlope());
  }

  private double thinSlope() {
    return 1 - mc + maxWeight * (mc - secondExponent);
  }

  /** Smallest d ln(kc·h)/d ln h: linear along the ramp, so it stands at one of its two ends. */
  double smallestForceSlope() {
    double top = rampSlope(lnCalibrated, 0);
    double bottom = rampSlope(lnCalibrated - LN_2, maxWeight);
    return Math.min(thinSlope(), Math.min(top, bottom));
  }

  private double rampSlope(double lnH, double weight) {
    double gap = (secondLn - secondExponent * lnH) - (kienzleLn - mc * lnH);
    return 1 - mc + weight * (mc - secondExponent) - maxWeight / LN_2 * gap;
  }
}
