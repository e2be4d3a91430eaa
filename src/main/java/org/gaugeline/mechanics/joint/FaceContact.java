package org.gaugeline.mechanics.joint;

import org.gaugeline.mechanics.Require;

/**
 * A flat annular face pressed together by an axial force (hollow taper shank: the face's share of
 * the clamping force, the rest being lost in the taper's interference).
 *
 * <p>Derived from linear contact pressure without tension. The taper's own share of the moment is
 * left out, which errs on the safe side.
 *
 * @param faceForceN axial force on the face F_f, N, greater than 0
 * @param outerDiameterM outer diameter of the contact D_o, m
 * @param innerDiameterM inner diameter D_i, m, 0 to below D_o
 */
public record FaceContact(double faceForceN, double outerDiameterM, double innerDiameterM)
    implements SpindleContact {
  public FaceContact {
    Require.positive("faceForceN", faceForceN);
    Require.positive("outerDiameterM", outerDiameterM);
    if (!(innerDiameterM >= 0 && innerDiameterM < outerDiameterM)) {
      throw new IllegalArgumentException(
          "innerDiameterM is " + innerDiameterM + " but must lie in [0, " + outerDiameterM + ")");
    }
  }

  /**
   * Moment at which the rim starts to lift: M₀ = F_f(D_o² + D_i²)/(8D_o), the kern of the annulus.
   *
   * @return moment, N·m
   */
  @Override
  public double openingMomentNm() {
    double outer = outerDiameterM;
    return faceForceN * (outer * outer + innerDiameterM * innerDiameterM) / (8 * outer);
  }

  /**
   * Moment at which the joint tips over its rim: M_t = F_f·D_o/2. Never a limit to design to.
   *
   * @return moment, N·m
   */
  public double liftOffMomentNm() {
    return faceForceN * outerDiameterM / 2;
  }

  /**
   * Torque that the face holds by friction: T = μ·F_f·r_m, r_m = ⅔(R_o³ − R_i³)/(R_o² − R_i²), for
   * even pressure.
   *
   * @param frictionCoefficient μ, 0 to 1
   * @return torque, N·m
   */
  public double frictionTorqueNm(double frictionCoefficient) {
    Require.within("frictionCoefficient", frictionCoefficient, 0, 1);
    double outer = outerDiameterM / 2;
    double inner = innerDiameterM / 2;
    // (Ro³ − Ri³)/(Ro² − Ri²) with the common factor divided out, so thin rings lose no digits.
    double meanRadius = 2.0 / 3 * (outer * outer + outer * inner + inner * inner) / (outer + inner);
    return frictionCoefficient * faceForceN * meanRadius;
  }
}
