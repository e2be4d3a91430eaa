package org.gaugeline.advice;

import org.jspecify.annotations.Nullable;

/**
 * Money, in the shop's currency.
 *
 * @param price of the assembly; NaN where unknown
 * @param purchase of what the shop has not got of it; NaN where unknown
 * @param owned whether it stands in the shop's stock
 * @param edgeCostPerPart tool wear per part at the predicted life
 * @param changeOverCostPerPart time to change the worn tool, as often as it wears out
 * @param holderCostPerPart price spread over a year's parts; 0 for owned holders
 * @param costPerPart sum of the three
 * @param breakEven when what must be bought is paid by what it saves; null where it never is
 */
public record Economics(
    double price,
    double purchase,
    boolean owned,
    double edgeCostPerPart,
    double changeOverCostPerPart,
    double holderCostPerPart,
    double costPerPart,
    @Nullable BreakEven breakEven) {

  /** What a part costs once everything is bought. */
  double runningCostPerPart() {
    return edgeCostPerPart + changeOverCostPerPart;
  }

  Economics with(@Nullable BreakEven known) {
    return new Economics(
        price,
        purchase,
        owned,
        edgeCostPerPart,
        changeOverCostPerPart,
        holderCostPerPart,
        costPerPart,
        known);
  }
}
