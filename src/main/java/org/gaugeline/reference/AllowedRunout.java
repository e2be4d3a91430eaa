package org.gaugeline.reference;

import java.util.Set;

/**
 * Runout that an operation tolerates at the tip where nothing else is asked.
 *
 * @param operations operations that the row is for
 * @param stages stages that the row is for
 * @param substrates cutting materials that the row is for
 * @param perFeed share of the feed per tooth; 0 where the row is absolute
 * @param perTolerance share of the tolerance band; 0 where unused
 * @param absoluteM absolute TIR, m; 0 where unused
 * @param floorM never ask for less than this
 * @param sourceKey source of the row
 */
public record AllowedRunout(
    Set<OperationKind> operations,
    Set<Stage> stages,
    Set<Substrate> substrates,
    double perFeed,
    double perTolerance,
    double absoluteM,
    double floorM,
    String sourceKey) {}
