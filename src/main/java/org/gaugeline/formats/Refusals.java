package org.gaugeline.formats;

import java.util.List;
import java.util.Map;
import org.gaugeline.toollist.RefusedLine;
import org.gaugeline.toollist.RefusedLine.Fault;

/** Why a line was refused. */
final class Refusals {
  private Refusals() {}

  /**
   * The faults of a line, never none: what happened stands for them where nothing was singled out.
   */
  static List<Fault> faults(RefusedLine line) {
    return line.faults().isEmpty()
        ? List.of(new Fault("", line.kind(), line.detail(), Map.of()))
        : line.faults();
  }
}
