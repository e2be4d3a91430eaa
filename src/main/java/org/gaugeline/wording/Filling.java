package org.gaugeline.wording;

/** What fills the placeholders of one sentence. */
interface Filling {
  /** Whether there is anything to write. */
  boolean has(Placeholder placeholder);

  void write(StringBuilder out, Placeholder placeholder);
}
