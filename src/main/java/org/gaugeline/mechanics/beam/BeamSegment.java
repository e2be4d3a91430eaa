package org.gaugeline.mechanics.beam;

import org.gaugeline.mechanics.Require;

/**
 * A cylinder or cone of round section, with an optional cylindrical bore and an optional core in
 * that bore (a shank in its holder). Start is the end nearer the base (spindle), end the one nearer
 * the tip.
 *
 * <p>Body and core bend as one: EI, κGA, ρA and ρI of both add up (composite-beam practice of
 * Schmitz and Duncan, J. Manuf. Sci. Eng. 127 (2005) 781). A clamping that lets the core slip is
 * softer than that; give it an {@link ElasticJoint}.
 *
 * @param lengthM length, m, greater than 0
 * @param startDiameterM outer diameter at the base end, m, greater than the bore
 * @param endDiameterM outer diameter at the tip end, m, greater than the bore
 * @param boreDiameterM bore diameter, m, 0 or more; 0 = solid
 * @param material material of the body
 * @param coreDiameterM diameter of the core, m, 0 to the bore diameter; 0 = no core
 * @param coreMaterial material of the core; without effect when there is none
 */
public record BeamSegment(
    double lengthM,
    double startDiameterM,
    double endDiameterM,
    double boreDiameterM,
    BeamMaterial material,
    double coreDiameterM,
    BeamMaterial coreMaterial)
    implements ChainElement {

  public BeamSegment {
    Require.positive("lengthM", lengthM);
    Require.positive("startDiameterM", startDiameterM);
    Require.positive("endDiameterM", endDiameterM);
    double least = Math.min(startDiameterM, endDiameterM);
    if (!(boreDiameterM >= 0 && boreDiameterM < least)) {
      throw new IllegalArgumentException(
          "boreDiameterM is " + boreDiameterM + " but must lie in [0, " + least + ")");
    }
    Require.within("coreDiameterM", coreDiameterM, 0, boreDiameterM);
  }

  /**
   * A solid cylinder.
   *
   * @param lengthM length, m
   * @param diameterM diameter, m
   * @param material material
   * @return the segment
   */
  public static BeamSegment cylinder(double lengthM, double diameterM, BeamMaterial material) {
    return new BeamSegment(lengthM, diameterM, diameterM, 0, material, 0, material);
  }

  /**
   * A solid cone.
   *
   * @param lengthM length, m
   * @param startDiameterM diameter at the base end, m
   * @param endDiameterM diameter at the tip end, m
   * @param material material
   * @return the segment
   */
  public static BeamSegment cone(
      double lengthM, double startDiameterM, double endDiameterM, BeamMaterial material) {
    return new BeamSegment(lengthM, startDiameterM, endDiameterM, 0, material, 0, material);
  }

  /**
   * A fluted length as a cylinder of equivalent diameter D_e = ratio·D, which is an equivalence of
   * second moments of area only (Kops and Vo, CIRP Annals 39/1 (1990), give 0.80). Taking the mass
   * of D_e too would raise the frequencies, so the share of metal in the full circle is its own
   * argument and enters through the density.
   *
   * @param lengthM length, m
   * @param diameterM cutting diameter D, m
   * @param equivalentDiameterRatio D_e/D, above 0 to 1
   * @param areaRatio cross-section of metal over πD²/4, 0 to 1
   * @param material material of the cutter
   * @return the equivalent cylinder
   */
  public static BeamSegment fluted(
      double lengthM,
      double diameterM,
      double equivalentDiameterRatio,
      double areaRatio,
      BeamMaterial material) {
    Require.positive("equivalentDiameterRatio", equivalentDiameterRatio);
    Require.within("equivalentDiameterRatio", equivalentDiameterRatio, 0, 1);
    Require.within("areaRatio", areaRatio, 0, 1);
    double densityRatio = areaRatio / (equivalentDiameterRatio * equivalentDiameterRatio);
    BeamMaterial spread =
        new BeamMaterial(
            material.youngPa(), material.poisson(), material.densityKgPerM3() * densityRatio);
    return cylinder(lengthM, equivalentDiameterRatio * diameterM, spread);
  }

  /**
   * This segment with a bore, empty of any core.
   *
   * @param diameterM bore diameter, m
   * @return the bored segment
   */
  public BeamSegment withBore(double diameterM) {
    return new BeamSegment(
        lengthM, startDiameterM, endDiameterM, diameterM, material, 0, coreMaterial);
  }

  /**
   * This segment with its bore filled by a core of the bore's diameter.
   *
   * @param diameterM diameter of bore and core, m
   * @param core material of the core
   * @return the composite segment
   */
  public BeamSegment withCore(double diameterM, BeamMaterial core) {
    return new BeamSegment(
        lengthM, startDiameterM, endDiameterM, diameterM, material, diameterM, core);
  }

  boolean isCylinder() {
    return startDiameterM == endDiameterM;
  }

  boolean isSolid() {
    return boreDiameterM == 0;
  }
}
