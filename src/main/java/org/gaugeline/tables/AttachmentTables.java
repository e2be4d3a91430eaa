package org.gaugeline.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.gaugeline.assembly.Adapter;
import org.gaugeline.assembly.Attachments;
import org.gaugeline.assembly.Damper;
import org.gaugeline.assembly.Extension;
import org.gaugeline.assembly.PartData;
import org.gaugeline.assembly.ProfileSection;
import org.gaugeline.assembly.Sleeve;
import org.gaugeline.reference.ClampingFamily;
import org.gaugeline.reference.ColletSize;
import org.gaugeline.reference.ContactMode;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.SpindleInterface;

/** Reads the generic extensions, reduction sleeves, adapters and damped bodies. */
final class AttachmentTables {
  static final List<String> EXTENSION_COLUMNS =
      List.of(
          "family",
          "size",
          "boreMm",
          "colletSize",
          "shankDiameterMm",
          "shankLengthMm",
          "lengthMm",
          "noseDiameterMm",
          "noseHalfAngleDeg",
          "bodyDiameterMm",
          "minInsertionMm",
          "maxInsertionMm",
          "priceEur",
          "priceSourceKey",
          "sourceKey");
  static final List<String> SLEEVE_COLUMNS =
      List.of(
          "size",
          "outerDiameterMm",
          "boreMm",
          "lengthMm",
          "tirP05Um",
          "tirUm",
          "tirP95Um",
          "gripShareP05",
          "gripShare",
          "gripShareP95",
          "priceEur",
          "priceSourceKey",
          "sourceKey");
  static final List<String> ADAPTER_COLUMNS =
      List.of(
          "interfaceId",
          "couplingId",
          "projectionMm",
          "boreMm",
          "damperMassKg",
          "damperAtMm",
          "priceEur",
          "priceSourceKey",
          "sourceKey");

  private AttachmentTables() {}

  static Attachments read(TableFolder folder, ReferenceData data) {
    List<Extension> extensions = new ArrayList<>();
    for (Row row : rows(folder, "extensions.csv", EXTENSION_COLUMNS)) {
      extensions.add(TableReader.guarded(row, r -> extension(r, data)));
    }
    List<Sleeve> sleeves = new ArrayList<>();
    for (Row row : rows(folder, "sleeves.csv", SLEEVE_COLUMNS)) {
      sleeves.add(TableReader.guarded(row, r -> sleeve(r, data)));
    }
    List<Adapter> adapters = new ArrayList<>();
    for (Row row : rows(folder, "adapters.csv", ADAPTER_COLUMNS)) {
      adapters.addAll(TableReader.guarded(row, r -> adapters(r, data)));
    }
    return new Attachments(List.copyOf(extensions), List.copyOf(sleeves), List.copyOf(adapters));
  }

  private static Extension extension(Row row, ReferenceData data) {
    row.source("priceSourceKey", data.sources());
    ClampingFamily family = row.refer("family", data.families());
    ColletSize collet = row.has("colletSize") ? row.refer("colletSize", data.colletSizes()) : null;
    double length = row.positiveSi("lengthMm");
    return new Extension(
        "x-" + family.id() + "-" + row.text("size"),
        family,
        row.positiveSi("boreMm"),
        collet,
        row.positiveSi("shankDiameterMm"),
        row.positiveSi("shankLengthMm"),
        length,
        cone(
            length,
            row.positiveSi("noseDiameterMm"),
            row.si("noseHalfAngleDeg"),
            row.positiveSi("bodyDiameterMm"),
            data.practice("extensionChannelM")),
        row.positiveSi("minInsertionMm"),
        row.positiveSi("maxInsertionMm"),
        row.si("priceEur"),
        row.source(data.sources()),
        PartData.OF_CATALOGUE);
  }

  /** A nose that grows towards the holder until it has the body's diameter. */
  private static List<ProfileSection> cone(
      double length, double nose, double halfAngleRad, double body, double channel) {
    double slope = 2 * Math.tan(halfAngleRad);
    double grown = slope > 0 ? (body - nose) / slope : 0;
    List<ProfileSection> sections = new ArrayList<>(2);
    if (grown <= 0) {
      sections.add(new ProfileSection(length, nose, nose, channel));
    } else if (grown >= length) {
      sections.add(new ProfileSection(length, nose + slope * length, nose, channel));
    } else {
      sections.add(new ProfileSection(length - grown, body, body, channel));
      sections.add(new ProfileSection(grown, body, nose, channel));
    }
    return List.copyOf(sections);
  }

  private static Sleeve sleeve(Row row, ReferenceData data) {
    row.source("priceSourceKey", data.sources());
    return new Sleeve(
        "s-" + row.text("size"),
        row.positiveSi("outerDiameterMm"),
        row.positiveSi("boreMm"),
        row.positiveSi("lengthMm"),
        data.practice("leastGripShare") * row.positiveSi("lengthMm"),
        row.spread("tir", "Um"),
        row.spread("gripShare", ""),
        row.si("priceEur"),
        row.source(data.sources()),
        PartData.OF_CATALOGUE);
  }

  /** A steep taper is made plain and, dearer, with face contact. */
  private static List<Adapter> adapters(Row row, ReferenceData data) {
    SpindleInterface end = row.refer("interfaceId", data.interfaces());
    if (end.nativeContact() != ContactMode.TAPER_ONLY) {
      return List.of(adapter(row, data, true, 1));
    }
    return end.faceContactOffered()
        ? List.of(
            adapter(row, data, false, 1),
            adapter(row, data, true, data.practice("faceContactPriceFactor")))
        : List.of(adapter(row, data, false, 1));
  }

  private static Adapter adapter(
      Row row, ReferenceData data, boolean faceContact, double priceFactor) {
    row.source("priceSourceKey", data.sources());
    SpindleInterface end = row.refer("interfaceId", data.interfaces());
    SpindleInterface coupling = row.refer("couplingId", data.interfaces());
    double projection = row.positiveSi("projectionMm");
    double mass = row.si("damperMassKg");
    boolean damped = mass > 0;
    return new Adapter(
        (damped ? "d-" : "m-")
            + end.id().toLowerCase(Locale.ROOT)
            + "-"
            + coupling.id().toLowerCase(Locale.ROOT)
            + "-p"
            + Math.round(projection * 1e3)
            + (faceContact && end.nativeContact() == ContactMode.TAPER_ONLY ? "-fc" : ""),
        end,
        coupling,
        faceContact,
        projection,
        Adapter.generic(
            end,
            coupling,
            projection,
            row.positiveSi("boreMm"),
            data.practice("adapterChannelM"),
            damped),
        damped ? new Damper(row.positiveSi("damperAtMm"), mass) : null,
        Math.rint(row.si("priceEur") * priceFactor),
        row.source(data.sources()),
        PartData.OF_CATALOGUE);
  }

  private static List<Row> rows(TableFolder folder, String file, List<String> columns) {
    return TableReader.table(file, folder.read(file), columns);
  }
}
