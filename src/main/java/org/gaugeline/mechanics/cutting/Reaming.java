package org.gaugeline.mechanics.cutting;

import org.gaugeline.mechanics.Require;

/** Torque and thrust of reaming, from the chip of each edge. */
public final class Reaming {
  private Reaming() {}

  /**
   * A reamed hole.
   *
   * @param diameterM reamer diameter D, m, &gt; d
   * @param preDrilledDiameterM hole before reaming d, m, &gt; 0
   * @param feedPerRevM feed per revolution f, m, &gt; 0
   * @param teeth number of edges z, &ge; 1
   * @param leadAngleRad κ between edge and axis, rad, above 0 to π/2
   */
  public record ReamedHole(
      double diameterM,
      double preDrilledDiameterM,
      double feedPerRevM,
      int teeth,
      double leadAngleRad) {
    public ReamedHole {
      Require.positive("preDrilledDiameterM", preDrilledDiameterM);
      Require.positive("diameterM - preDrilledDiameterM", diameterM - preDrilledDiameterM);
      Require.positive("feedPerRevM", feedPerRevM);
      Require.atLeastOne("teeth", teeth);
      Require.within("leadAngleRad", leadAngleRad, 0.01, Math.PI / 2);
    }
  }

  /**
   * Per edge h = f/z·sin κ; all edges together cut A = (D − d)/2·f, so M = kc·A·(D + d)/4·(1 + q)
   * (arithmetic of the chip area) with q the torque of the margins' friction over that of cutting,
   * and thrust kc·A·sin κ as for a drill's lips. Friction along the feed is neglected: a margin
   * slides around far faster than forward.
   *
   * @param hole the hole
   * @param specificForce specific force with the factor of reaming in its correction
   * @param marginFrictionRatio q, &ge; 0; 1 to 2 is common practice
   * @return the loads; the specific force is that of cutting
   */
  public static HoleLoads loads(
      ReamedHole hole, SpecificForce specificForce, double marginFrictionRatio) {
    Require.notNegative("marginFrictionRatio", marginFrictionRatio);
    double sine = Math.sin(hole.leadAngleRad());
    double h = hole.feedPerRevM() / hole.teeth() * sine;
    double kc = specificForce.specificForcePa(h);
    double area = (hole.diameterM() - hole.preDrilledDiameterM()) / 2 * hole.feedPerRevM();
    double meanArm = (hole.diameterM() + hole.preDrilledDiameterM()) / 4;
    double torque = kc * area * meanArm * (1 + marginFrictionRatio);
    return new HoleLoads(torque, kc * area * sine, kc, h);
  }
}
