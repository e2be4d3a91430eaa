package org.gaugeline.http;

import static org.gaugeline.http.IntentReader.orElse;
import static org.gaugeline.http.IntentReader.orEmpty;
import static org.gaugeline.http.IntentReader.si;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.gaugeline.assembly.GivenAssembly;
import org.gaugeline.assembly.Measured;
import org.gaugeline.assembly.Role;
import org.gaugeline.http.wire.WireAssessment;
import org.gaugeline.quantity.UnitSuffix;
import org.jspecify.annotations.Nullable;

/** The assembly of a checked body in SI. */
final class AssessmentReader {
  private static final WordIndex<Role> ROLES = WordIndex.of(Role.values());

  private AssessmentReader() {}

  static GivenAssembly assembly(WireAssessment wire) {
    WireAssessment.Assembly assembly = Objects.requireNonNull(wire.assembly());
    List<GivenAssembly.Component> components = new ArrayList<>();
    for (WireAssessment.Component component : orEmpty(assembly.components())) {
      components.add(
          new GivenAssembly.Component(
              "/assembly/components/" + components.size(),
              ROLES.find(component.role()),
              component.ref(),
              StockReader.inline(component.asEntry())));
    }
    return new GivenAssembly(
        List.copyOf(components),
        si(assembly.stickOutMm(), UnitSuffix.MM),
        measured(orElse(assembly.measured(), WireAssessment.Measured.NONE)));
  }

  private static Measured measured(WireAssessment.Measured m) {
    return new Measured(
        orNaN(si(m.runoutAtTipUm(), UnitSuffix.UM)),
        orNaN(si(m.gaugeLengthMm(), UnitSuffix.MM)),
        orNaN(m.massKg()),
        orEmpty(m.modes()).stream().map(AssessmentReader::mode).toList(),
        orEmpty(m.response()).stream().map(AssessmentReader::sample).toList());
  }

  private static Measured.Mode mode(WireAssessment.Mode m) {
    return new Measured.Mode(
        "x".equals(m.direction()),
        2 * Math.PI * Objects.requireNonNull(m.frequencyHz()),
        Objects.requireNonNull(m.dampingRatio()),
        Objects.requireNonNull(m.stiffnessNPerM()));
  }

  private static Measured.Sample sample(WireAssessment.Sample s) {
    return new Measured.Sample(
        "x".equals(s.direction()),
        2 * Math.PI * Objects.requireNonNull(s.frequencyHz()),
        Objects.requireNonNull(s.realMPerN()),
        Objects.requireNonNull(s.imaginaryMPerN()));
  }

  private static double orNaN(@Nullable Double value) {
    return value == null ? Double.NaN : value;
  }
}
