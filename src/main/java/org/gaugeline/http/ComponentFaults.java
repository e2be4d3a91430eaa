package org.gaugeline.http;

import static org.gaugeline.http.IntentReader.orElse;
import static org.gaugeline.http.IntentReader.orEmpty;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.gaugeline.assembly.Role;
import org.gaugeline.http.wire.WireAssessment;
import org.gaugeline.http.wire.WireIntent;
import org.gaugeline.reference.ClampingFamily;
import org.gaugeline.reference.GripModel;
import org.gaugeline.reference.ReferenceData;
import org.jspecify.annotations.Nullable;

/** Properties of one component that cannot both be true. */
final class ComponentFaults {
  private static final double SAME_LENGTH_MM = 0.1;

  private final ComponentRefs refs;
  private final Map<String, ClampingFamily> families;
  private final Set<String> solids;

  ComponentFaults(ReferenceData data, ComponentRefs refs) {
    this.refs = refs;
    this.families = data.families();
    this.solids = data.solids().keySet();
  }

  void find(String pointer, WireAssessment.Component component, List<Fault> faults) {
    String ref = component.ref();
    if (ref != null) {
      roleOf(pointer, ref, component.role(), faults);
      ComponentEntry entry = refs.body(ref);
      if (entry != null) {
        catalogue(pointer, component, entry, faults);
      }
    }
    role(pointer, component, faults);
    material(pointer, component.material(), faults);
    profile(pointer, component.projectionMm(), orEmpty(component.profile()), faults);
    bore(pointer, component, faults);
    face(pointer, component, faults);
    damper(pointer, component, faults);
  }

  /** A reference plays one part, whatever is said beside it. */
  private void roleOf(String pointer, String ref, @Nullable String said, List<Fault> faults) {
    Role own = refs.role(ref);
    if (said != null && own != null && !suits(said, own)) {
      other(pointer, "role", said, ref, own.id(), faults);
    }
  }

  /** What the catalogue says of a reference, and the request says otherwise. */
  private static void catalogue(
      String pointer,
      WireAssessment.Component component,
      ComponentEntry entry,
      List<Fault> faults) {
    String family = component.family();
    if (family != null && !entry.familyId().isEmpty() && !family.equals(entry.familyId())) {
      other(pointer, "family", family, entry.id(), entry.familyId(), faults);
    }
    String end = component.interface_();
    if (end != null && !entry.interfaceId().isEmpty() && !end.equals(entry.interfaceId())) {
      other(pointer, "interface", end, entry.id(), entry.interfaceId(), faults);
    }
  }

  private static boolean suits(String role, Role own) {
    boolean holder = role.equals(Role.HOLDER.id()) || role.equals(Role.ARBOR.id());
    boolean adapter = role.equals(Role.ADAPTER.id()) || role.equals(Role.DAMPED_BODY.id());
    return switch (own) {
      case HOLDER, ARBOR -> holder || role.equals(Role.DAMPED_BODY.id());
      case ADAPTER, DAMPED_BODY -> adapter;
      case COLLET, COOLANT_COLLET ->
          role.equals(Role.COLLET.id()) || role.equals(Role.COOLANT_COLLET.id());
      case EXTENSION, SLEEVE, FORM_LOCK, BACK_STOP_SCREW, RETENTION_KNOB, COOLANT_TUBE ->
          role.equals(own.id());
    };
  }

  private static void other(
      String pointer, String member, String said, String ref, String own, List<Fault> faults) {
    both(
        pointer,
        member,
        said,
        "ref",
        ref,
        member
            + " ("
            + said
            + ") is not that of "
            + ref
            + ", which is "
            + own
            + ". Leave one of the two out.",
        faults);
  }

  private void role(String pointer, WireAssessment.Component component, List<Fault> faults) {
    ClampingFamily family = families.get(orElse(component.family(), ""));
    boolean arbor =
        family != null
            && (family.gripModel() == GripModel.ARBOR
                || family.gripModel() == GripModel.DISC_ARBOR);
    if (family != null && Role.ARBOR.id().equals(component.role()) && !arbor) {
      both(
          pointer,
          "role",
          Role.ARBOR.id(),
          "family",
          family.id(),
          "An arbor carries a cutter with a bore; "
              + family.id()
              + " grips a shank. Maybe the role"
              + " holder was meant.",
          faults);
    }
  }

