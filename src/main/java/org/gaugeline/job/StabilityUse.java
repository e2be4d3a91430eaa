package org.gaugeline.job;

/** What the stable depth is used for. */
public enum StabilityUse {
  /** Not computed. */
  NONE,
  /**
   * Told of a given assembly, and judged where the dynamics of its tip were measured: a predicted
   * depth is known to a factor of ten at best, and rubbing flanks and uneven pitch, which let shops
   * cut deeper than theory at low speeds, are left out.
   */
  JUDGED_WHERE_MEASURED,
  /**
   * Judged also where it is predicted, of a given assembly without a tuned mass; of candidates told
   * and not judged.
   */
  JUDGED
}
