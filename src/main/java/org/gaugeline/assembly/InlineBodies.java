package org.gaugeline.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.gaugeline.job.IntentFault;
import org.gaugeline.job.Job;
import org.gaugeline.job.StockEntry;
import org.jspecify.annotations.Nullable;

/**
 * Turns a holder in the caller's own words into a body: what is given is taken, what is left out
 * comes from the generic body of the same family, spindle end and bore that is nearest in length.
 */
final class InlineBodies {
  private final HolderCatalogue catalogue;

  InlineBodies(HolderCatalogue catalogue) {
    this.catalogue = catalogue;
  }

  Optional<HolderBody> body(
      StockEntry.InlineHolder given, String pointer, Job job, List<IntentFault> faults) {
    String familyId = Objects.requireNonNull(given.family(), "the edge wants ref or family");
    String spindle = given.interfaceId();
    String interfaceId = spindle == null ? job.machine().spindle().id() : spindle;
    Double bore = given.boreM();
    double boreM = bore == null ? job.tool().shankDiameterM() : bore;
    HolderBody template = template(familyId, interfaceId, boreM, given.projectionM());
    if (template == null) {
      faults.add(
          new IntentFault(
              pointer,
              "holder-not-estimable",
              Map.of("family", familyId, "interface", interfaceId, "boreM", boreM)));
      return Optional.empty();
    }
    return Optional.of(merge(given, template, template.boreM()));
  }

  private @Nullable HolderBody template(
      String familyId, String interfaceId, double boreM, @Nullable Double projectionM) {
    HolderBody best = null;
    for (HolderBody holder : catalogue.byInterface().getOrDefault(interfaceId, List.of())) {
      if (holder.family().id().equals(familyId) && holder.takes(boreM)) {
        if (best == null
            || (projectionM != null
                && Math.abs(holder.projectionM() - projectionM)
                    < Math.abs(best.projectionM() - projectionM))) {
          best = holder;
        }
      }
    }
    return best;
  }

  static HolderBody merge(StockEntry.InlineHolder given, HolderBody template, double boreM) {
    Double projection = given.projectionM();
    List<ProfileSection> sections = sections(given.profile());
    double length = 0;
    for (ProfileSection section : sections) {
      length += section.lengthM();
    }
    double projectionM =
        projection != null ? projection : sections.isEmpty() ? template.projectionM() : length;
    if (sections.isEmpty()) {
      sections = stretched(template, projectionM);
    }
    return new HolderBody(
        String.format(
            Locale.ROOT,
            "own-%s-%.4g-p%.4g",
            template.family().id(),
            boreM * 1e3,
            projectionM * 1e3),
        HolderBody.Origin.REQUEST,
        template.family(),
        template.spindleInterface(),
        given.faceContact() == null ? template.faceContact() : given.faceContact(),
        boreM,
        template.colletSize(),
        projectionM,
        sections,
        template.minInsertionM(),
        Math.min(template.maxInsertionM(), projectionM),
        ratings(given),
        orElse(given.price(), template.price()),
        given.throughCoolant() == null ? template.throughCoolant() : given.throughCoolant(),
        given.profile().isEmpty() ? template.sourceKey() : "given");
  }

  static List<ProfileSection> sections(List<StockEntry.Section> given) {
    List<ProfileSection> sections = new ArrayList<>(given.size());
    for (StockEntry.Section section : given) {
      sections.add(
          new ProfileSection(
              section.lengthM(),
              section.diameterM(),
              orElse(section.endDiameterM(), section.diameterM()),
              orElse(section.boreM(), 0)));
    }
    return sections;
  }

  private static List<ProfileSection> stretched(HolderBody template, double projectionM) {
    double scale = projectionM / template.projectionM();
    List<ProfileSection> sections = new ArrayList<>(template.sections().size());
    for (ProfileSection section : template.sections()) {
      sections.add(
          new ProfileSection(
              section.lengthM() * scale,
              section.startDiameterM(),
              section.endDiameterM(),
              section.boreM()));
    }
    return sections;
  }

  private static Ratings ratings(StockEntry.InlineHolder given) {
    double none = Double.NaN;
    return new Ratings(
        orElse(given.maxSpindleSpeedRadPerS(), none),
        orElse(given.balanceGradeMPerS(), none),
        orElse(given.balanceSpeedRadPerS(), none),
        orElse(given.residualUnbalanceKgM(), none),
        orElse(given.runoutTirM(), none),
        orElse(given.massKg(), none),
        orElse(given.nutTorqueNm(), none),
        orElse(given.interferenceM(), none),
        orElse(given.frictionCoefficient(), none),
        orElse(given.clampingTorqueNm(), none),
        orElse(given.axialHoldN(), none));
  }

  static double orElse(@Nullable Double given, double otherwise) {
    return given == null ? otherwise : given;
  }
}
