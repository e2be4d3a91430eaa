package org.gaugeline.wording;

import org.gaugeline.quantity.TextBytes;

/** What fills the placeholders of one sentence. */
interface Filling {
  /** Whether there is anything to write. */
  boolean has(Placeholder placeholder);

  void write(TextBytes out, Placeholder placeholder);
}
