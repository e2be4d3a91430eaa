package org.gaugeline.assembly;

import static org.gaugeline.assembly.OwnDetails.orElse;

import java.util.List;
import org.gaugeline.job.Job;
import org.gaugeline.job.StockEntry.InlineHolder;
import org.gaugeline.reference.ClampingFamily;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.SpindleInterface;
import org.gaugeline.reference.Spread;
import org.jspecify.annotations.Nullable;

/**
 * Turns adapters, extensions, sleeves and collets in the caller's own words into parts: what is
 * left out comes from the generic part that is nearest.
 */
final class InlineParts {
  private static final double SAME_M = 2e-5;

  private final ReferenceData data;
  private final HolderCatalogue catalogue;
  private final InlineBodies holders;

  InlineParts(ReferenceData data, HolderCatalogue catalogue, InlineBodies holders) {
    this.data = data;
    this.catalogue = catalogue;
    this.holders = holders;
  }

  private static PartData partData(GivenAssembly.Component component, Known known) {
    InlineHolder details = component.details();
    return new PartData(
        component.ref() == null || !details.saysNothing(),
        OwnDetails.ratings(details),
        !Boolean.FALSE.equals(details.throughCoolant()),
        known);
  }

  private static String refOf(GivenAssembly.Component component, String generic) {
    return component.details().saysNothing() && component.ref() != null
        ? generic
        : "own-" + generic;
  }

  /**
   * An adapter, damped or not.
   *
   * @param end what it is put into
   * @param next spindle end of what is put into it; empty where not said
   * @return null where too little is said and no generic one is near
   */
  @Nullable Adapter adapter(
      GivenAssembly.Component component,
      SpindleInterface end,
      String next,
      Job job,
      Estimates estimates) {
    String ref = component.ref();
    InlineHolder details = component.details();
    Adapter named = ref == null ? null : catalogue.attachments().adapter(ref);
    if (named != null && details.saysNothing()) {
      return named;
    }
    String said = details.interfaceId();
    SpindleInterface own = said == null ? end : data.interfaces().getOrDefault(said, end);
    boolean damped = component.role() == Role.DAMPED_BODY || details.tested().damper() != null;
    Adapter template = named == null ? nearest(details, own, next, damped, job) : named;
    if (template == null) {
      return null;
    }
    Applicable.check(component, GivenStack.Kind.ADAPTER, null, estimates);
    Adapter built = adapter(component, template, damped || template.isDamped());
    estimates.adapter(component, template.ref(), built);
    return built;
  }

  private Adapter adapter(GivenAssembly.Component component, Adapter template, boolean damped) {
    InlineHolder details = component.details();
    double length = OwnDetails.lengthM(details, template.projectionM());
    List<ProfileSection> sections =
        OwnDetails.sections(details, template.sections(), template.projectionM(), length, data);
    SpindleInterface coupling = template.coupling();
    Joint front =
        new Joint(Double.NaN, Double.NaN, Double.NaN, orElse(details.runoutTirM(), Double.NaN));
    double face = coupling.seatDiameterM();
    Known known =
        new Known(
            OwnDetails.joint(details),
            OwnDetails.withFace(front, details, face),
            OwnDetails.dampingRatio(details),
            null);
    MassRoom room = damped ? MassRoom.in(sections, length, data) : null;
    Damper usual = template.damper();
    Damper damper =
        room == null || !MassRoom.holds(room, details)
            ? null
            : room.damper(details, usual == null ? room.usualKg() : usual.massKg());
    return new Adapter(
        refOf(component, template.ref()),
        template.spindleInterface(),
        coupling,
        orElse(details.faceContact(), template.faceContact()),
        length,
        room == null || damper == null ? sections : room.hollowed(sections),
        damper,
        orElse(details.price(), template.price()),
        details.profile().isEmpty() ? template.sourceKey() : "given",
        partData(component, known));
  }

