package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;
import org.gaugeline.reference.ColletSize;

/** A shank outside the range of the collet, or well below its nominal bore. */
record ColletRule() implements Rule {
  @Override
  public List<String> codes() {
    return List.of("collet-range", "collet-below-nominal");
  }

  @Override
  public Criterion criterion() {
    return Criterion.GRIP;
  }

  @Override
  public List<Severity> severities(String code) {
    return List.of(code.equals("collet-range") ? Severity.ERROR : Severity.NOTE);
  }

  @Override
  public List<String> sources() {
    return List.of("iso-15488", "er-memory");
  }

  @Override
  public void check(Inspection on, Consumer<Finding> found) {
    ColletSize collet = on.holder().colletSize();
    if (collet == null) {
      return;
    }
    double shank = on.job().tool().shankDiameterM();
    if (!on.holder().takes(shank)) {
      boolean large = shank > collet.maxBoreM();
      found.accept(
          Inspection.finding(
              "collet-range",
              Severity.ERROR,
              Criterion.GRIP,
              shank,
              large ? collet.maxBoreM() : collet.minBoreM(),
              Measure.LENGTH,
              collet.sourceKey(),
              on.gripping()));
      return;
    }
    double closed = Math.ceil(shank * 1e3 - 1e-6) * 1e-3 - shank;
    if (closed > collet.collapseM() / 2) {
      found.accept(
          Inspection.finding(
              "collet-below-nominal",
              Severity.NOTE,
              Criterion.GRIP,
              shank,
              shank + closed,
              Measure.LENGTH,
              collet.sourceKey(),
              on.gripping()));
    }
  }
}
