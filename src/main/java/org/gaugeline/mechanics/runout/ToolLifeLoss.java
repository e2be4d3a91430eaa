package org.gaugeline.mechanics.runout;

import org.gaugeline.mechanics.Require;

/**
 * Rule of thumb for tool life lost to runout: in a straight line down to a floor, for tools below a
 * diameter.
 *
 * @param lossPerM share of the life lost per metre of total indicated runout, 1/m, at least 0
 * @param floor smallest share of the life that the rule returns, 0 to 1
 * @param diameterLimitM diameter from which on no loss is counted, m, above 0
 */
public record ToolLifeLoss(double lossPerM, double floor, double diameterLimitM) {
  /** Checks the ranges. */
  public ToolLifeLoss {
    Require.notNegative("lossPerM", lossPerM);
    Require.within("floor", floor, 0, 1);
    Require.positive("diameterLimitM", diameterLimitM);
  }

  /**
   * Share of the tool life that is left: max(floor, 1 − k·TIR) below the diameter limit, else 1.
   *
   * @param tirM total indicated runout at the tip, m, at least 0
   * @param toolDiameterM tool diameter, m, above 0
   * @return share of the life without runout, within 0 and 1
   * @throws IllegalArgumentException if a value is outside its range
   */
  public double lifeFactor(double tirM, double toolDiameterM) {
    Require.notNegative("tirM", tirM);
    Require.positive("toolDiameterM", toolDiameterM);
    return toolDiameterM < diameterLimitM ? Math.max(floor, 1 - lossPerM * tirM) : 1;
  }
}
