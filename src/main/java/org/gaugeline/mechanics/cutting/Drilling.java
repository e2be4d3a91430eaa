package org.gaugeline.mechanics.cutting;

/** Torque and thrust of drilling, by specific force or by the handbook's formulas. */
public final class Drilling {
  private static final double MM_PER_M = 1e3;

  private Drilling() {}

  /**
   * Kienzle form: h = f/z·sin(σ/2), M = kc·f·(D² − d²)/8, Ff = kc·f·(D − d)/2·sin(σ/2) (Tschätsch;
   * d = 0 into solid). The thrust holds the lips alone; a chisel edge can add half as much again:
   * add {@link #chiselThrustN} where the point is known.
   *
   * @param hole the hole
   * @param specificForce specific force with the factor of drilling in its correction
   * @return the loads
   */
  public static HoleLoads kienzle(DrilledHole hole, SpecificForce specificForce) {
    double h = hole.chipThicknessM();
    double kc = specificForce.specificForcePa(h);
    double torque = kc * hole.feedPerRevM() * hole.squareDifferenceM2() / 8;
    double widthM = (hole.diameterM() - hole.preDrilledDiameterM()) / 2;
    double thrust = kc * hole.feedPerRevM() * widthM * Math.sin(hole.pointAngleRad() / 2);
    return new HoleLoads(torque, thrust, kc, h);
  }

  /**
   * {@link #kienzle} for the lips with the handbook's thrust of the chisel edge added: the fuller
   * thrust, for feed force and push into the holder.
   *
   * @param hole the hole
   * @param specificForce as in {@link #kienzle(DrilledHole, SpecificForce)}
   * @param point the drill point and its work material
   * @return the loads
   */
  public static HoleLoads kienzleWithChisel(
      DrilledHole hole, SpecificForce specificForce, DrillPoint point) {
    HoleLoads lips = kienzle(hole, specificForce);
    double thrust = lips.thrustN() + chiselThrustN(hole, point);
    return new HoleLoads(lips.torqueNm(), thrust, lips.specificForcePa(), lips.chipThicknessM());
  }

  /**
   * Handbook form, f and D in mm: T = 0.05·Kd·f^0.8·D^0.8·B·W + 0.007·Kd·D²·J·W, M =
   * 0.000025·Kd·f^0.8·D^1.8·A·W (Machinery's Handbook 31st ed., p. 1152; the powers are closed
   * forms of its tables 8 and 9). The handbook drills into solid. For a hole already open the
   * torque is taken down by 1 − (d/D)² and the thrust of the lips by 1 − d/D, as in the Kienzle
   * form: our assumption.
   *
   * @param hole the hole
   * @param point the drill point and its work material
   * @return the loads; the specific force is 8M/(f·(D² − d²))
   */
  public static HoleLoads handbook(DrilledHole hole, DrillPoint point) {
    double dMm = hole.diameterM() * MM_PER_M;
    double open = hole.preDrilledDiameterM() / hole.diameterM();
    double feed = Math.pow(hole.feedPerRevM() * MM_PER_M, 0.8);
    double strength = point.workMaterialFactor() * point.wearFactor();
    double solidTorque = 0.000025 * strength * feed * Math.pow(dMm, 1.8) * point.torqueFactor();
    double solidThrust = 0.05 * strength * feed * Math.pow(dMm, 0.8) * point.thrustFactor();
    double torque = solidTorque * (1 - open * open);
    double thrust = solidThrust * (1 - open) + chiselThrustN(hole, point);
    double kc = 8 * torque / (hole.feedPerRevM() * hole.squareDifferenceM2());
    return new HoleLoads(torque, thrust, kc, hole.chipThicknessM());
  }

  /**
   * Thrust of the chisel edge, 0.007·Kd·D²·J·W with D in mm (Machinery's Handbook 31st ed., p.
   * 1152); none where the open hole is at least as wide as the chisel edge.
   *
   * @param hole the hole
   * @param point the drill point and its work material
   * @return thrust, N
   */
  public static double chiselThrustN(DrilledHole hole, DrillPoint point) {
    boolean pilotClearsChisel =
        hole.preDrilledDiameterM() > 0
            && hole.preDrilledDiameterM() >= point.chiselRatio() * hole.diameterM();
    if (pilotClearsChisel) {
      return 0;
    }
    double dMm = hole.diameterM() * MM_PER_M;
    return 0.007
        * point.workMaterialFactor()
        * dMm
        * dMm
        * point.chiselFactor()
        * point.wearFactor();
  }
}