  /**
   * The generic adapter of that spindle end that is nearest in length; with the coupling of what
   * follows, where that is said, or else with one for which there are heads that take the tool.
   */
  private @Nullable Adapter nearest(
      InlineHolder details, SpindleInterface end, String next, boolean damped, Job job) {
    Adapter best = null;
    double least = Double.POSITIVE_INFINITY;
    for (Adapter one : catalogue.attachments().adapters()) {
      boolean couples = next.isEmpty() ? hasHead(one, job) : one.coupling().id().equals(next);
      if (!couples || !one.spindleInterface().id().equals(end.id())) {
        continue;
      }
      double length = orElse(details.projectionM(), 0);
      double distance = Math.abs(one.projectionM() - length) + (one.isDamped() == damped ? 0 : 1);
      if (distance < least) {
        least = distance;
        best = one;
      }
    }
    SpindleInterface coupling = data.interfaces().get(next);
    return best == null && coupling != null ? generic(end, coupling) : best;
  }

  private boolean hasHead(Adapter adapter, Job job) {
    for (HolderBody head :
        catalogue.byInterface().getOrDefault(adapter.coupling().id(), List.of())) {
      if (head.takes(job.tool().shankDiameterM())) {
        return true;
      }
    }
    return false;
  }

  /**
   * No generic one is made for these two ends: as long as most, with flange and front of theirs.
   */
  private @Nullable Adapter generic(SpindleInterface end, SpindleInterface coupling) {
    for (Adapter like : catalogue.attachments().adapters()) {
      if (!like.isDamped()) {
        return new Adapter(
            "m-" + end.id() + "-" + coupling.id(),
            end,
            coupling,
            like.faceContact(),
            like.projectionM(),
            Adapter.generic(
                end,
                coupling,
                like.projectionM(),
                like.sections().get(0).boreM(),
                data.practice("adapterChannelM"),
                false),
            null,
            Double.NaN,
            like.sourceKey(),
            PartData.OF_CATALOGUE);
      }
    }
    return null;
  }

  /**
   * An extension.
   *
   * @param family how it grips; null for one of the catalogue
   * @return null where no generic one grips like that
   */
  @Nullable Extension extension(
      GivenAssembly.Component component,
      @Nullable ClampingFamily family,
      HolderBody host,
      Job job,
      Estimates estimates) {
    String ref = component.ref();
    InlineHolder details = component.details();
    Extension named = ref == null ? null : catalogue.attachments().extension(ref);
    if (named != null && details.saysNothing()) {
      return named;
    }
    double bore = orElse(details.boreM(), job.tool().shankDiameterM());
    Extension template =
        named != null || family == null ? named : nearest(family, host, bore, details);
    if (template == null) {
      return null;
    }
    double length = OwnDetails.lengthM(details, template.lengthM());
    boolean fixed = template.collet() == null;
    double ownBore = fixed && (named == null || details.boreM() != null) ? bore : template.boreM();
    List<ProfileSection> sections =
        OwnDetails.sections(details, template.sections(), template.lengthM(), length, data);
    if (details.profile().isEmpty() && Math.abs(ownBore - template.boreM()) > SAME_M) {
      sections = OwnDetails.walled(sections, template.boreM(), ownBore);
    }
    // nobody says how thick the shank is: it is there to fit
    boolean fits = named != null || host.takes(template.shankDiameterM());
    double shank = fits ? template.shankDiameterM() : host.boreM();
    Extension built =
        new Extension(
            refOf(component, template.ref()),
            template.family(),
            ownBore,
            template.collet(),
            shank,
            template.shankLengthM(),
            length,
            sections,
            template.minInsertionM(),
            template.maxInsertionM(),
            orElse(details.price(), template.price()),
            details.profile().isEmpty() ? template.sourceKey() : "given",
            partData(
                component,
                new Known(
                    OwnDetails.joint(details),
                    Joint.UNMEASURED,
                    OwnDetails.dampingRatio(details),
                    null)));
    Applicable.check(component, GivenStack.Kind.EXTENSION, Composer.extend(host, built), estimates);
    estimates.extension(component, template, built);
    return built;
  }

  /** Of one family; one whose shank goes into the host, then by bore, then by length. */
  private @Nullable Extension nearest(
      ClampingFamily family, HolderBody host, double boreM, InlineHolder details) {
    Extension best = null;
    double least = Double.POSITIVE_INFINITY;
    for (Extension one : catalogue.attachments().extensions()) {
      if (one.family().id().equals(family.id())) {
        double length = orElse(details.projectionM(), 0);
        double distance =
            (host.takes(one.shankDiameterM()) ? 0 : 100)
                + (takes(one, boreM) ? 0 : 10 + Math.abs(one.boreM() - boreM))
                + Math.abs(one.lengthM() - length);
        if (distance < least) {
          least = distance;
          best = one;
        }
      }
    }
    return best;
  }

