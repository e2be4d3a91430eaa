package org.gaugeline.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.gaugeline.job.IntentFault;
import org.gaugeline.job.IntentFaultException;
import org.gaugeline.job.Job;
import org.gaugeline.job.StockEntry;
import org.gaugeline.reference.ClampingFamily;
import org.gaugeline.reference.GripModel;
import org.gaugeline.reference.ReferenceData;
import org.jspecify.annotations.Nullable;

/**
 * Builds the body that a given list of components makes, whether or not it is a good one: what does
 * not go together is told and not refused, as long as there is something to compute.
 */
public final class GivenStack {
  private final ReferenceData data;
  private final HolderCatalogue catalogue;
  private final Composer composer;

  public GivenStack(ReferenceData data, HolderCatalogue catalogue) {
    this.data = data;
    this.catalogue = catalogue;
    this.composer = new Composer(catalogue);
  }

  /**
   * What was built.
   *
   * @param body the whole stack
   * @param grippingIndex component whose bore holds the tool
   * @param misplaced what was given and has no place there
   */
  public record Built(HolderBody body, int grippingIndex, List<Misplaced> misplaced) {}

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
   * @throws IntentFaultException where a reference is unknown or nothing holds a tool
   */
  public Built build(Job job, GivenAssembly given) {
    return new Building(job).of(given);
  }

  /** One stack in the making. */
  private final class Building {
    private final Job job;
    private final List<IntentFault> faults = new ArrayList<>();
    private final List<Misplaced> misplaced = new ArrayList<>();
    private @Nullable Adapter adapter;
    private @Nullable HolderBody body;
    private int gripping;

    Building(Job job) {
      this.job = job;
    }

    Built of(GivenAssembly given) {
      for (int i = 0; i < given.components().size(); i++) {
        add(given.components().get(i), i);
      }
      HolderBody whole = body;
      if (whole == null && faults.isEmpty()) {
        faults.add(new IntentFault("/assembly/components", "holder-needed", Map.of()));
      }
      if (whole == null || !faults.isEmpty()) {
        throw new IntentFaultException(faults);
      }
      Adapter under = adapter;
      return new Built(
          under == null ? whole : Composer.adapt(under, whole), gripping, List.copyOf(misplaced));
    }

    private void add(GivenAssembly.Component component, int index) {
      String ref = component.ref();
      boolean added =
          ref == null ? inline(component) : referred(component, ref) || unknown(component, ref);
      if (added && component.role() != Role.COLLET && component.role() != Role.ADAPTER) {
        gripping = index;
      }
    }

    private boolean unknown(GivenAssembly.Component component, String ref) {
      faults.add(
          new IntentFault(component.pointer() + "/ref", "unknown-holder", Map.of("actual", ref)));
      return false;
    }

    private boolean referred(GivenAssembly.Component component, String ref) {
      HolderBody before = body;
      Adapter under = find(catalogue.attachments().adapters(), ref);
      if (under != null && before == null) {
        adapter = under;
        return true;
      }
      if (data.colletSizes().containsKey(ref)) {
        return collet(component);
      }
      if (before != null) {
        return attached(before, ref);
      }
      HolderBody holder = composer.named(ref);
      if (holder != null) {
        body = overridden(component, holder);
        return true;
      }
      return false;
    }

    /** Puts an extension or sleeve on, also where it does not fit: the findings say so. */
    private boolean attached(HolderBody host, String ref) {
      for (Extension extension : catalogue.attachments().extensions()) {
        if (extension.ref().equals(ref)) {
          body = Composer.extend(host, extension);
          return true;
        }
      }
      for (Sleeve sleeve : catalogue.attachments().sleeves()) {
        if (sleeve.ref().equals(ref)) {
          body = Composer.sleeve(host, sleeve);
          return true;
        }
      }
      return false;
    }

    private static @Nullable Adapter find(List<Adapter> adapters, String ref) {
      for (Adapter one : adapters) {
        if (one.ref().equals(ref)) {
          return one;
        }
      }
      return null;
    }

    /** A body of the catalogue with what is known better of this one. */
    private HolderBody overridden(GivenAssembly.Component component, HolderBody holder) {
      StockEntry.InlineHolder details = component.details();
      if (details.saysNothing()) {
        return holder;
      }
      applies(component, holder.family());
      Double bore = details.boreM();
      return InlineBodies.merge(details, holder, bore == null ? holder.boreM() : bore);
    }

    private boolean inline(GivenAssembly.Component component) {
      Role role = component.role();
      if (role == Role.COLLET || role == Role.COOLANT_COLLET) {
        return collet(component);
      }
      ClampingFamily family = data.families().get(component.details().family());
      if (family == null) {
        misplaced.add(new Misplaced("component-not-used", component.pointer()));
        return false;
      }
      applies(component, family);
      HolderBody before = body;
      if (before != null) {
        return extension(component, before, family);
      }
      body = holder(component, family);
      return body != null;
    }

