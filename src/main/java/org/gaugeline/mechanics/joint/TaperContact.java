package org.gaugeline.mechanics.joint;

import org.gaugeline.mechanics.Require;

/**
 * A steep taper seated by the drawbar alone, without face contact.
 *
 * <p>Derived here, not published. The drawbar force F seats the cone over a length l_c at its large
 * end (angle tolerances let shank and spindle touch over only part of the taper). Axial balance
 * with friction of the draw-in gives the mean normal pressure p₀ = F/(π·d·l_c·(tan α + μ)). A
 * bending moment tilts the cone about the middle of the contact; for small α the pressure changes
 * by p₁·(2x/l_c − 1)·cos ψ, whose moment is p₁·π·d·l_c²/12. Contact starts to be lost at the ends,
 * and so at the large end, when p₁ = p₀:
 *
 * <p>M₀ = F·l_c/(12(tan α + μ)).
 *
 * <p>The diameter cancels. Terms of order tan²α are neglected (2 % at 7/24). Leaving friction out
 * would promise more pressure than the draw-in leaves.
 *
 * @param drawbarForceN drawbar force F, N, greater than 0
 * @param taperLengthM length of the taper, m, greater than 0
 * @param contactLengthRatio share of the taper length in contact, above 0 to 1
 * @param halfAngleRad half angle α of the cone, rad, above 0 to π/4
 * @param frictionCoefficient μ of the seating, 0 to 1
 */
public record TaperContact(
    double drawbarForceN,
    double taperLengthM,
    double contactLengthRatio,
    double halfAngleRad,
    double frictionCoefficient)
    implements SpindleContact {
  public TaperContact {
    Require.positive("drawbarForceN", drawbarForceN);
    Require.positive("taperLengthM", taperLengthM);
    Require.positive("contactLengthRatio", contactLengthRatio);
    Require.within("contactLengthRatio", contactLengthRatio, 0, 1);
    Require.positive("halfAngleRad", halfAngleRad);
    Require.within("halfAngleRad", halfAngleRad, 0, Math.PI / 4);
    Require.within("frictionCoefficient", frictionCoefficient, 0, 1);
  }

  /**
   * Moment at which only the two ends of the contact still carry, on opposite sides: axial balance
   * leaves each a side force F/(2(tan α + μ)) at the distance l_c, so M = F·l_c/(2(tan α + μ)), six
   * times the onset.
   *
   * @return moment, N·m
   */
  public double endContactMomentNm() {
    return 6 * openingMomentNm();
  }

  @Override
  public double openingMomentNm() {
    return wedgeForceN() * contactLengthRatio * taperLengthM / 12;
  }

  /**
   * Torque that the taper holds by friction before the drive keys do: T = μ·F/(sin α + μ·cos α)·r
   * with r the mean radius of the contact.
   *
   * @param gaugeDiameterM diameter at the large end, m, larger than the contact's taper
   * @return torque, N·m
   */
  public double frictionTorqueNm(double gaugeDiameterM) {
    Require.positive("gaugeDiameterM", gaugeDiameterM);
    double meanRadius =
        gaugeDiameterM / 2 - contactLengthRatio * taperLengthM * Math.tan(halfAngleRad) / 2;
    Require.positive("mean radius of the contact in m", meanRadius);
    return frictionCoefficient * wedgeForceN() / Math.cos(halfAngleRad) * meanRadius;
  }

  private double wedgeForceN() {
    return drawbarForceN / (Math.tan(halfAngleRad) + frictionCoefficient);
  }
}
