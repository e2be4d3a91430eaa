package org.gaugeline.mechanics.grip;

import org.gaugeline.mechanics.Require;

/**
 * A solid round shank in the shrunk bore of a round nose: Lamé's thick-walled cylinder with two
 * materials.
 *
 * <p>Valid in the elastic range, for a nose of constant outside diameter and a shank without flats;
 * the contact pressure is the mean over the length, without the peak at the mouth.
 *
 * @param boreDiameterM diameter of the joint, m, above 0
 * @param noseDiameterM outside diameter of the nose, m, above the bore diameter
 * @param nose material of the nose
 * @param shank material of the shank
 */
public record ShrinkFit(
    double boreDiameterM, double noseDiameterM, ElasticMaterial nose, ElasticMaterial shank) {
  /** Checks the ranges. */
  public ShrinkFit {
    Require.positive("boreDiameterM", boreDiameterM);
    Require.between("noseDiameterM", noseDiameterM, boreDiameterM, Double.POSITIVE_INFINITY);
  }

  /**
   * Diametral interference left after the roughness peaks are flattened: δ − k·(Rz1 + Rz2), not
   * below 0 (press-fit notes take k = 0.2; DIN 7190-1 takes 0.8).
   *
   * @param interferenceM measured diametral interference δ, m, at least 0
   * @param smoothingShare share k of the roughness that is lost, 0 to 1
   * @param noseRoughnessRzM peak-to-valley roughness Rz of the bore, m, at least 0
   * @param shankRoughnessRzM peak-to-valley roughness Rz of the shank, m, at least 0
   * @return effective diametral interference, m
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static double effectiveInterferenceM(
      double interferenceM,
      double smoothingShare,
      double noseRoughnessRzM,
      double shankRoughnessRzM) {
    Require.notNegative("interferenceM", interferenceM);
    Require.within("smoothingShare", smoothingShare, 0, 1);
    Require.notNegative("noseRoughnessRzM", noseRoughnessRzM);
    Require.notNegative("shankRoughnessRzM", shankRoughnessRzM);
    return Math.max(0, interferenceM - smoothingShare * (noseRoughnessRzM + shankRoughnessRzM));
  }

  /**
   * Diametral interference taken up by a unit of contact pressure: d·[((D²+d²)/(D²−d²) + νo)/Eo +
   * (1 − νi)/Ei] (Shigley 9th ed. eq. 3-56 with a solid inner member).
   *
   * @return compliance of the joint, m/Pa
   */
  public double complianceMPerPa() {
    return boreDiameterM
        * ((wallRatio() + nose.poissonRatio()) / nose.youngsModulusPa()
            + (1 - shank.poissonRatio()) / shank.youngsModulusPa());
  }

  /**
   * Contact pressure at rest (Shigley 9th ed. eq. 3-56).
   *
   * @param effectiveInterferenceM effective diametral interference, m, at least 0
   * @return contact pressure, Pa
   * @throws IllegalArgumentException if the interference is negative
   */
  public double pressurePa(double effectiveInterferenceM) {
    return pressurePa(effectiveInterferenceM, 0);
  }

  /**
   * Contact pressure while turning: Lamé with the interference reduced by what the turning bore
   * opens beyond the turning shank; 0 once the joint is loose.
   *
   * @param effectiveInterferenceM effective diametral interference at rest, m, at least 0
   * @param angularVelocityRadPerS angular velocity, rad/s, at least 0
   * @return contact pressure, Pa
   * @throws IllegalArgumentException if a value is outside its range
   */
  public double pressurePa(double effectiveInterferenceM, double angularVelocityRadPerS) {
    Require.notNegative("effectiveInterferenceM", effectiveInterferenceM);
    double left = effectiveInterferenceM - interferenceLossM(angularVelocityRadPerS);
    return Math.max(0, left / complianceMPerPa());
  }

  /**
   * Diametral interference lost to rotation, 2·(uh − us), with the radial growth of the bore uh =
   * ρo·ω²·R/(4Eo)·[(3+νo)·ro² + (1−νo)·R²] and of the solid shank us = ρi·ω²·R³·(1−νi)/(4Ei), plane
   * stress (from the rotating-ring stresses, Shigley 9th ed. eq. 3-55).
   *
   * @param angularVelocityRadPerS angular velocity ω, rad/s, at least 0
   * @return lost diametral interference, m; negative if the shank grows more than the bore
   * @throws IllegalArgumentException if the angular velocity is negative
   */
  public double interferenceLossM(double angularVelocityRadPerS) {
    Require.notNegative("angularVelocityRadPerS", angularVelocityRadPerS);
    return lossPerSpeedSquared() * angularVelocityRadPerS * angularVelocityRadPerS;
  }

  /**
   * Angular velocity at which the contact pressure has fallen to a given value: ω = √((δ − p·C)/k)
   * with C the compliance of the joint and k·ω² the interference lost to rotation.
   *
   * @param effectiveInterferenceM effective diametral interference at rest, m, at least 0
   * @param pressurePa contact pressure to be kept, Pa, at least 0
   * @return angular velocity, rad/s; 0 if the pressure is not reached at rest, infinite if rotation
   *     does not loosen the joint
   * @throws IllegalArgumentException if a value is outside its range
   */
  public double angularVelocityAtPressureRadPerS(double effectiveInterferenceM, double pressurePa) {
    Require.notNegative("effectiveInterferenceM", effectiveInterferenceM);
    Require.notNegative("pressurePa", pressurePa);
    double spareM = effectiveInterferenceM - pressurePa * complianceMPerPa();
    if (spareM < 0) {
      return 0;
    }
    double loss = lossPerSpeedSquared();
    return loss > 0 ? Math.sqrt(spareM / loss) : Double.POSITIVE_INFINITY;
  }

  /**
   * Tangential stress at the bore from the contact pressure alone: p·(D²+d²)/(D²−d²) (Lamé; Shigley
   * 9th ed. eq. 3-49 ff.). Stress from rotation is not included.
   *
   * @param pressurePa contact pressure p, Pa, at least 0
   * @return hoop stress, Pa
   * @throws IllegalArgumentException if the pressure is negative
   */
  public double boreHoopStressPa(double pressurePa) {
    return Require.notNegative("pressurePa", pressurePa) * wallRatio();
  }

  /**
   * Rise of the nose's temperature that opens the bore enough to insert a cold shank: (δ +
   * s)/(αo·d).
   *
   * @param interferenceM diametral interference δ, m, at least 0
   * @param insertionClearanceM diametral clearance s wanted while inserting, m, at least 0
   * @return temperature rise above the shank, K
   * @throws IllegalArgumentException if a value is outside its range
   */
  public double insertionTemperatureRiseK(double interferenceM, double insertionClearanceM) {
    Require.notNegative("interferenceM", interferenceM);
    Require.notNegative("insertionClearanceM", insertionClearanceM);
    return (interferenceM + insertionClearanceM) / (nose.thermalExpansionPerK() * boreDiameterM);
  }

  /**
   * Temperature rise at which the joint releases when nose and shank are equally hot: δ/((αo −
   * αi)·d). Heating only the skin of the nose quickly releases earlier.
   *
   * @param interferenceM diametral interference δ, m, at least 0
   * @return temperature rise of both, K; infinite if the nose expands no more than the shank
   * @throws IllegalArgumentException if the interference is negative
   */
  public double releaseTemperatureRiseK(double interferenceM) {
    Require.notNegative("interferenceM", interferenceM);
    double gainPerK = nose.thermalExpansionPerK() - shank.thermalExpansionPerK();
    return gainPerK > 0 ? interferenceM / (gainPerK * boreDiameterM) : Double.POSITIVE_INFINITY;
  }

  private double wallRatio() {
    double outer = noseDiameterM * noseDiameterM;
    double inner = boreDiameterM * boreDiameterM;
    return (outer + inner) / (outer - inner);
  }

  private double lossPerSpeedSquared() {
    double inner = boreDiameterM * boreDiameterM / 4;
    double outer = noseDiameterM * noseDiameterM / 4;
    double noseNu = nose.poissonRatio();
    double boreGrowth =
        nose.densityKgPerM3()
            / nose.youngsModulusPa()
            * ((3 + noseNu) * outer + (1 - noseNu) * inner);
    double shankGrowth =
        shank.densityKgPerM3() / shank.youngsModulusPa() * (1 - shank.poissonRatio()) * inner;
    return boreDiameterM / 4 * (boreGrowth - shankGrowth);
  }
}
