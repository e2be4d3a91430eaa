package org.gaugeline.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Says in codes and numbers why an assembly stands where it stands. */
public final class Reasons {
  private static final double CLEARLY_MET = 75;

  private Reasons() {}

  /** Every gate and margin, what speaks loudest against first. */
  public static List<Reason> of(Appraisal appraisal) {
    List<Reason> reasons = new ArrayList<>();
    for (Gate gate : appraisal.gates()) {
      reasons.add(reason(gate));
    }
    List<Margin> margins = new ArrayList<>(appraisal.margins());
    margins.sort(Comparator.comparingDouble(Margin::score));
    for (Margin margin : margins) {
      reasons.add(reason(margin));
    }
    return List.copyOf(reasons);
  }

  /** Failed gates and the least margin of each criterion: what decides about a family. */
  public static List<Reason> decisive(Appraisal appraisal) {
    List<Reason> reasons = new ArrayList<>();
    for (Gate gate : appraisal.gatesOf(Severity.ERROR)) {
      reasons.add(reason(gate));
    }
    for (Criterion criterion : Criterion.values()) {
      Margin least = null;
      for (Margin margin : appraisal.margins()) {
        if (margin.pair().criterion() == criterion
            && (least == null || margin.score() < least.score())) {
          least = margin;
        }
      }
      if (least != null) {
        reasons.add(reason(least));
      }
    }
    return List.copyOf(reasons);
  }

  static Reason reason(Gate gate) {
    return new Reason(
        Criterion.GATE,
        gate.code(),
        gate.severity() == Severity.NOTE ? Tone.NEUTRAL : Tone.AGAINST,
        gate.demand(),
        gate.capacity(),
        gate.measure(),
        "",
        List.of(gate.basis()));
  }

  static Reason reason(Margin margin) {
    Tone tone =
        margin.ratio() < 1 ? Tone.AGAINST : margin.score() >= CLEARLY_MET ? Tone.FOR : Tone.NEUTRAL;
    return new Reason(
        margin.pair().criterion(),
        margin.pair().id() + "-margin",
        tone,
        margin.demand(),
        margin.capacity(),
        margin.pair().measure(),
        "",
        margin.basis());
  }
}
