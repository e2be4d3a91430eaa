package org.gaugeline.mechanics.beam;

/**
 * Static compliance of the tip of a chain, parted by cause. Euler–Bernoulli bending plus Timoshenko
 * shear plus joints in series; exact for cylinders and cones of linear elastic material.
 *
 * <p>C = Σ[∫x² dx/EI + ∫dx/κGA] over the segments + Σ[1/k_t + A²/k_θ] over the joints, with x and A
 * the distance from the tip (unit-load theorem; for a cylinder (a³ − b³)/3EI + l/κGA).
 *
 * @param bendingMPerN share of bending, m/N
 * @param shearMPerN share of shear, m/N
 * @param jointTranslationMPerN share of the lateral springs, m/N
 * @param jointRotationMPerN share of the rotational springs, m/N
 */
public record TipCompliance(
    double bendingMPerN,
    double shearMPerN,
    double jointTranslationMPerN,
    double jointRotationMPerN) {

  /**
   * Deflection of the tip per lateral force at the tip. Allocates nothing.
   *
   * @param chain the chain
   * @return compliance C, m/N
   */
  public static double of(BeamChain chain) {
    double[] t = chain.table;
    double arm = 0;
    double sum = 0;
    for (int at = (chain.rows - 1) * ChainRows.STRIDE; at >= 0; at -= ChainRows.STRIDE) {
      sum +=
          t[at + ChainRows.FLEX_2]
              + t[at + ChainRows.SHEAR]
              + arm * (2 * t[at + ChainRows.FLEX_1] + arm * t[at + ChainRows.FLEX_0]);
      arm += t[at + ChainRows.LENGTH];
    }
    return sum;
  }

  /**
   * Deflection per lateral force, both at a height above the tip within the last cylinder of the
   * chain: as {@link #of} of a chain that ends there. Allocates nothing.
   *
   * @param chain the chain, its last element a cylinder
   * @param heightM height above the tip, m, 0 to below the length of that cylinder
   * @return compliance C, m/N
   * @throws IllegalArgumentException if the chain does not end in a cylinder longer than that
   */
  public static double atHeight(BeamChain chain, double heightM) {
    double[] t = chain.table;
    int last = (chain.rows - 1) * ChainRows.STRIDE;
    double whole = t[last + ChainRows.LENGTH];
    if (t[last + ChainRows.KIND] != ChainRows.UNIFORM || !(heightM >= 0 && heightM < whole)) {
      throw new IllegalArgumentException(
          "heightM is " + heightM + " but must lie in a cylinder at the tip, " + whole + " long");
    }
    double arm = whole - heightM;
    double share = arm / whole;
    double sum = share * (t[last + ChainRows.FLEX_0] * arm * arm / 3 + t[last + ChainRows.SHEAR]);
    for (int at = last - ChainRows.STRIDE; at >= 0; at -= ChainRows.STRIDE) {
      sum +=
          t[at + ChainRows.FLEX_2]
              + t[at + ChainRows.SHEAR]
              + arm * (2 * t[at + ChainRows.FLEX_1] + arm * t[at + ChainRows.FLEX_0]);
      arm += t[at + ChainRows.LENGTH];
    }
    return sum;
  }

  /**
   * Rotation of the tip section per lateral force at the tip, Σ∫x dx/EI + ΣA/k_θ; by reciprocity
   * also the deflection of the tip per moment at the tip. Allocates nothing.
   *
   * @param chain the chain
   * @return rotation, rad/N
   */
  public static double rotationRadPerN(BeamChain chain) {
    double[] t = chain.table;
    double arm = 0;
    double sum = 0;
    for (int at = (chain.rows - 1) * ChainRows.STRIDE; at >= 0; at -= ChainRows.STRIDE) {
      sum += t[at + ChainRows.FLEX_1] + arm * t[at + ChainRows.FLEX_0];
      arm += t[at + ChainRows.LENGTH];
    }
    return sum;
  }

  /**
   * Rotation of the tip section per moment at the tip, Σ∫dx/EI + Σ1/k_θ. Allocates nothing.
   *
   * @param chain the chain
   * @return rotation, rad/(N·m)
   */
  public static double rotationRadPerNm(BeamChain chain) {
    double[] t = chain.table;
    double sum = 0;
    for (int at = (chain.rows - 1) * ChainRows.STRIDE; at >= 0; at -= ChainRows.STRIDE) {
      sum += t[at + ChainRows.FLEX_0];
    }
    return sum;
  }

  /**
   * The compliance of {@link #of}, parted by cause.
   *
   * @param chain the chain
   * @return the shares
   */
  public static TipCompliance sharesOf(BeamChain chain) {
    double[] t = chain.table;
    double arm = 0;
    double bending = 0;
    double shear = 0;
    double translation = 0;
    double rotation = 0;
    for (int at = (chain.rows - 1) * ChainRows.STRIDE; at >= 0; at -= ChainRows.STRIDE) {
      double turn = arm * (2 * t[at + ChainRows.FLEX_1] + arm * t[at + ChainRows.FLEX_0]);
      if (t[at + ChainRows.KIND] == ChainRows.JOINT) {
        translation += t[at + ChainRows.FLEX_2];
        rotation += turn;
      } else {
        bending += t[at + ChainRows.FLEX_2] + turn;
        shear += t[at + ChainRows.SHEAR];
      }
      arm += t[at + ChainRows.LENGTH];
    }
    return new TipCompliance(bending, shear, translation, rotation);
  }

  /**
   * Sum of the shares.
   *
   * @return compliance C, m/N
   */
  public double totalMPerN() {
    return bendingMPerN + shearMPerN + jointTranslationMPerN + jointRotationMPerN;
  }
}
