package org.gaugeline.toollist;

/**
 * Counts over a whole list. The first four add up to all lines; the last three count findings,
 * those of the list included.
 */
public record Totals(
    long fit,
    long fitWithCautions,
    long unfit,
    long problems,
    long errors,
    long warnings,
    long notes) {
  public long lines() {
    return fit + fitWithCautions + unfit + problems;
  }
}
