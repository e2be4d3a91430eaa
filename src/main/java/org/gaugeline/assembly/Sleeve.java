package org.gaugeline.assembly;

import org.gaugeline.reference.Spread;

/**
 * A slotted sleeve that fits a small shank into a large bore.
 *
 * @param ref catalogue id
 * @param outerDiameterM bore that it goes into
 * @param boreM shank that it takes
 * @param lengthM gripped length
 * @param leastInsertionM least of it that a shank must fill
 * @param tirM runout that it adds; p05 is unused
 * @param gripShare share of the holder's pressure that reaches the tool
 * @param price guide price
 * @param sourceKey source of the description
 * @param data what is told of it beyond that
 */
public record Sleeve(
    String ref,
    double outerDiameterM,
    double boreM,
    double lengthM,
    double leastInsertionM,
    Spread tirM,
    Spread gripShare,
    double price,
    String sourceKey,
    PartData data) {}
