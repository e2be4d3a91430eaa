package org.gaugeline.reference;

import java.util.List;

/**
 * What a machine with a given spindle end usually has, for requests that do not say.
 *
 * @param interfaceIds interfaces that the row is for, comma separated in the table
 * @param maxSpindleSpeedRadPerS usual top speed
 * @param powerW continuous power
 * @param torqueNm continuous torque
 * @param changerMaxMassKg largest tool mass
 * @param changerMaxLengthM largest gauge length
 * @param changerMaxDiameterM largest diameter with both neighbour pockets full
 * @param changerMaxDiameterNeighboursEmptyM largest diameter with both neighbour pockets empty
 * @param changerMaxMomentNm largest moment about the gauge plane
 * @param sourceKey source of the row
 */
public record MachineClass(
    List<String> interfaceIds,
    double maxSpindleSpeedRadPerS,
    double powerW,
    double torqueNm,
    double changerMaxMassKg,
    double changerMaxLengthM,
    double changerMaxDiameterM,
    double changerMaxDiameterNeighboursEmptyM,
    double changerMaxMomentNm,
    String sourceKey) {}
