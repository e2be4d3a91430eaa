package org.gaugeline.assembly;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gaugeline.job.Assumption;
import org.gaugeline.job.IntentFault;
import org.gaugeline.job.IntentFaultException;
import org.gaugeline.job.Job;
import org.gaugeline.job.StockEntry.InlineHolder;
import org.gaugeline.reference.ClampingFamily;
import org.gaugeline.reference.ColletSize;
import org.gaugeline.reference.Coolant;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.ShankForm;
import org.gaugeline.reference.SpindleInterface;
import org.gaugeline.reference.ToolKind;
import org.jspecify.annotations.Nullable;

/**
 * Builds the body that a given list of components makes, whether or not it is a good one: what does
 * not go together is told and not refused, as long as there is something to compute.
 */
public final class GivenStack {
  private final ReferenceData data;
  private final HolderCatalogue catalogue;
  private final Composer composer;
  private final InlineBodies holders;
  private final InlineParts parts;
  private final StandardParts standardParts;

  public GivenStack(ReferenceData data, HolderCatalogue catalogue) {
    this.data = data;
    this.catalogue = catalogue;
    this.composer = new Composer(catalogue);
    this.holders = new InlineBodies(data, catalogue);
    this.parts = new InlineParts(data, catalogue, holders);
    this.standardParts = new StandardParts(data);
  }

  /**
   * What was built.
   *
   * @param body the whole stack
   * @param placed the components, in the order in which they were given
   * @param accessories small parts of standards that were given and have their place there
   * @param misplaced what was given and has no place there
   * @param assumptions what was left out of components and how it was filled
   */
  public record Built(
      HolderBody body,
      List<Placed> placed,
      List<Accessory> accessories,
      List<Misplaced> misplaced,
      List<Assumption> assumptions) {

    /** The component whose bore holds the tool. */
    public Placed gripping() {
      Placed last = placed.get(0);
      for (Placed one : placed) {
        last = one.kind().grips() ? one : last;
      }
      return last;
    }
  }

  /** What a component is in a stack. */
  public enum Kind {
    ADAPTER,
    HOLDER,
    EXTENSION,
    SLEEVE,
    COLLET,
    ACCESSORY;

    boolean grips() {
      return switch (this) {
        case HOLDER, EXTENSION, SLEEVE -> true;
        case ADAPTER, COLLET, ACCESSORY -> false;
      };
    }
  }

  /**
   * A component in its place.
   *
   * @param pointer where in the request it stands
   * @param kind what it is
   * @param own whether it is described in the caller's own words alone
   * @param throughCoolant whether coolant passes
   * @param body what stands on the spindle up to it, adapters apart; null for adapters
   * @param details what was said of it
   */
  public record Placed(
      String pointer,
      Kind kind,
      boolean own,
      boolean throughCoolant,
      @Nullable HolderBody body,
      InlineHolder details) {}

  /**
   * A small part of a standard in its place.
   *
   * @param pointer where in the request it stands
   * @param part what was given
   * @param usual what goes there
   * @param throughCoolant whether coolant passes
   */
  public record Accessory(
      String pointer, StandardPart part, StandardPart usual, boolean throughCoolant) {
    /** Whether it goes in. */
    public boolean fits() {
      return part.fitsLike(usual);
    }
  }

  /**
   * Something that was given and does not apply.
   *
   * @param code kebab code
   * @param pointer where in the request it stands
   */
  public record Misplaced(String code, String pointer) {}

  /**
   * Builds a stack.
   *
   * @throws IntentFaultException where a reference is unknown, nothing holds a tool, or parts stand
   *     in an order in which nobody can put them together
   */
  public Built build(Job job, GivenAssembly given) {
    return new Building(job, given.components()).whole();
  }

  /** One stack in the making. */
  private final class Building {
    private final Job job;
    private final List<GivenAssembly.Component> components;
    private final List<IntentFault> faults = new ArrayList<>();
    private final Estimates estimates = new Estimates();
    private final List<Placed> placed = new ArrayList<>();
    private final List<Adapter> adapters = new ArrayList<>();
    private final List<GivenAssembly.Component> small = new ArrayList<>();
    private @Nullable Map<String, HolderBody> owned;
    private @Nullable HolderBody body;

    Building(Job job, List<GivenAssembly.Component> components) {
      this.job = job;
      this.components = components;
    }

