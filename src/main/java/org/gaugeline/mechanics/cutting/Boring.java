package org.gaugeline.mechanics.cutting;

import org.gaugeline.mechanics.Require;

/** Forces of boring, taken as internal turning. */
public final class Boring {
  private Boring() {}

  /**
   * A bore being widened.
   *
   * @param diameterM bore after the cut D, m, &gt; d
   * @param preDrilledDiameterM bore before the cut d, m, &gt; 0
   * @param feedPerRevM feed per revolution f, m, &gt; 0
   * @param edges edges that share the feed z, &ge; 1
   * @param leadAngleRad κ between edge and axis, rad, above 0 to π/2
   */
  public record Bore(
      double diameterM,
      double preDrilledDiameterM,
      double feedPerRevM,
      int edges,
      double leadAngleRad) {
    public Bore {
      Require.positive("preDrilledDiameterM", preDrilledDiameterM);
      Require.positive("diameterM - preDrilledDiameterM", diameterM - preDrilledDiameterM);
      Require.positive("feedPerRevM", feedPerRevM);
      Require.atLeastOne("edges", edges);
      Require.within("leadAngleRad", leadAngleRad, 0.01, Math.PI / 2);
    }

    /** Depth of cut ap = (D − d)/2, m. */
    double depthM() {
      return (diameterM - preDrilledDiameterM) / 2;
    }
  }

  /**
   * Forces of one or several edges.
   *
   * @param cuttingForceN tangential force Fc of all edges together, N
   * @param torqueNm torque, N·m
   * @param radialForceN radial force that the edges do not balance, N
   * @param feedForceN axial force that pushes the bar into its holder, N
   * @param specificForcePa specific cutting force, Pa
   * @param chipThicknessM chip thickness of one edge, m
   */
  public record BoringLoads(
      double cuttingForceN,
      double torqueNm,
      double radialForceN,
      double feedForceN,
      double specificForcePa,
      double chipThicknessM) {}

  /**
   * h = f/z·sin κ, Fc = kc·ap·f, M = Fc·D/2 (boring as internal turning, Tschätsch). Radial and
   * feed force are shares of Fc: at a small depth the corner radius turns the edge's force outward,
   * so the radial share is larger than in rough turning. Edges that share the cut evenly balance
   * their radial forces; one edge alone does not.
   *
   * @param bore the bore
   * @param specificForce specific force with the factor of boring in its correction
   * @param radialShare radial over cutting force of an edge, &ge; 0
   * @param feedShare feed over cutting force of an edge, &ge; 0
   * @return the loads
   */
  public static BoringLoads loads(
      Bore bore, SpecificForce specificForce, double radialShare, double feedShare) {
    Require.notNegative("radialShare", radialShare);
    Require.notNegative("feedShare", feedShare);
    double h = bore.feedPerRevM() / bore.edges() * Math.sin(bore.leadAngleRad());
    double kc = specificForce.specificForcePa(h);
    double cutting = kc * bore.depthM() * bore.feedPerRevM();
    return new BoringLoads(
        cutting,
        cutting * bore.diameterM() / 2,
        bore.edges() == 1 ? radialShare * cutting : 0,
        feedShare * cutting,
        kc,
        h);
  }

  /**
   * Mean roughness of a turned or bored surface, Ra = f²/(31.2·rε) (geometry of the feed marks).
   *
   * @param feedPerRevM feed per revolution f, m, &ge; 0
   * @param cornerRadiusM corner radius rε, m, &gt; 0
   * @return Ra, m
   */
  public static double meanRoughnessM(double feedPerRevM, double cornerRadiusM) {
    Require.notNegative("feedPerRevM", feedPerRevM);
    Require.positive("cornerRadiusM", cornerRadiusM);
    return feedPerRevM * feedPerRevM / (31.2 * cornerRadiusM);
  }
}
