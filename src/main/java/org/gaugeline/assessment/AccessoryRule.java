package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;
import org.gaugeline.assembly.GivenStack;

/**
 * Knobs, tubes, locks and screws that were named: one that does not go in, and one that does and is
 * counted on anyway.
 */
record AccessoryRule() implements Rule {
  private static final String DIFFERS = "accessory-and-place-differ";
  private static final String COUNTED = "accessory-counted-anyway";

  @Override
  public List<String> codes() {
    return List.of(DIFFERS, COUNTED);
  }

  @Override
  public Criterion criterion() {
    return Criterion.GATE;
  }

  @Override
  public List<Severity> severities(String code) {
    return List.of(code.equals(DIFFERS) ? Severity.ERROR : Severity.NOTE);
  }

  @Override
  public List<String> sources() {
    return List.of(
        "grip-practice", "mas-403", "asme-b5-50", "din-69871-recalled", "din-69893-recalled");
  }

  @Override
  public void check(Inspection on, Consumer<Finding> found) {
    for (GivenStack.Accessory accessory : on.built().accessories()) {
      String given = accessory.part().ref();
      String usual = accessory.usual().ref();
      boolean fits = accessory.fits();
      found.accept(
          Inspection.finding(
              fits ? COUNTED : DIFFERS,
              fits ? Severity.NOTE : Severity.ERROR,
              Criterion.GATE,
              fits ? given : given + " where " + usual + " goes",
              accessory.usual().sourceKey(),
              accessory.pointer()));
    }
  }
}
