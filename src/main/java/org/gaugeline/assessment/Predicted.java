package org.gaugeline.assessment;

import java.util.List;

/**
 * What the assembly is predicted to do, in SI.
 *
 * @param gripTorqueMedianNm friction or stop torque at speed
 * @param dampingRatio modal damping of the tip
 * @param bendingMomentUse moment at the gauge plane over the moment at which the face opens
 * @param balanceGradeReachedMPerS grade G of the assembly at the asked speed
 * @param sideRunoutMedianM runout of the sides of a disc, TIR; NaN for other tools
 * @param toolLifeFactor tool life over that without runout
 */
public record Predicted(
    double runoutMedianM,
    double runoutP95M,
    double runoutWorstM,
    double gripTorqueMedianNm,
    double gripTorqueP05Nm,
    double axialHoldMedianN,
    double axialHoldP05N,
    double tipComplianceMPerN,
    double deflectionM,
    List<Double> naturalFrequenciesHz,
    double dampingRatio,
    double bendingMomentUse,
    double balanceGradeReachedMPerS,
    double sideRunoutMedianM,
    double sideRunoutP95M,
    double toolLifeFactor) {}
