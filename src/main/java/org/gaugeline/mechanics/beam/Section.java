package org.gaugeline.mechanics.beam;

/** Stiffness and mass of one round cross-section of a segment, body and core added up. */
final class Section {
  private Section() {}

  /** EI, N·m². */
  static double bendingStiffnessNm2(BeamSegment s, double diameterM) {
    return Math.PI
        / 64
        * (s.material().youngPa() * (fourth(diameterM) - fourth(s.boreDiameterM()))
            + s.coreMaterial().youngPa() * fourth(s.coreDiameterM()));
  }

  /** κGA, N. */
  static double shearStiffnessN(BeamSegment s, double diameterM) {
    BeamMaterial body = s.material();
    double bore = s.boreDiameterM();
    double shell =
        ShearCoefficient.hollowRound(body.poisson(), bore / diameterM)
            * body.shearModulusPa()
            * (diameterM * diameterM - bore * bore);
    double coreD = s.coreDiameterM();
    if (coreD == 0) {
      return Math.PI / 4 * shell;
    }
    BeamMaterial core = s.coreMaterial();
    double filled =
        ShearCoefficient.solidRound(core.poisson()) * core.shearModulusPa() * coreD * coreD;
    return Math.PI / 4 * (shell + filled);
  }

  /** ρA, kg/m. */
  static double massKgPerM(BeamSegment s, double diameterM) {
    double bore = s.boreDiameterM();
    double core = s.coreDiameterM();
    return Math.PI
        / 4
        * (s.material().densityKgPerM3() * (diameterM * diameterM - bore * bore)
            + s.coreMaterial().densityKgPerM3() * core * core);
  }

  /** ρI, kg·m. */
  static double rotaryInertiaKgM(BeamSegment s, double diameterM) {
    return Math.PI
        / 64
        * (s.material().densityKgPerM3() * (fourth(diameterM) - fourth(s.boreDiameterM()))
            + s.coreMaterial().densityKgPerM3() * fourth(s.coreDiameterM()));
  }

  private static double fourth(double x) {
    double square = x * x;
    return square * square;
  }
}
