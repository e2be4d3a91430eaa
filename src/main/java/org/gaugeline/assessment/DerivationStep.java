package org.gaugeline.assessment;

/**
 * One line of a derivation.
 *
 * @param symbol name of the value, unique in its derivation
 * @param formula how it follows from the lines before, in their symbols; empty for an input or a
 *     number that integration or a solver gave
 * @param value the value, in the stated unit
 * @param unit SI unit; empty for a plain number
 * @param source source key; empty where the formula is its own
 */
public record DerivationStep(
    String symbol, String formula, double value, String unit, String source) {}
