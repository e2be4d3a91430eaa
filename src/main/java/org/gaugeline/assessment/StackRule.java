package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;
import org.gaugeline.assembly.Seam;
import org.gaugeline.reference.GripModel;

/** More joints than are wise, or an extension or sleeve that does not fit its holder. */
record StackRule() implements Rule {
  private static final double SAME_M = 2e-5;

  @Override
  public List<String> codes() {
    return List.of(
        "stacking-depth",
        "extension-and-bore-differ",
        "sleeve-and-bore-differ",
        "sleeve-not-gripped");
  }

  @Override
  public Criterion criterion() {
    return Criterion.GATE;
  }

  @Override
  public List<Severity> severities(String code) {
    return List.of(code.equals("stacking-depth") ? Severity.WARNING : Severity.ERROR);
  }

  @Override
  public List<String> sources() {
    return List.of("stack-practice", "extension-practice");
  }

  @Override
  public void check(Inspection on, Consumer<Finding> found) {
    int joints = on.holder().seams().size();
    double wise = on.context().practice("mostJoints");
    if (joints > wise) {
      found.accept(
          Inspection.finding(
              "stacking-depth",
              Severity.WARNING,
              Criterion.GATE,
              joints,
              wise,
              Measure.COUNT,
              "stack-practice",
              "/assembly/components"));
    }
    for (Seam seam : on.holder().seams()) {
      if (seam instanceof Seam.Clamped clamped && !clamped.host().takes(clamped.shankDiameterM())) {
        found.accept(
            Inspection.finding(
                "extension-and-bore-differ",
                Severity.ERROR,
                Criterion.GATE,
                clamped.shankDiameterM(),
                clamped.host().boreM(),
                Measure.LENGTH,
                clamped.host().sourceKey(),
                on.pointerOf(seam)));
      }
      if (seam instanceof Seam.Sleeved && on.holder().family().gripModel() != GripModel.PRESSURE) {
        found.accept(
            Inspection.finding(
                "sleeve-not-gripped",
                Severity.ERROR,
                Criterion.GATE,
                on.holder().family().id(),
                "sleeve-practice",
                on.pointerOf(seam)));
      }
      if (seam instanceof Seam.Sleeved sleeved
          && Math.abs(sleeved.outerDiameterM() - sleeved.hostBoreM()) > SAME_M) {
        found.accept(
            Inspection.finding(
                "sleeve-and-bore-differ",
                Severity.ERROR,
                Criterion.GATE,
                sleeved.outerDiameterM(),
                sleeved.hostBoreM(),
                Measure.LENGTH,
                "sleeve-practice",
                on.pointerOf(seam)));
      }
    }
  }
}
