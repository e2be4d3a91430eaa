package org.gaugeline.assessment;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.gaugeline.assembly.GivenStack;
import org.jspecify.annotations.Nullable;

/** Coolant through the tool is asked, and a part of the stack stops it. */
record CoolantRule() implements Rule {
  private static final String CODE = "coolant-holder";

  @Override
  public List<String> codes() {
    return List.of(CODE);
  }

  @Override
  public Criterion criterion() {
    return Criterion.GATE;
  }

  @Override
  public List<Severity> severities(String code) {
    return List.of(Severity.ERROR);
  }

  @Override
  public List<String> sources() {
    return List.of("given");
  }

  @Override
  public void check(Inspection on, Consumer<Finding> found) {
    for (Gate gate : on.appraisal().gates()) {
      if (gate.code().equals(CODE)) {
        GivenStack.Accessory plug = plug(on);
        if (plug != null) {
          String subject = plug.part().ref();
          found.accept(
              Inspection.finding(
                  CODE, gate.severity(), Criterion.GATE, subject, "given", plug.pointer()));
          continue;
        }
        GivenStack.Placed stops = stops(on);
        found.accept(
            Inspection.finding(
                CODE,
                gate.severity(),
                Criterion.GATE,
                stops == null ? "" : stops.kind().name().toLowerCase(Locale.ROOT),
                gate.basis(),
                stops == null ? "/assembly/components" : stops.pointer() + "/throughCoolant"));
      }
    }
  }

  /** A knob or tube that does not pass it: nearer the spindle than any body. */
  private static GivenStack.@Nullable Accessory plug(Inspection on) {
    for (GivenStack.Accessory accessory : on.built().accessories()) {
      if (!accessory.throughCoolant()) {
        return accessory;
      }
    }
    return null;
  }

  /** The first part, from the spindle, that does not pass it; null where none says so. */
  private static GivenStack.@Nullable Placed stops(Inspection on) {
    for (GivenStack.Placed placed : on.built().placed()) {
      if (!placed.throughCoolant()) {
        return placed;
      }
    }
    return null;
  }
}
