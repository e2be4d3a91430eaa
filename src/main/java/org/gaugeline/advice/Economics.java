package org.gaugeline.advice;

/**
 * Money, in the shop's currency.
 *
 * @param price of the assembly; NaN where unknown
 * @param purchase of what the shop has not got of it; NaN where unknown
 * @param owned whether it stands in the shop's stock
 * @param edgeCostPerPart tool wear per part at the predicted life
 * @param holderCostPerPart price spread over a year's parts; 0 for owned holders
 * @param costPerPart sum of both
 */
public record Economics(
    double price,
    double purchase,
    boolean owned,
    double edgeCostPerPart,
    double holderCostPerPart,
    double costPerPart) {}
