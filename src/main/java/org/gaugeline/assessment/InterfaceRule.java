package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;
import org.gaugeline.assembly.Seam;
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
    for (Seam seam : on.holder().seams()) {
      if (seam instanceof Seam.Coupled coupled) {
        mismatch(coupled.head(), coupled.coupling(), on.pointerOf(seam), found);
      }
    }
    if (mismatch(holder, machine, "/machine/interface", found)) {
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

  /** Whether one does not go into the other, which is told. */
  private static boolean mismatch(
      SpindleInterface end, SpindleInterface into, String pointer, Consumer<Finding> found) {
    if (end.id().equals(into.id())) {
      return false;
    }
    boolean cone = end.kind() == into.kind() && end.nominalSize() == into.nominalSize();
    found.accept(
        Inspection.finding(
            cone ? "interface-form-mismatch" : "interface-mismatch",
            Severity.ERROR,
            Criterion.GATE,
            end.id() + " end where " + into.id() + " is taken",
            end.sourceKey(),
            pointer));
    return true;
  }

  private static Finding about(String code, Severity severity, SpindleInterface holder) {
    return Inspection.finding(
        code, severity, Criterion.GATE, holder.id(), holder.sourceKey(), "/machine/interface");
  }
}
