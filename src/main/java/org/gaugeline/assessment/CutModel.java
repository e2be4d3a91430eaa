package org.gaugeline.assessment;

/**
 * The forces of a job's cut, for any axial depth and feed around what was asked. All values at the
 * median cutting force.
 */
sealed interface CutModel
    permits MillingCutModel,
        HoleCutModel,
        TappingCutModel,
        BoringCutModel,
        PlungeCutModel,
        RampCutModel,
        FormCutModel {

  /**
   * Forces at a depth and feed.
   *
   * @param axialDepthM axial depth of cut, m, &gt; 0; ignored by hole making
   * @param feedPerToothM feed per tooth, m, &gt; 0
   */
  CutForces at(double axialDepthM, double feedPerToothM);

  /** Forces as asked where nothing else will be asked: as {@link #at}, to some 0.1 %. */
  CutForces once();

  /** Depth beyond which the tool has no edge left, m; +∞ where only the flutes end it. */
  default double deepestM() {
    return Double.POSITIVE_INFINITY;
  }

  /** Mean chip thickness as asked, m. */
  double meanChipThicknessM();

  /** Specific cutting force at that thickness, Pa. */
  double specificForcePa();

  /** Volume of chips per time as asked, m³/s. */
  double removalRateM3PerS();

  /** Exponent of the force law, for the effect of runout on the peak. */
  double kienzleExponent();
}