    Built whole() {
      for (int i = 0; i < components.size(); i++) {
        add(components.get(i), i);
      }
      HolderBody built = body;
      if (built == null && faults.isEmpty()) {
        faults.add(new IntentFault("/assembly/components", "holder-needed", Map.of()));
      }
      if (built == null || !faults.isEmpty()) {
        throw new IntentFaultException(faults);
      }
      for (int i = adapters.size() - 1; i >= 0; i--) {
        built = Composer.adapt(adapters.get(i), built);
      }
      List<Accessory> accessories = accessories(built);
      return new Built(
          passing(built, accessories),
          List.copyOf(placed),
          accessories,
          estimates.misplaced(),
          estimates.assumptions());
    }

    /** What of the small parts has its place in what was built. */
    private List<Accessory> accessories(HolderBody built) {
      List<Accessory> accessories = new ArrayList<>();
      for (GivenAssembly.Component component : small) {
        String ref = component.ref();
        StandardPart named = ref == null ? null : standardParts.named(ref);
        boolean through = !Boolean.FALSE.equals(component.details().throughCoolant());
        Role role = named == null ? component.role() : named.role();
        StandardPart usual = usual(role, built.spindleInterface(), through);
        if (usual == null) {
          estimates.misplaced("component-not-used", component.pointer());
          continue;
        }
        Applicable.check(component, Kind.ACCESSORY, built, estimates);
        StandardPart part = named == null ? usual : named;
        boolean passes =
            OwnDetails.orElse(component.details().throughCoolant(), part.throughCoolant());
        accessories.add(new Accessory(component.pointer(), part, usual, passes));
      }
      return List.copyOf(accessories);
    }

    private @Nullable StandardPart usual(
        @Nullable Role role, SpindleInterface end, boolean through) {
      Job.Tool tool = job.tool();
      if (role == Role.FORM_LOCK) {
        return tool.shankForm() == ShankForm.FORM_LOCKED
            ? StandardPart.behind(role, tool.shankDiameterM())
            : null;
      }
      if (role == Role.BACK_STOP_SCREW) {
        return tool.bored() ? null : StandardPart.behind(role, tool.shankDiameterM());
      }
      return role == null ? null : StandardPart.atEnd(role, end, through);
    }

    /** What stops the coolant before the body stops it for the whole. */
    private HolderBody passing(HolderBody built, List<Accessory> accessories) {
      boolean asked = job.operation().coolant() == Coolant.THROUGH_TOOL;
      boolean stopped = accessories.stream().anyMatch(one -> !one.throughCoolant());
      return asked && stopped && built.throughCoolant() ? built.stoppingCoolant() : built;
    }

    private void add(GivenAssembly.Component component, int index) {
      Kind kind = kind(component);
      if (kind == null) {
        String ref = String.valueOf(component.ref());
        fault(component.pointer() + "/ref", "unknown-holder", unknown(ref));
        return;
      }
      if (kind == Kind.ACCESSORY) {
        small.add(component);
        return;
      }
      boolean first = body == null;
      if (first && (kind == Kind.EXTENSION || kind == Kind.SLEEVE)) {
        fault(component.pointer(), "holder-first", Map.of());
      } else if (!first && kind == Kind.ADAPTER) {
        fault(component.pointer(), "adapter-first", Map.of());
      } else if (!first && kind == Kind.HOLDER) {
        fault(component.pointer(), "second-holder", Map.of());
      } else {
        place(component, kind, index);
      }
    }

    private void fault(String pointer, String code, Map<String, Object> parameters) {
      faults.add(new IntentFault(pointer, code, parameters));
    }

    private Map<String, Object> unknown(String ref) {
      String owns = String.join(", ", owned().keySet());
      return owns.isEmpty() ? Map.of("actual", ref) : Map.of("actual", ref, "inStock", owns);
    }

    /** The body of a catalogue id, or of what the shop owns in the caller's own words. */
    private @Nullable HolderBody named(String ref) {
      HolderBody of = composer.named(ref);
      return of == null && StockRefs.isOwn(ref) ? owned().get(ref) : of;
    }

    private Map<String, HolderBody> owned() {
      Map<String, HolderBody> known = owned;
      if (known == null) {
        known = new LinkedHashMap<>();
        for (HolderBody one : holders.owned(job, faults).values()) {
          known.put(one.ref(), one);
        }
        owned = known;
      }
      return known;
    }

