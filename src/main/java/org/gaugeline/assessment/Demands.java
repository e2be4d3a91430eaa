package org.gaugeline.assessment;

/** What the job asks of any assembly, in SI; names as in the contract. */
public record Demands(
    double runoutAtTipM,
    double deflectionM,
    double gripTorqueNm,
    double axialHoldN,
    double reachM) {}
