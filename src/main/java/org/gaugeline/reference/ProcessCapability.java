package org.gaugeline.reference;

/**
 * Tolerance grades and roughness that an operation usually reaches.
 *
 * @param operation the operation
 * @param bestGrade finest IT grade
 * @param usualGrade grade that needs no special care
 * @param minRaM finest roughness Ra, m
 * @param maxRaM roughest usual Ra, m
 * @param sourceKey source of the row
 */
public record ProcessCapability(
    OperationKind operation,
    int bestGrade,
    int usualGrade,
    double minRaM,
    double maxRaM,
    String sourceKey) {}
