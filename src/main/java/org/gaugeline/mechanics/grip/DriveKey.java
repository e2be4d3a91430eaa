package org.gaugeline.mechanics.grip;

import org.gaugeline.mechanics.Require;

/**
 * Keys or tenons that carry the torque at a mean radius.
 *
 * @param key one key
 * @param keyCount number of keys that bear together, at least 1
 * @param meanRadiusM radius of the bearing faces' middle, m, above 0
 * @param allowable allowable stresses of the weaker of key and slot
 */
public record DriveKey(Key key, int keyCount, double meanRadiusM, AllowableStress allowable)
    implements PositiveStop {
  /** Checks the ranges. */
  public DriveKey {
    Require.within("keyCount", keyCount, 1, Integer.MAX_VALUE);
    Require.positive("meanRadiusM", meanRadiusM);
  }

  /**
   * Torque n·r·min(τ·w·l, p·t·l): each key of width w and length l sheared at its root or crushed
   * over its engaged depth t (Shigley 9th ed. ch. 7, keys).
   *
   * @return torque, N·m
   */
  @Override
  public double torqueNm() {
    double shear = allowable.shearPa() * key.widthM();
    double bearing = allowable.bearingPa() * key.engagedDepthM();
    return keyCount * meanRadiusM * key.lengthM() * Math.min(shear, bearing);
  }

  /**
   * A drive key does not block axial travel.
   *
   * @return 0
   */
  @Override
  public double axialForceN() {
    return 0;
  }

  /**
   * A prismatic key.
   *
   * @param widthM width w across the direction of the force, the sheared side, m, above 0
   * @param engagedDepthM depth t over which the face bears, m, above 0
   * @param lengthM bearing length l, m, above 0
   */
  public record Key(double widthM, double engagedDepthM, double lengthM) {
    /** Checks the ranges. */
    public Key {
      Require.positive("widthM", widthM);
      Require.positive("engagedDepthM", engagedDepthM);
      Require.positive("lengthM", lengthM);
    }
  }
}
