package org.gaugeline.mechanics.cutting;

import org.gaugeline.mechanics.Require;

/**
 * What is believed about the specific cutting force below the chip thickness at which the Kienzle
 * constants were measured, where the power law is an extrapolation.
 */
public sealed interface ThinChipRoute {

  /**
   * Exponent of the handbook's feed factor C = (0.30 mm / h)^e. It reproduces the printed factors
   * 1.0 at 0.30 mm, 1.25 at 0.10 mm and 1.40 at 0.05 mm within 1.5 % (Machinery's Handbook 31st
   * ed., p. 1147, from memory).
   */
  double HANDBOOK_FEED_EXPONENT = 0.195;

  /** Chip thickness at which the handbook's feed factor is 1, m (same source). */
  double HANDBOOK_REFERENCE_M = 0.30e-3;

  /** The power law all the way down: for constants measured in the caller's own thin chips. */
  record PowerLaw() implements ThinChipRoute {}

  /**
   * The handbook's power constant: kc = Kp·C(h)·W (Machinery's Handbook 31st ed., p. 1147).
   *
   * @param powerPa power per removal rate at feed factor 1 (0.30 mm), Pa = W·s/m³, &gt; 0
   * @param feedExponent exponent of the feed factor, 0 to below 1, see {@link
   *     #HANDBOOK_FEED_EXPONENT}
   * @param workFactor the factor W for kind of cut and state of the edge, &gt; 0
   */
  record Handbook(double powerPa, double feedExponent, double workFactor) implements ThinChipRoute {
    public Handbook {
      Require.positive("powerPa", powerPa);
      Require.within("feedExponent", feedExponent, 0, 0.99);
      Require.positive("workFactor", workFactor);
    }
  }

  /**
   * For a material without a power constant: starts from the Kienzle value at the calibrated chip
   * thickness and rises with the handbook's exponent.
   *
   * @param feedExponent as in {@link Handbook}, 0 to below 1
   */
  record Anchored(double feedExponent) implements ThinChipRoute {
    public Anchored {
      Require.within("feedExponent", feedExponent, 0, 0.99);
    }
  }
}
