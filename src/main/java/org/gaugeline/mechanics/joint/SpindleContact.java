package org.gaugeline.mechanics.joint;

/**
 * What a clamped spindle joint bears before it starts to open. Beyond the opening moment the joint
 * loses stiffness, frets and repeats badly, so it is the limit to design to.
 */
public sealed interface SpindleContact permits FaceContact, TaperContact, ThreeSurfaceContact {
  /**
   * Bending moment at which contact starts to be lost somewhere.
   *
   * @return moment, N·m
   */
  double openingMomentNm();

  /**
   * Share of the opening moment that a bending moment uses up, |M|/M₀.
   *
   * @param bendingMomentNm bending moment at the joint, N·m, either sign
   * @return use, 0 or more; above 1 the joint opens
   */
  default double bendingMomentUse(double bendingMomentNm) {
    return Math.abs(bendingMomentNm) / openingMomentNm();
  }
}
