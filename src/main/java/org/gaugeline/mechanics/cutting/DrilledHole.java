package org.gaugeline.mechanics.cutting;

import org.gaugeline.mechanics.Require;

/**
 * A hole being drilled or opened.
 *
 * @param diameterM drill diameter D, m, &gt; 0
 * @param preDrilledDiameterM diameter already open d, m, 0 to below D; 0 for a drill into solid
 * @param feedPerRevM feed per revolution f, m, &gt; 0
 * @param pointAngleRad point angle σ, rad, above 0 to π
 * @param lips number of cutting lips, &ge; 1
 */
public record DrilledHole(
    double diameterM,
    double preDrilledDiameterM,
    double feedPerRevM,
    double pointAngleRad,
    int lips) {
  public DrilledHole {
    Require.positive("diameterM", diameterM);
    Require.notNegative("preDrilledDiameterM", preDrilledDiameterM);
    Require.positive("diameterM - preDrilledDiameterM", diameterM - preDrilledDiameterM);
    Require.positive("feedPerRevM", feedPerRevM);
    Require.within("pointAngleRad", pointAngleRad, 0.1, Math.PI);
    Require.atLeastOne("lips", lips);
  }

  /** Chip thickness of one lip, f/z·sin(σ/2), m. */
  double chipThicknessM() {
    return feedPerRevM / lips * Math.sin(pointAngleRad / 2);
  }

  /** D² − d², m². */
  double squareDifferenceM2() {
    return diameterM * diameterM - preDrilledDiameterM * preDrilledDiameterM;
  }
}