    /** What it is: by its reference, else by its role, else by its place; null where unknown. */
    private @Nullable Kind kind(GivenAssembly.Component component) {
      String ref = component.ref();
      if (ref != null) {
        return referred(ref);
      }
      Role role = component.role();
      if (role == null) {
        return body == null ? Kind.HOLDER : Kind.EXTENSION;
      }
      return switch (role) {
        case ADAPTER -> Kind.ADAPTER;
        case DAMPED_BODY ->
            component.details().family() == null
                ? Kind.ADAPTER
                : body == null ? Kind.HOLDER : Kind.EXTENSION;
        case HOLDER, ARBOR -> Kind.HOLDER;
        case EXTENSION -> Kind.EXTENSION;
        case SLEEVE -> Kind.SLEEVE;
        case COLLET, COOLANT_COLLET -> Kind.COLLET;
        case FORM_LOCK, BACK_STOP_SCREW, RETENTION_KNOB, COOLANT_TUBE -> Kind.ACCESSORY;
      };
    }

    private @Nullable Kind referred(String ref) {
      Attachments attachments = catalogue.attachments();
      if (attachments.adapter(ref) != null) {
        return Kind.ADAPTER;
      }
      if (attachments.extension(ref) != null) {
        return Kind.EXTENSION;
      }
      if (attachments.sleeve(ref) != null) {
        return Kind.SLEEVE;
      }
      if (data.colletSizes().containsKey(ref)) {
        return Kind.COLLET;
      }
      if (named(ref) != null) {
        return Kind.HOLDER;
      }
      return standardParts.named(ref) == null ? null : Kind.ACCESSORY;
    }

    private void place(GivenAssembly.Component component, Kind kind, int index) {
      HolderBody before = body;
      boolean own = component.ref() == null;
      switch (kind) {
        case ADAPTER -> adapter(component, index);
        case HOLDER -> body = holder(component, index);
        case EXTENSION -> {
          if (before != null) {
            body = extended(component, before);
          }
        }
        case SLEEVE -> {
          if (before != null) {
            Sleeve sleeve = parts.sleeve(component, before, job, estimates);
            body = Composer.sleeve(before, sleeve);
          }
        }
        case COLLET -> {
          boolean usual = before != null && isUsual(component, before);
          if (before == null || (before.colletSize() == null && !usual)) {
            estimates.misplaced("component-not-used", component.pointer());
            return;
          }
          if (!usual) {
            body = parts.collet(component, before, job, estimates);
          }
        }
        case ACCESSORY -> throw new IllegalStateException("no part of the stack");
      }
      HolderBody after = kind == Kind.ADAPTER ? null : body;
      placed.add(
          new Placed(
              component.pointer(),
              kind,
              own,
              passes(component, after),
              after,
              component.details()));
    }

    /** Whether a collet is just the one that is taken anyway, here or behind an extension. */
    private static boolean isUsual(GivenAssembly.Component component, HolderBody body) {
      if (!component.details().saysNothing()) {
        return false;
      }
      String ref = component.ref();
      ColletSize size = body.colletSize();
      boolean here = size != null && size.id().equals(ref);
      return here || body.seams().stream().anyMatch(seam -> isOfHost(seam, ref));
    }

    private static boolean isOfHost(Seam seam, @Nullable String ref) {
      return seam instanceof Seam.Clamped clamped
          && clamped.host().colletSize() != null
          && clamped.host().colletSize().id().equals(ref);
    }

    /**
     * Whether coolant passes this one: as said, else as the body so far, which only a holder is.
     */
    private boolean passes(GivenAssembly.Component component, @Nullable HolderBody after) {
      Boolean said = component.details().throughCoolant();
      boolean first = placed.stream().noneMatch(one -> one.kind() == Kind.HOLDER);
      return said == null ? after == null || !first || after.throughCoolant() : said;
    }

    private SpindleInterface end() {
      return adapters.isEmpty()
          ? job.machine().spindle()
          : adapters.get(adapters.size() - 1).coupling();
    }

    private void adapter(GivenAssembly.Component component, int index) {
      Adapter adapter = parts.adapter(component, end(), next(index), job, estimates);
      if (adapter == null) {
        String said = component.details().interfaceId();
        fault(
            component.pointer(),
            "adapter-not-estimable",
            Map.of("interface", said == null ? end().id() : said));
      } else {
        mass(component, adapter.damper());
        adapters.add(adapter);
      }
    }

