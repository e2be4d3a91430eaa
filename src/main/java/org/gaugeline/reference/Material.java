package org.gaugeline.reference;

import java.util.List;

/**
 * A workpiece material in its reference state.
 *
 * @param id the word that requests use
 * @param name DIN/EN name and usual designations, for people
 * @param aliases other spellings that people type, matched without case, blanks and punctuation
 * @param isoGroup ISO 513 application group
 * @param kc11Pa Kienzle specific force at h = b = 1 mm at {@code hardnessHb}, Pa
 * @param mc Kienzle exponent, 0 … 0.5
 * @param hardnessHb Brinell hardness of the reference state
 * @param minHardnessHb softest state for which the hardness scaling is used
 * @param maxHardnessHb hardest state for which the hardness scaling is used
 * @param hardnessExponent x of kc11 ∝ (HB/HB₀)^x, 0 where hardness is not scaled
 * @param handbookPowerPa energy per volume at 0.30 mm feed and {@code hardnessHb} by the handbook's
 *     power constants, Pa; NaN where the handbook has none
 * @param radialRatio radial over tangential force
 * @param drillConstant the handbook's drilling work-material factor Kd; NaN where it has none
 * @param machinability key into the starting values
 * @param sourceKey source of kc11 and mc
 */
public record Material(
    String id,
    String name,
    List<String> aliases,
    IsoGroup isoGroup,
    Spread kc11Pa,
    double mc,
    double hardnessHb,
    double minHardnessHb,
    double maxHardnessHb,
    double hardnessExponent,
    double handbookPowerPa,
    Spread radialRatio,
    double drillConstant,
    String machinability,
    String sourceKey) {}
