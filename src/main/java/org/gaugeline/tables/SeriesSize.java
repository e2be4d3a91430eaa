package org.gaugeline.tables;

import java.util.List;
import java.util.Map;
import org.gaugeline.reference.ClampingFamily;
import org.gaugeline.reference.ColletSize;
import org.gaugeline.reference.GripModel;
import org.gaugeline.reference.ReferenceData;
import org.jspecify.annotations.Nullable;

/**
 * The tool end of a generic body.
 *
 * @param family how it holds the tool
 * @param form {@code standard} or {@code slim}
 * @param inch whether it belongs to the inch sizes
 * @param size the size as catalogue ids write it
 * @param collet the collet that it takes; absent for fixed bores
 */
record SeriesSize(
    ClampingFamily family,
    String form,
    boolean inch,
    String size,
    double boreM,
    @Nullable ColletSize collet,
    double noseDiameterM,
    double noseHalfAngleRad,
    double noseLengthM,
    double bodyDiameterM,
    double minInsertionM,
    double maxInsertionM,
    double price,
    String sourceKey) {
  static final List<String> COLUMNS =
      List.of(
          "family",
          "form",
          "unitSystem",
          "size",
          "boreMm",
          "colletSize",
          "noseDiameterMm",
          "noseHalfAngleDeg",
          "noseLengthMm",
          "bodyDiameterMm",
          "minInsertionMm",
          "maxInsertionMm",
          "priceEur",
          "priceSourceKey",
          "sourceKey");

  static SeriesSize read(Row row, ReferenceData data) {
    row.source("priceSourceKey", data.sources());
    Map<String, ColletSize> collets = data.colletSizes();
    return new SeriesSize(
        row.refer("family", data.families()),
        oneOf(row, "form", "standard", "slim"),
        oneOf(row, "unitSystem", "metric", "inch").equals("inch"),
        row.text("size"),
        row.positiveSi("boreMm"),
        row.has("colletSize") ? row.refer("colletSize", collets) : null,
        row.positiveSi("noseDiameterMm"),
        row.si("noseHalfAngleDeg"),
        row.positiveSi("noseLengthMm"),
        row.positiveSi("bodyDiameterMm"),
        row.positiveSi("minInsertionMm"),
        row.positiveSi("maxInsertionMm"),
        row.si("priceEur"),
        row.source(data.sources()));
  }

  /** Whether it carries cutters with a bore: its own bore is then that of the cutter, a pilot. */
  boolean isArbor() {
    return family.gripModel() == GripModel.ARBOR || family.gripModel() == GripModel.DISC_ARBOR;
  }

  /** Family, form and size as catalogue ids write them. */
  String word() {
    return family.id() + (form.equals("standard") ? "-" : "-" + form + "-") + size;
  }

  private static String oneOf(Row row, String column, String first, String second) {
    String cell = row.text(column);
    if (cell.equals(first) || cell.equals(second)) {
      return cell;
    }
    throw row.fault(column + " '" + cell + "' is not one of " + first + ", " + second);
  }
}