    /** Spindle end of the component behind one, as far as it is said; empty if not. */
    private String next(int index) {
      int behind = index + 1;
      while (behind < components.size() && kind(components.get(behind)) == Kind.ACCESSORY) {
        behind++;
      }
      if (behind >= components.size()) {
        return "";
      }
      GivenAssembly.Component next = components.get(behind);
      String ref = next.ref();
      String said = next.details().interfaceId();
      if (ref == null) {
        return said == null ? "" : said;
      }
      Adapter adapter = catalogue.attachments().adapter(ref);
      HolderBody holder = named(ref);
      return adapter != null
          ? adapter.spindleInterface().id()
          : holder == null ? "" : holder.spindleInterface().id();
    }

    /** The size of a collet that is named further on; empty where none is. */
    private String colletId(int index) {
      for (int i = index + 1; i < components.size(); i++) {
        String ref = components.get(i).ref();
        if (ref != null && data.colletSizes().containsKey(ref)) {
          return ref;
        }
      }
      return "";
    }

    private @Nullable HolderBody holder(GivenAssembly.Component component, int index) {
      String ref = component.ref();
      HolderBody named = ref == null ? null : named(ref);
      if (named != null) {
        return better(component, named);
      }
      ClampingFamily family = family(component);
      InlineHolder details = component.details();
      String said = details.interfaceId();
      String end = said == null ? end().id() : said;
      double bore = OwnDetails.orElse(details.boreM(), job.tool().shankDiameterM());
      HolderBody template =
          holders.template(family.id(), end, bore, details.projectionM(), colletId(index));
      if (template == null) {
        fault(
            component.pointer(),
            "holder-not-estimable",
            Map.of("family", family.id(), "interface", end, "boreM", bore));
        return null;
      }
      ColletSize collet = template.colletSize();
      HolderBody built = holders.merge(details, template, collet == null ? bore : template.boreM());
      mass(component, built.damper());
      InlineBodies.thinNose(built, component.pointer(), faults);
      Applicable.check(component, Kind.HOLDER, built, estimates);
      estimates.holder(component, template, built, end);
      return built;
    }

    /** How it grips: as said, else as is most usual for the tool. */
    private ClampingFamily family(GivenAssembly.Component component) {
      String said = component.details().family();
      if (said != null) {
        return known(said);
      }
      boolean disc = job.tool().kind() == ToolKind.DISC_CUTTER;
      boolean arbor = component.role() == Role.ARBOR || job.tool().bored();
      ClampingFamily usual =
          known(arbor ? (disc ? "disc-arbor" : "shell-mill-arbor") : "er-collet");
      return estimates.assumed(component, "family", usual, usual.id(), "usual-grip");
    }

    private ClampingFamily known(String id) {
      ClampingFamily family = data.families().get(id);
      if (family == null) {
        throw new IllegalArgumentException("no clamping family " + id);
      }
      return family;
    }

    /** A body of the catalogue with what is known better of this one. */
    private HolderBody better(GivenAssembly.Component component, HolderBody holder) {
      InlineHolder details = component.details();
      if (details.saysNothing()) {
        return holder;
      }
      Applicable.check(component, Kind.HOLDER, holder, estimates);
      Double bore = details.boreM();
      if (!holder.seams().isEmpty()) {
        return parts.noseOf(component, holder);
      }
      HolderBody built = holders.merge(details, holder, bore == null ? holder.boreM() : bore);
      mass(component, built.damper());
      InlineBodies.thinNose(built, component.pointer(), faults);
      return built;
    }

    /** A tuned mass that was told of must have room. */
    private void mass(GivenAssembly.Component component, @Nullable Damper damper) {
      if (component.details().tested().damper() != null && damper == null) {
        fault(component.pointer() + "/damper", "no-room-for-mass", Map.of());
      }
    }

    private @Nullable HolderBody extended(GivenAssembly.Component component, HolderBody host) {
      ClampingFamily family = component.ref() == null ? family(component) : null;
      Extension extension = parts.extension(component, family, host, job, estimates);
      if (extension == null) {
        fault(
            component.pointer(),
            "holder-not-estimable",
            Map.of("family", family == null ? "" : family.id()));
        return host;
      }
      HolderBody built = Composer.extend(host, extension);
      InlineBodies.thinNose(built, component.pointer(), faults);
      return built;
    }
  }
}
