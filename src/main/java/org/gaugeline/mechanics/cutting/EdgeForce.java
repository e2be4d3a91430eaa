package org.gaugeline.mechanics.cutting;

/**
 * Force per width on a point of the edge at immersion φ, and its lateral components on the tool: x
 * along the feed, y towards φ = 0 (Altintas, <em>Manufacturing Automation</em>, ch. 2): fx =
 * −ft·cos φ − fr·sin φ, fy = ft·sin φ − fr·cos φ, where fr = (Fr/Ft)·sin κ·ft is the lateral part
 * of the force normal to the edge.
 *
 * <p>One instance serves one integration and is overwritten at each point.
 */
final class EdgeForce {
  private final ForceLaw law;
  private final double chipAtNinetyM;
  private final double lateralRatio;
  double tangential;
  double feed;
  double normal;

  EdgeForce(ForceLaw law, MillingCut cut, double sineOfLead) {
    this.law = law;
    this.chipAtNinetyM = cut.feedPerToothM() * sineOfLead;
    this.lateralRatio = cut.radialRatio() * sineOfLead;
  }

  void set(double immersionRad) {
    double sine = Math.sin(immersionRad);
    double cosine = Math.cos(immersionRad);
    tangential = law.forcePerWidth(chipAtNinetyM * sine);
    double radial = lateralRatio * tangential;
    feed = -tangential * cosine - radial * sine;
    normal = tangential * sine - radial * cosine;
  }
}