  private static boolean takes(Extension extension, double diameterM) {
    return extension.collet() == null
        ? Math.abs(diameterM - extension.boreM()) < SAME_M
        : diameterM >= extension.collet().minBoreM() && diameterM <= extension.boreM();
  }

  /** A sleeve: of the catalogue, or one whose outside is the bore that it is put into. */
  Sleeve sleeve(GivenAssembly.Component component, HolderBody host, Job job, Estimates estimates) {
    String ref = component.ref();
    InlineHolder details = component.details();
    Sleeve named = ref == null ? null : catalogue.attachments().sleeve(ref);
    if (named != null && details.saysNothing()) {
      return named;
    }
    double bore = orElse(details.boreM(), job.tool().shankDiameterM());
    Sleeve template = named == null ? nearest(host.boreM(), bore) : named;
    Spread tir =
        details.runoutTirM() == null ? template.tirM() : Spread.exact(details.runoutTirM());
    double length = Math.min(template.lengthM(), host.maxInsertionM());
    Sleeve built =
        new Sleeve(
            refOf(component, template.ref()),
            named == null ? host.boreM() : named.outerDiameterM(),
            named == null || details.boreM() != null ? bore : named.boreM(),
            length,
            data.practice("leastGripShare") * length,
            tir,
            template.gripShare(),
            orElse(details.price(), template.price()),
            template.sourceKey(),
            partData(
                component,
                new Known(OwnDetails.joint(details), Joint.UNMEASURED, Double.NaN, null)));
    Applicable.check(component, GivenStack.Kind.SLEEVE, host, estimates);
    estimates.sleeve(component, built, template.sourceKey());
    return built;
  }

  private Sleeve nearest(double outerM, double boreM) {
    Sleeve best = catalogue.attachments().sleeves().get(0);
    for (Sleeve one : catalogue.attachments().sleeves()) {
      if (distance(one, outerM, boreM) < distance(best, outerM, boreM)) {
        best = one;
      }
    }
    return best;
  }

  private static double distance(Sleeve sleeve, double outerM, double boreM) {
    return Math.abs(sleeve.outerDiameterM() - outerM) + Math.abs(sleeve.boreM() - boreM) * 1e-3;
  }

  /** The body with the collet that was chosen for it. */
  HolderBody collet(
      GivenAssembly.Component component, HolderBody holder, Job job, Estimates estimates) {
    InlineHolder details = component.details();
    String ref = component.ref();
    Applicable.check(component, GivenStack.Kind.COLLET, holder, estimates);
    if (details.boreM() == null) {
      double shank = job.tool().shankDiameterM();
      estimates.put(
          component, "boreMm", shank + holder.colletClosesByM(shank), "bore-of-shank", "");
    }
    Ratings said = OwnDetails.ratings(details);
    Ratings clamping =
        Ratings.NONE.with(
            new Ratings(
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                said.runoutTirM(),
                Double.NaN,
                said.nutTorqueNm(),
                Double.NaN,
                said.frictionCoefficient(),
                said.clampingTorqueNm(),
                said.axialHoldN()));
    Known known =
        new Known(
            Joint.UNMEASURED,
            OwnDetails.joint(details),
            Double.NaN,
            new Known.GivenCollet(
                ref == null ? "" : ref,
                orElse(details.boreM(), Double.NaN),
                said.maxSpeedRadPerS()));
    boolean passes = !Boolean.FALSE.equals(details.throughCoolant());
    return holder.knowing(
        clamping,
        known,
        holder.throughCoolant() && passes,
        holder.price() + orElse(details.price(), 0));
  }

  /** A stack of the catalogue of which something of its nose is known better. */
  HolderBody noseOf(GivenAssembly.Component component, HolderBody stack) {
    InlineHolder details = component.details();
    Joint rear = OwnDetails.joint(details);
    Known known =
        new Known(
            stack.faceContact()
                ? OwnDetails.withFace(rear, details, holders.faceDiameterM(stack))
                : rear,
            Joint.UNMEASURED,
            OwnDetails.dampingRatio(details),
            null);
    return stack.knowing(
        OwnDetails.ratings(details).ofNose(),
        known,
        orElse(details.throughCoolant(), stack.throughCoolant()),
        orElse(details.price(), stack.price()));
  }
}
