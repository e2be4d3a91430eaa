package org.gaugeline.assembly;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.job.Assumption;
import org.gaugeline.job.StockEntry.InlineHolder;
import org.gaugeline.reference.ClampingFamily;

/** Collects what had to be estimated of components, and what was given and does not apply. */
final class Estimates {
  private final List<Assumption> assumptions = new ArrayList<>();
  private final List<GivenStack.Misplaced> misplaced = new ArrayList<>();

  List<Assumption> assumptions() {
    return List.copyOf(assumptions);
  }

  List<GivenStack.Misplaced> misplaced() {
    return List.copyOf(misplaced);
  }

  void misplaced(String code, String pointer) {
    misplaced.add(new GivenStack.Misplaced(code, pointer));
  }

  /** A family that was not named. */
  ClampingFamily assumed(
      GivenAssembly.Component component,
      String member,
      ClampingFamily family,
      Object value,
      String reason) {
    put(component, member, value, reason, family.sourceKey());
    return family;
  }

  /** What a holder of which no more was said is like. */
  void holder(
      GivenAssembly.Component component, HolderBody template, HolderBody built, String end) {
    InlineHolder details = component.details();
    String source = template.sourceKey();
    if (details.interfaceId() == null) {
      put(component, "interface", end, "end-before-it", "");
    }
    if (details.boreM() == null) {
      String reason = built.colletSize() == null ? "bore-of-shank" : "generic-part";
      put(component, "boreMm", built.boreM(), reason, source);
    }
    length(component, built.projectionM(), source);
    flags(component, built.faceContact(), built.throughCoolant(), source);
    body(component, template.ref(), source);
    price(component, built.price());
  }

  /** What an extension of which no more was said is like. */
  void extension(GivenAssembly.Component component, Extension template, Extension built) {
    if (component.details().boreM() == null) {
      String reason = built.collet() == null ? "bore-of-shank" : "generic-part";
      put(component, "boreMm", built.boreM(), reason, template.sourceKey());
    }
    length(component, built.lengthM(), template.sourceKey());
    body(component, template.ref(), template.sourceKey());
    price(component, built.price());
  }

  /** What an adapter of which no more was said is like. */
  void adapter(GivenAssembly.Component component, String templateRef, Adapter built) {
    if (component.details().interfaceId() == null) {
      put(component, "interface", built.spindleInterface().id(), "end-before-it", "");
    }
    length(component, built.projectionM(), built.sourceKey());
    flags(component, built.faceContact(), true, built.sourceKey());
    body(component, templateRef, built.sourceKey());
    Damper damper = built.damper();
    InlineHolder details = component.details();
    boolean told = details.tested().damper() != null && details.tested().damper().massKg() != null;
    if (damper != null && !told) {
      put(component, "damper/massKg", damper.massKg(), "generic-part", "damped-practice");
    }
    price(component, built.price());
  }

  /** What a sleeve of which no more was said is like. */
  void sleeve(GivenAssembly.Component component, Sleeve built, String source) {
    if (component.details().boreM() == null) {
      put(component, "boreMm", built.boreM(), "bore-of-shank", source);
    }
    if (component.details().runoutTirM() == null) {
      put(component, "runoutUm", built.tirM().p95(), "generic-part", source);
    }
    price(component, built.price());
  }

  private void length(GivenAssembly.Component component, double lengthM, String source) {
    InlineHolder details = component.details();
    if (details.projectionM() == null) {
      boolean drawn = !details.profile().isEmpty();
      put(
          component,
          "projectionMm",
          lengthM,
          drawn ? "sum-of-profile" : "generic-part",
          drawn ? "" : source);
    }
  }

  private void flags(
      GivenAssembly.Component component, boolean face, boolean coolant, String source) {
    if (component.details().faceContact() == null) {
      put(component, "faceContact", face, "generic-part", source);
    }
    if (component.details().throughCoolant() == null) {
      put(component, "throughCoolant", coolant, "generic-part", source);
    }
  }

  private void body(GivenAssembly.Component component, String ref, String source) {
    if (component.details().profile().isEmpty()) {
      put(component, "profile", ref, "generic-part", source);
    }
    if (component.details().material() == null) {
      put(component, "material", "steel", "usual-for-bodies", "solids-recalled");
    }
  }

  private void price(GivenAssembly.Component component, double price) {
    if (component.details().price() == null && !Double.isNaN(price)) {
      put(component, "price", price, "generic-part", "price-guide");
    }
  }

  void put(
      GivenAssembly.Component component,
      String member,
      Object value,
      String reason,
      String source) {
    if (component.ref() == null) {
      assumptions.add(new Assumption(component.pointer() + "/" + member, value, reason, source));
    }
  }
}
