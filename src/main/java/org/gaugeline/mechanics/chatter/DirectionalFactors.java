package org.gaugeline.mechanics.chatter;

/**
 * Directional factors of milling, integrated over an arc, so that the mean over a tooth period of
 * [F_x, F_y] is ½·a·K_t·(N/2π)·[[xx, xy], [yx, yy]]·[Δx, Δy].
 *
 * <p>xx = ½[cos 2φ − 2K_rφ + K_r sin 2φ], xy = ½[−sin 2φ − 2φ + K_r cos 2φ], yx = ½[−sin 2φ + 2φ +
 * K_r cos 2φ], yy = ½[−cos 2φ − 2K_rφ − K_r sin 2φ], each from the first to the second angle
 * (Altintas and Budak, CIRP Annals 44/1 (1995) 357; as coded in a public script citing Altintas
 * 2012, p. 156).
 *
 * @param xx force along the feed by displacement along the feed, dimensionless
 * @param xy force along the feed by displacement along the normal
 * @param yx force along the normal by displacement along the feed
 * @param yy force along the normal by displacement along the normal
 */
public record DirectionalFactors(double xx, double xy, double yx, double yy) {
  /**
   * Factors of an arc.
   *
   * @param fromRad first angle from the normal to the feed, rad
   * @param toRad second angle, rad
   * @param radialRatio K_r
   * @return the factors
   */
  public static DirectionalFactors over(double fromRad, double toRad, double radialRatio) {
    double cosine = Math.cos(2 * toRad) - Math.cos(2 * fromRad);
    double sine = Math.sin(2 * toRad) - Math.sin(2 * fromRad);
    double twice = 2 * (toRad - fromRad);
    return new DirectionalFactors(
        (cosine - radialRatio * twice + radialRatio * sine) / 2,
        (-sine - twice + radialRatio * cosine) / 2,
        (-sine + twice + radialRatio * cosine) / 2,
        (-cosine - radialRatio * twice - radialRatio * sine) / 2);
  }

  /**
   * Factors of a force that acts along the radius against the velocity along it, −∫n nᵀ dφ with n =
   * (sin φ, cos φ), scaled like the others: the mean force is ½·a·K_t·(N/2π)·2(ℓ/v)·these·[ẋ, ẏ].
   *
   * @param fromRad first angle from the normal to the feed, rad
   * @param toRad second angle, rad
   * @return the factors
   */
  static DirectionalFactors rubbing(double fromRad, double toRad) {
    double cosine = Math.cos(2 * toRad) - Math.cos(2 * fromRad);
    double sine = Math.sin(2 * toRad) - Math.sin(2 * fromRad);
    double twice = 2 * (toRad - fromRad);
    return new DirectionalFactors(-(twice - sine) / 4, cosine / 4, cosine / 4, -(twice + sine) / 4);
  }

  /**
   * Factors of a process over its whole arc.
   *
   * @param process the process
   * @return the factors
   */
  public static DirectionalFactors of(MillingProcess process) {
    return over(
        process.engagement().entryRad(), process.engagement().exitRad(), process.radialRatio());
  }
}