  private void material(String pointer, @Nullable String name, List<Fault> faults) {
    if (name != null && !solids.contains(name)) {
      faults.add(
          new Fault(
              pointer + "/material",
              "unknown-solid",
              "material ("
                  + name
                  + ") is no solid that bodies are made of; known are "
                  + String.join(", ", solids)
                  + ". Steel of any sort is steel here.",
              Map.of("actual", name)));
    }
  }

  /** The outline from gauge plane to front face is as long as the part. */
  static void profile(
      String pointer,
      @Nullable Double projectionMm,
      List<WireIntent.ProfileSection> profile,
      List<Fault> faults) {
    double sum = 0;
    for (WireIntent.ProfileSection section : profile) {
      sum += orElse(section.lengthMm(), Double.NaN);
    }
    if (projectionMm != null
        && !profile.isEmpty()
        && Math.abs(sum - projectionMm) > SAME_LENGTH_MM) {
      both(
          pointer,
          "projectionMm",
          projectionMm,
          "profile",
          sum,
          "projectionMm ("
              + SchemaFaults.plain(projectionMm)
              + ") is not the sum of the sections of profile ("
              + SchemaFaults.plain(sum)
              + "). Both go from the gauge plane to the front face, nut included. Maybe the nut, or"
              + " the taper behind the gauge plane, is in one of them only.",
          faults);
    }
  }

  /**
   * A bore is smaller than what is around it; a collet's and an adapter's is not that of a body.
   */
  private static void bore(String pointer, WireAssessment.Component component, List<Fault> faults) {
    List<WireIntent.ProfileSection> profile = orEmpty(component.profile());
    Double bore = component.boreMm();
    if (bore == null || profile.isEmpty()) {
      return;
    }
    WireIntent.ProfileSection nose = profile.get(profile.size() - 1);
    Double start = nose.diameterMm();
    double front = orElse(nose.endDiameterMm(), orElse(start, Double.NaN));
    String family = orElse(component.family(), "");
    boolean onPilot = family.endsWith("-arbor") || Role.ARBOR.id().equals(component.role());
    if (bore >= front && !onPilot) {
      both(
          pointer,
          "boreMm",
          bore,
          "profile/" + (profile.size() - 1) + "/diameterMm",
          front,
          "boreMm ("
              + SchemaFaults.plain(bore)
              + ") is not smaller than the front of the profile ("
              + SchemaFaults.plain(front)
              + "). Maybe radius and diameter were mixed.",
          faults);
    }
  }

  private static void face(String pointer, WireAssessment.Component component, List<Fault> faults) {
    Double face = component.faceDiameterMm();
    Double bore = component.boreMm();
    if (face != null && bore != null && face <= bore) {
      both(
          pointer,
          "faceDiameterMm",
          face,
          "boreMm",
          bore,
          "faceDiameterMm ("
              + SchemaFaults.plain(face)
              + ") is not larger than the bore in it ("
              + SchemaFaults.plain(bore)
              + ").",
          faults);
    }
  }

  private static void damper(
      String pointer, WireAssessment.Component component, List<Fault> faults) {
    WireIntent.Damper damper = component.damper();
    Double mass = damper == null ? null : damper.massKg();
    Double whole = component.massKg();
    if (mass != null && whole != null && mass >= whole) {
      both(
          pointer,
          "damper/massKg",
          mass,
          "massKg",
          whole,
          "The tuned mass ("
              + SchemaFaults.plain(mass)
              + " kg) is not lighter than the component that it is in ("
              + SchemaFaults.plain(whole)
              + " kg).",
          faults);
    }
  }

  /** Both members are told, each with the other. */
  private static void both(
      String pointer,
      String one,
      Object oneSaid,
      String two,
      Object twoSaid,
      String detail,
      List<Fault> faults) {
    String first = pointer + "/" + one;
    String second = pointer + "/" + two;
    faults.add(Contradictions.fault(first, oneSaid, second, twoSaid, detail));
    faults.add(Contradictions.fault(second, twoSaid, first, oneSaid, detail));
  }
}
