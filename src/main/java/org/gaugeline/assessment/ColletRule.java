package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;
import org.gaugeline.assembly.Known;
import org.gaugeline.reference.ColletSize;

/** A shank outside the range of the collet, or well below its nominal bore. */
record ColletRule() implements Rule {
  @Override
  public List<String> codes() {
    return List.of("collet-and-chuck-differ", "collet-range", "collet-below-nominal");
  }

  @Override
  public Criterion criterion() {
    return Criterion.GRIP;
  }

  @Override
  public List<Severity> severities(String code) {
    return List.of(code.equals("collet-below-nominal") ? Severity.NOTE : Severity.ERROR);
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
    Known.GivenCollet chosen = on.holder().known().collet();
    if (chosen != null && !chosen.id().isEmpty() && !chosen.id().equals(collet.id())) {
      found.accept(
          Inspection.finding(
              "collet-and-chuck-differ",
              Severity.ERROR,
              Criterion.GRIP,
              chosen.id() + " collet in a chuck for " + collet.id(),
              collet.sourceKey(),
              on.collet()));
    }
    double closed = on.holder().colletClosesByM(shank);
    if (!on.holder().takes(shank)) {
      double largest = Math.min(collet.maxBoreM(), shank + closed);
      double smallest = Math.max(collet.minBoreM(), shank + closed - collet.collapseM());
      boolean large = shank > largest;
      found.accept(
          Inspection.finding(
              "collet-range",
              Severity.ERROR,
              Criterion.GRIP,
              shank,
              large ? largest : smallest,
              Measure.LENGTH,
              collet.sourceKey(),
              on.collet()));
      return;
    }
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
              on.collet()));
    }
  }
}
