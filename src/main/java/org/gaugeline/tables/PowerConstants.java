package org.gaugeline.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The handbook's energy per volume of steels by hardness, interpolated linearly, ends held. */
final class PowerConstants {
  static final List<String> COLUMNS = List.of("steelClass", "hardnessHb", "powerGpa", "sourceKey");

  private final Map<String, List<double[]>> byClass = new TreeMap<>();

  PowerConstants(List<Row> rows, Map<String, ?> sources) {
    for (Row row : rows) {
      row.source(sources);
      List<double[]> points =
          byClass.computeIfAbsent(row.text("steelClass"), c -> new ArrayList<>());
      double hardness = row.positiveSi("hardnessHb");
      if (!points.isEmpty() && points.get(points.size() - 1)[0] >= hardness) {
        throw row.fault("hardnessHb must ascend, was '" + row.text("hardnessHb") + "'");
      }
      points.add(new double[] {hardness, row.positiveSi("powerGpa")});
    }
  }

  /**
   * Energy per volume of the class that a row names, J/m³ = Pa.
   *
   * @return NaN where the row names no class
   */
  double powerPa(Row row, double hardnessHb) {
    if (!row.has("steelClass")) {
      return Double.NaN;
    }
    List<double[]> points = row.refer("steelClass", byClass);
    double[] before = points.get(0);
    for (double[] point : points) {
      if (hardnessHb <= point[0]) {
        double share = point == before ? 0 : (hardnessHb - before[0]) / (point[0] - before[0]);
        return before[1] + share * (point[1] - before[1]);
      }
      before = point;
    }
    return before[1];
  }
}