    private boolean extension(
        GivenAssembly.Component component, HolderBody host, ClampingFamily family) {
      StockEntry.InlineHolder details = component.details();
      double bore = InlineBodies.orElse(details.boreM(), job.tool().shankDiameterM());
      Extension best = null;
      for (Extension one : catalogue.attachments().extensions()) {
        boolean suits = one.family().id().equals(family.id()) && host.takes(one.shankDiameterM());
        if (suits && (best == null || distance(one, bore) < distance(best, bore))) {
          best = one;
        }
      }
      if (best == null) {
        faults.add(
            new IntentFault(
                component.pointer(),
                "holder-not-estimable",
                Map.of("family", family.id(), "boreM", bore)));
        return false;
      }
      List<ProfileSection> sections = InlineBodies.sections(details.profile());
      double length = InlineBodies.orElse(details.projectionM(), best.lengthM());
      body =
          Composer.extend(
              host,
              new Extension(
                  "own-" + best.ref(),
                  family,
                  bore,
                  best.collet(),
                  best.shankDiameterM(),
                  best.shankLengthM(),
                  length,
                  sections.isEmpty() ? scaled(best, length) : sections,
                  best.minInsertionM(),
                  best.maxInsertionM(),
                  InlineBodies.orElse(details.price(), best.price()),
                  "given"));
      return true;
    }

    private static double distance(Extension extension, double boreM) {
      ColletTake take = new ColletTake(extension);
      return take.takes(boreM) ? 0 : Math.abs(extension.boreM() - boreM);
    }

    private static List<ProfileSection> scaled(Extension extension, double lengthM) {
      double scale = lengthM / extension.lengthM();
      return extension.sections().stream()
          .map(
              s ->
                  new ProfileSection(
                      s.lengthM() * scale, s.startDiameterM(), s.endDiameterM(), s.boreM()))
          .toList();
    }

    private @Nullable HolderBody holder(GivenAssembly.Component component, ClampingFamily family) {
      StockEntry.InlineHolder details = component.details();
      Adapter under = adapter;
      String fallback = under == null ? job.machine().spindle().id() : under.coupling().id();
      String given = details.interfaceId();
      String interfaceId = given == null ? fallback : given;
      double bore = InlineBodies.orElse(details.boreM(), job.tool().shankDiameterM());
      HolderBody template = template(family, interfaceId, bore, details.projectionM());
      if (template == null) {
        faults.add(
            new IntentFault(
                component.pointer(),
                "holder-not-estimable",
                Map.of("family", family.id(), "interface", interfaceId, "boreM", bore)));
        return null;
      }
      boolean fixedBore = template.colletSize() == null;
      return InlineBodies.merge(details, template, fixedBore ? bore : template.boreM());
    }

    private @Nullable HolderBody template(
        ClampingFamily family, String interfaceId, double boreM, @Nullable Double projectionM) {
      HolderBody best = null;
      double least = Double.POSITIVE_INFINITY;
      for (HolderBody holder : catalogue.byInterface().getOrDefault(interfaceId, List.of())) {
        if (holder.family().id().equals(family.id())) {
          double off = holder.takes(boreM) ? 0 : 1 + Math.abs(holder.boreM() - boreM);
          double length =
              projectionM == null
                  ? holder.projectionM() * 1e-3
                  : Math.abs(holder.projectionM() - projectionM);
          if (off + length < least) {
            least = off + length;
            best = holder;
          }
        }
      }
      return best;
    }

    private boolean collet(GivenAssembly.Component component) {
      HolderBody holder = body;
      if (holder == null || holder.family().gripModel() != GripModel.COLLET) {
        misplaced.add(new Misplaced("component-not-used", component.pointer()));
        return false;
      }
      if (!component.details().saysNothing()) {
        body = InlineBodies.merge(component.details(), holder, holder.boreM());
      }
      return true;
    }

    /** Notes properties that the family has no use for. */
    private void applies(GivenAssembly.Component component, ClampingFamily family) {
      StockEntry.InlineHolder details = component.details();
      if (details.nutTorqueNm() != null && family.gripModel() != GripModel.COLLET) {
        note(component, "nutTorqueNm");
      }
      if (details.interferenceM() != null && family.gripModel() != GripModel.SHRINK) {
        note(component, "interferenceUm");
      }
    }

    private void note(GivenAssembly.Component component, String member) {
      misplaced.add(new Misplaced("property-not-applicable", component.pointer() + "/" + member));
    }
  }

  /** Whether a nose takes a shank, as of a holder. */
  private record ColletTake(Extension extension) {
    boolean takes(double diameterM) {
      return extension.collet() == null
          ? Math.abs(diameterM - extension.boreM()) < 2e-5
          : diameterM >= extension.collet().minBoreM() && diameterM <= extension.boreM();
    }
  }
}
