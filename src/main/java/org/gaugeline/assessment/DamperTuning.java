package org.gaugeline.assessment;

import org.gaugeline.reference.Word;

/** How a tuned mass is set. */
public enum DamperTuning implements Word {
  /** As the chart takes it: what was told of it, the rest tuned against chatter. */
  AS_USED("as-used"),
  /** Frequency and damping against chatter (Sims). */
  CHATTER_TUNED("chatter-tuned"),
  /** Frequency and damping by Den Hartog. */
  CLASSICAL("classical"),
  /** As used, its frequency too low by the usual error. */
  DETUNED_LOW("detuned-low"),
  /** As used, its frequency too high by the usual error. */
  DETUNED_HIGH("detuned-high"),
  /** The mass left out. */
  WITHOUT("without");

  private final String id;

  DamperTuning(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
