package org.gaugeline.mechanics.joint;

import org.gaugeline.mechanics.Require;

/**
 * A joint that touches at its face and at two zones of its taper.
 *
 * <p>Derived here, not published. The face carries its share of the clamping force and opens as in
 * {@link FaceContact}. The rest seats the two zones, half each. Pressure on a zone varies as cos ψ
 * when it is pushed sideways, so it starts to open at a side force Q = F_z/(2(tan α + μ)), F_z the
 * axial force on the zone; the two zones form a couple Q·b over their distance b:
 *
 * <p>M₀ = M₀,face + b·Q.
 *
 * <p>The sum takes face and zones to reach their limits together, as they are meant to by the
 * elasticity of the zones; where one is much stiffer than the other the joint opens earlier.
 *
 * @param face the face with its share of the clamping force
 * @param taperForceN axial force that seats both zones together, N, greater than 0
 * @param zoneDistanceM distance between the middles of the zones b, m, greater than 0
 * @param halfAngleRad half angle α of the taper, rad, above 0 to π/4
 * @param frictionCoefficient μ of the seating, 0 to 1
 */
public record ThreeSurfaceContact(
    FaceContact face,
    double taperForceN,
    double zoneDistanceM,
    double halfAngleRad,
    double frictionCoefficient)
    implements SpindleContact {
  public ThreeSurfaceContact {
    Require.positive("taperForceN", taperForceN);
    Require.positive("zoneDistanceM", zoneDistanceM);
    Require.positive("halfAngleRad", halfAngleRad);
    Require.within("halfAngleRad", halfAngleRad, 0, Math.PI / 4);
    Require.within("frictionCoefficient", frictionCoefficient, 0, 1);
  }

  @Override
  public double openingMomentNm() {
    return face.openingMomentNm() + zoneDistanceM * zoneSideForceN();
  }

  /**
   * Side force at which one taper zone starts to open.
   *
   * @return Q, N
   */
  public double zoneSideForceN() {
    return taperForceN / 2 / (2 * (Math.tan(halfAngleRad) + frictionCoefficient));
  }
}
