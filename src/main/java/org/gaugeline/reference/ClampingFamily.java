package org.gaugeline.reference;

import java.util.Set;

/**
 * A way of holding a tool. Everything that is the same for all sizes of the family.
 *
 * @param id the word that requests use
 * @param name trade name, for people
 * @param gripModel the physics by which it holds
 * @param summary what it is
 * @param goodAt what it is good at
 * @param badAt what it is bad at
 * @param needs what it needs beside the holder
 * @param shankForms shank forms that it takes
 * @param contactPressurePa effective pressure on a dry h6 shank for pressure models; exact 0 for
 *     others
 * @param tipTirM runout at the tip at 3×D overhang, assembled with ordinary care; p05 is unused
 * @param dirtyTirFactor multiplier on the runout with a used or dirty clamping surface, ≥ 1
 * @param speedCeilingRadPerS usual ceiling at bores up to 12 mm
 * @param jointFactor multiplier on tool-joint stiffness
 * @param dampingFactor multiplier on the modal damping ratio
 * @param warmGripFactor grip left when warm from cutting, 0 … 1
 * @param sideLoad whether it may carry side load (milling)
 * @param needsShrinkUnit whether a heat unit is needed
 * @param needsTorqueWrench whether its stated grip presumes a torque wrench
 * @param residualUnbalanceM specific unbalance of an ordinary assembly, m (e = U/m)
 * @param changeMinutes time to mount or change a tool
 * @param sourceKey source of the row
 */
public record ClampingFamily(
    String id,
    String name,
    GripModel gripModel,
    String summary,
    String goodAt,
    String badAt,
    String needs,
    Set<ShankForm> shankForms,
    Spread contactPressurePa,
    Spread tipTirM,
    double dirtyTirFactor,
    Spread speedCeilingRadPerS,
    double jointFactor,
    double dampingFactor,
    double warmGripFactor,
    boolean sideLoad,
    boolean needsShrinkUnit,
    boolean needsTorqueWrench,
    double residualUnbalanceM,
    double changeMinutes,
    String sourceKey) {}
