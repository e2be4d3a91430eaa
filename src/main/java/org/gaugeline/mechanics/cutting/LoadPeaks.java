package org.gaugeline.mechanics.cutting;

/** Largest loads seen while the cutter turns through one pitch. */
final class LoadPeaks {
  /** Share of the lateral peak below which an axial force is the rounding of a difference. */
  private static final double ROUNDING_SHARE = 1e-9;

  private final double helixPullPerTorque;
  private final double momentToGripForce;
  double torque;
  private double pull;
  private double push;
  private double radialSquared;
  private double pulledSquared;
  private double pushedSquared;

  /**
   * Prepares empty peaks.
   *
   * @param helixPullPerTorque signed axial force of the helix per torque, tan β/R, 1/m: with a
   *     constant lead the local tan β grows with the local radius just as the moment arm does
   * @param gripDiameterM diameter at the grip, m
   */
  LoadPeaks(double helixPullPerTorque, double gripDiameterM) {
    this.helixPullPerTorque = helixPullPerTorque;
    this.momentToGripForce = 2 / gripDiameterM;
  }

  /** Plain comparisons: the loads are finite, and this is the innermost loop. */
  void take(double torqueNm, double feedN, double normalN, double conePushN) {
    double axial = helixPullPerTorque * torqueNm - conePushN;
    double around = momentToGripForce * torqueNm;
    double aroundSquared = around * around;
    double bothSquared = aroundSquared + axial * axial;
    double lateralSquared = feedN * feedN + normalN * normalN;
    torque = larger(torque, torqueNm);
    pull = larger(pull, axial);
    push = larger(push, -axial);
    radialSquared = larger(radialSquared, lateralSquared);
    pulledSquared = larger(pulledSquared, axial > 0 ? bothSquared : aroundSquared);
    pushedSquared = larger(pushedSquared, axial < 0 ? bothSquared : aroundSquared);
  }

  private static double larger(double known, double candidate) {
    return candidate > known ? candidate : known;
  }

  double radial() {
    return Math.sqrt(radialSquared);
  }

  double pull() {
    return pull > ROUNDING_SHARE * radial() ? pull : 0;
  }

  double push() {
    return push > ROUNDING_SHARE * radial() ? push : 0;
  }

  double slipPulled() {
    return Math.sqrt(pulledSquared);
  }

  double slipPushed() {
    return Math.sqrt(pushedSquared);
  }
}
