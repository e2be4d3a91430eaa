package org.gaugeline.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.ProfileSection;
import org.gaugeline.assembly.Ratings;
import org.gaugeline.reference.ContactMode;
import org.gaugeline.reference.GripModel;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.SpindleInterface;

/**
 * Composes the built-in series of generic bodies, of no maker: every size at the tool end with
 * every projection of every interface that it suits. Steep tapers are made plain and, dearer, with
 * face contact.
 */
final class GenericSeries {
  private final List<SeriesSize> sizes;
  private final List<SeriesProjection> projections;
  private final double faceContactPriceFactor;
  private final double channelShareOfBore;
  private final double leastChannelM;

  private GenericSeries(
      List<SeriesSize> sizes, List<SeriesProjection> projections, ReferenceData data) {
    this.sizes = sizes;
    this.projections = projections;
    this.faceContactPriceFactor = data.practice("faceContactPriceFactor");
    this.channelShareOfBore = data.practice("channelShareOfBore");
    this.leastChannelM = data.practice("leastChannelM");
  }

  static GenericSeries read(TableFolder folder, ReferenceData data) {
    List<SeriesSize> sizes = new ArrayList<>();
    for (Row row : rows(folder, "holder-series.csv", SeriesSize.COLUMNS)) {
      sizes.add(TableReader.guarded(row, r -> SeriesSize.read(r, data)));
    }
    List<SeriesProjection> projections = new ArrayList<>();
    for (Row row : rows(folder, "projections.csv", SeriesProjection.COLUMNS)) {
      projections.add(TableReader.guarded(row, r -> SeriesProjection.read(r, data)));
    }
    return new GenericSeries(sizes, projections, data);
  }

  /** All bodies, in the order of the tables. */
  List<HolderBody> bodies() {
    List<HolderBody> bodies = new ArrayList<>(6000);
    for (SeriesProjection projection : projections) {
      boolean steep = projection.spindleInterface().nativeContact() == ContactMode.TAPER_ONLY;
      for (SeriesSize size : sizes) {
        if (projection.suits(size)) {
          List<ProfileSection> sections = sections(projection, size);
          bodies.add(body(projection, size, sections, !steep));
          if (steep && projection.spindleInterface().faceContactOffered()) {
            bodies.add(body(projection, size, sections, true));
          }
        }
      }
    }
    return bodies;
  }

  private HolderBody body(
      SeriesProjection projection,
      SeriesSize size,
      List<ProfileSection> sections,
      boolean faceContact) {
    SpindleInterface end = projection.spindleInterface();
    boolean dearer = faceContact && end.nativeContact() == ContactMode.TAPER_ONLY;
    double price = size.price() * projection.priceFactor() * (dearer ? faceContactPriceFactor : 1);
    return new HolderBody(
        ref(projection, size) + (dearer ? "-fc" : ""),
        HolderBody.Origin.GENERIC,
        size.family(),
        end,
        faceContact,
        size.boreM(),
        size.collet(),
        projection.projectionM(),
        sections,
        size.minInsertionM(),
        deepestM(projection, size),
        Ratings.NONE,
        Math.rint(price),
        size.family().gripModel() != GripModel.JAWS,
        size.sourceKey());
  }

  private static String ref(SeriesProjection projection, SeriesSize size) {
    return "g-"
        + projection.spindleInterface().id().toLowerCase(Locale.ROOT)
        + "-"
        + size.word()
        + "-p"
        + Math.round(projection.projectionM() * 1e3);
  }

  private static double deepestM(SeriesProjection projection, SeriesSize size) {
    return Math.min(size.maxInsertionM(), projection.deepestM());
  }

  private List<ProfileSection> sections(SeriesProjection projection, SeriesSize size) {
    SpindleInterface end = projection.spindleInterface();
    double channel = Math.max(leastChannelM, channelShareOfBore * size.boreM());
    return new BodyShape(
            end.flangeDiameterM(),
            end.flangeFrontM(),
            size.bodyDiameterM(),
            size.noseDiameterM(),
            size.noseHalfAngleRad(),
            size.noseLengthM(),
            projection.projectionM(),
            channel,
            size.isArbor() ? channel : size.boreM(),
            deepestM(projection, size))
        .sections();
  }

  private static List<Row> rows(TableFolder folder, String file, List<String> columns) {
    return TableReader.table(file, folder.read(file), columns);
  }
}
