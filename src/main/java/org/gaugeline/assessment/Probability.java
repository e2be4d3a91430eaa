package org.gaugeline.assessment;

/** Probability that each criterion's pairs are met, and all together. */
public record Probability(double accuracy, double grip, double reach, double speed, double all) {}
