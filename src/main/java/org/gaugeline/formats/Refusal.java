package org.gaugeline.formats;

import java.util.List;
import org.gaugeline.toollist.RefusedLine;

/**
 * One reason why a line was refused.
 *
 * @param pointer JSON pointer into the line; empty for the line as a whole
 * @param code kebab code
 * @param detail value, bound and likely cause
 */
record Refusal(String pointer, String code, String detail) {
  /** All reasons, never none: what happened stands for them where nothing was singled out. */
  static List<Refusal> of(RefusedLine line) {
    return line.faults().isEmpty()
        ? List.of(new Refusal("", line.kind(), line.detail()))
        : line.faults().stream()
            .map(fault -> new Refusal(fault.pointer(), fault.code(), fault.detail()))
            .toList();
  }
}
