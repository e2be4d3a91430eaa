package org.gaugeline.assembly;

/**
 * What was measured of one joint; NaN stands for not measured. It replaces what is predicted.
 *
 * @param radialNPerM lateral stiffness
 * @param rotationalNmPerRad bending stiffness
 * @param faceTiltRad runout of the seating face over its diameter: the angle by which it tilts what
 *     sits on it
 * @param runoutTirM radial runout of the seat
 */
public record Joint(
    double radialNPerM, double rotationalNmPerRad, double faceTiltRad, double runoutTirM) {
  private static final double N = Double.NaN;

  /** A joint of which nothing was measured. */
  public static final Joint UNMEASURED = new Joint(N, N, N, N);

  /** The measured lateral stiffness, else the predicted one. */
  public double radialOr(double predictedNPerM) {
    return Double.isNaN(radialNPerM) ? predictedNPerM : radialNPerM;
  }

  /** The measured bending stiffness, else the predicted one. */
  public double rotationalOr(double predictedNmPerRad) {
    return Double.isNaN(rotationalNmPerRad) ? predictedNmPerRad : rotationalNmPerRad;
  }

  /** The measured tilt, else the predicted one. */
  private double tiltOr(double predictedRad) {
    return Double.isNaN(faceTiltRad) ? predictedRad : faceTiltRad;
  }

  /** This joint, with what another one knows where this one knows nothing. */
  Joint orElse(Joint other) {
    return new Joint(
        radialOr(other.radialNPerM),
        rotationalOr(other.rotationalNmPerRad),
        tiltOr(other.faceTiltRad),
        Double.isNaN(runoutTirM) ? other.runoutTirM : runoutTirM);
  }

  /** The joint between two faces, each of which tilts: their errors are independent. */
  Joint against(Joint face) {
    boolean both = !Double.isNaN(faceTiltRad) && !Double.isNaN(face.faceTiltRad);
    return new Joint(
        radialNPerM,
        rotationalNmPerRad,
        both ? Math.hypot(faceTiltRad, face.faceTiltRad) : tiltOr(face.faceTiltRad),
        face.runoutTirM);
  }
}
