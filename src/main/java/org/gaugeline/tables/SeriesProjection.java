package org.gaugeline.tables;

import java.util.List;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.SpindleInterface;

/**
 * A projection in which generic bodies of an interface are made, and the sizes that suit it.
 *
 * @param spindleInterface the spindle end
 * @param projectionM gauge plane to front face
 * @param minBoreM smallest bore made
 * @param maxBoreM largest bore made
 * @param maxNoseDiameterM largest nose that the flange carries
 * @param priceFactor multiplier on the guide price
 * @param longestArborM longest projection in which arbors are made
 * @param rootM solid metal between the bottom of a bore and the spindle end
 * @param rootShareOfFlange share of the flange that a bore leaves solid
 */
record SeriesProjection(
    SpindleInterface spindleInterface,
    double projectionM,
    double minBoreM,
    double maxBoreM,
    double maxNoseDiameterM,
    double priceFactor,
    double longestArborM,
    double rootM,
    double rootShareOfFlange) {
  static final List<String> COLUMNS =
      List.of(
          "interfaceId",
          "projectionMm",
          "minBoreMm",
          "maxBoreMm",
          "maxNoseDiameterMm",
          "priceFactor",
          "priceSourceKey",
          "sourceKey");

  static SeriesProjection read(Row row, ReferenceData data) {
    row.source(data.sources());
    row.source("priceSourceKey", data.sources());
    return new SeriesProjection(
        row.refer("interfaceId", data.interfaces()),
        row.positiveSi("projectionMm"),
        row.positiveSi("minBoreMm"),
        row.positiveSi("maxBoreMm"),
        row.positiveSi("maxNoseDiameterMm"),
        row.positiveSi("priceFactor"),
        data.practice("arborLongestProjectionM"),
        data.practice("seriesRootM"),
        data.practice("seriesRootShareOfFlange"));
  }

  /** Whether a body of that size makes sense here: bore, nose and insertion fit. */
  boolean suits(SeriesSize size) {
    boolean nose = size.noseDiameterM() <= maxNoseDiameterM + 1e-9;
    if (size.isArbor()) {
      return nose && projectionM <= longestArborM + 1e-9 && size.minInsertionM() <= deepestM();
    }
    boolean bore =
        size.boreM() >= minBoreM - 1e-9
            && (size.collet() != null || size.boreM() <= maxBoreM + 1e-9)
            && nose;
    boolean unit = !size.inch() || spindleInterface.id().startsWith("CAT");
    return bore && unit && size.minInsertionM() <= deepestM();
  }

  /** How deep a bore may go without weakening the spindle end. */
  double deepestM() {
    return projectionM - rootM - rootShareOfFlange * spindleInterface.flangeFrontM();
  }
}
