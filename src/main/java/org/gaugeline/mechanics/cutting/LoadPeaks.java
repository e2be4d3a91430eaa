package org.gaugeline.mechanics.cutting;

/** Largest loads seen while the cutter turns through one pitch. */
final class LoadPeaks {
  private final double helixPullPerTorque;
  private final double momentToGripForce;
  double torque;
  double pull;
  double push;
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

  void take(double torqueNm, double feedN, double normalN, double conePushN) {
    double axial = helixPullPerTorque * torqueNm - conePushN;
    double around = momentToGripForce * torqueNm;
    double aroundSquared = around * around;
    double out = Math.max(axial, 0);
    double in = Math.max(-axial, 0);
    torque = Math.max(torque, torqueNm);
    pull = Math.max(pull, out);
    push = Math.max(push, in);
    radialSquared = Math.max(radialSquared, feedN * feedN + normalN * normalN);
    pulledSquared = Math.max(pulledSquared, aroundSquared + out * out);
    pushedSquared = Math.max(pushedSquared, aroundSquared + in * in);
  }

  double radial() {
    return Math.sqrt(radialSquared);
  }

  double slipPulled() {
    return Math.sqrt(pulledSquared);
  }

  double slipPushed() {
    return Math.sqrt(pushedSquared);
  }
}
