package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;
import org.gaugeline.reference.InterfaceKind;
import org.gaugeline.reference.SpindleInterface;

/** A spindle end that is not that of the machine: by size, by flange and knob, or by the face. */
record InterfaceRule() implements Rule {
  @Override
  public List<String> codes() {
    return List.of(
        "interface-mismatch",
        "interface-form-mismatch",
        "face-contact-unused",
        "face-contact-missing");
  }

  @Override
  public Criterion criterion() {
    return Criterion.GATE;
  }

  @Override
  public List<Severity> severities(String code) {
    return switch (code) {
      case "face-contact-unused" -> List.of(Severity.WARNING);
      case "face-contact-missing" -> List.of(Severity.NOTE);
      default -> List.of(Severity.ERROR);
    };
  }

  @Override
  public List<String> sources() {
    return List.of(
        "mas-403", "asme-b5-50", "din-69871-recalled", "din-69893-recalled", "iso-26623");
  }

  @Override
  public void check(Inspection on, Consumer<Finding> found) {
    SpindleInterface holder = on.holder().spindleInterface();
    SpindleInterface machine = on.job().machine().spindle();
    if (!holder.id().equals(machine.id())) {
      boolean cone =
          holder.kind() == machine.kind() && holder.nominalSize() == machine.nominalSize();
      found.accept(
          about(cone ? "interface-form-mismatch" : "interface-mismatch", Severity.ERROR, holder));
      return;
    }
    boolean steep = holder.kind() == InterfaceKind.STEEP_TAPER;
    boolean face = on.job().machine().faceContact();
    if (steep && on.holder().faceContact() && !face) {
      found.accept(about("face-contact-unused", Severity.WARNING, holder));
    } else if (steep && face && !on.holder().faceContact()) {
      found.accept(about("face-contact-missing", Severity.NOTE, holder));
    }
  }

  private static Finding about(String code, Severity severity, SpindleInterface holder) {
    return Inspection.finding(
        code, severity, Criterion.GATE, holder.id(), holder.sourceKey(), "/machine/interface");
  }
}
