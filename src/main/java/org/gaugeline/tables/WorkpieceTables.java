package org.gaugeline.tables;

import java.util.List;
import java.util.Map;
import org.gaugeline.reference.Friction;
import org.gaugeline.reference.IsoGroup;
import org.gaugeline.reference.Material;
import org.gaugeline.reference.Practice;
import org.gaugeline.reference.Solid;
import org.gaugeline.reference.Source;
import org.gaugeline.reference.SourceKind;
import org.gaugeline.reference.Spread;

/** Reads the rows of sources, materials, solids, frictions and single values. */
final class WorkpieceTables {
  static final List<String> SOURCES = List.of("key", "kind", "citation", "licence", "note");
  static final List<String> MATERIALS =
      List.of(
          "id",
          "name",
          "aliases",
          "isoGroup",
          "kc11P05NPerMm2",
          "kc11NPerMm2",
          "kc11P95NPerMm2",
          "mc",
          "hardnessHb",
          "minHardnessHb",
          "maxHardnessHb",
          "hardnessExponent",
          "steelClass",
          "radialRatioP05",
          "radialRatio",
          "radialRatioP95",
          "drillConstant",
          "machinability",
          "sourceKey");
  static final List<String> SOLIDS =
      List.of(
          "id",
          "youngP05Gpa",
          "youngGpa",
          "youngP95Gpa",
          "poisson",
          "densityKgPerM3",
          "thermalExpansionPerK",
          "sourceKey");
  static final List<String> FRICTIONS =
      List.of("id", "coefficientP05", "coefficient", "coefficientP95", "sourceKey");
  static final List<String> PRACTICE =
      List.of("id", "valueP05", "value", "valueP95", "note", "sourceKey");

  private WorkpieceTables() {}

  static Source source(Row row) {
    String kind = row.text("kind");
    for (SourceKind known : SourceKind.values()) {
      if (known.id().equals(kind)) {
        return new Source(
            row.text("key"),
            known,
            row.text("citation"),
            row.text("licence"),
            row.optionalText("note"));
      }
    }
    throw row.fault("kind '" + kind + "' is not known");
  }

  static Material material(Row row, PowerConstants power, Map<String, Source> sources) {
    double hardness = row.positiveSi("hardnessHb");
    double softest = row.positiveSi("minHardnessHb");
    double hardest = row.positiveSi("maxHardnessHb");
    if (!(softest <= hardness && hardness <= hardest)) {
      throw row.fault("hardness must be min ≤ reference ≤ max, was " + hardness);
    }
    double mc = row.si("mc");
    if (!(mc >= 0 && mc <= 0.5)) {
      throw row.fault("mc must be 0 … 0.5, was " + mc);
    }
    return new Material(
        row.text("id"),
        row.text("name"),
        row.list("aliases"),
        row.word("isoGroup", IsoGroup.values()),
        row.spread("kc11", "NPerMm2"),
        mc,
        hardness,
        softest,
        hardest,
        row.si("hardnessExponent"),
        power.powerPa(row, hardness),
        row.spread("radialRatio", ""),
        row.optionalSi("drillConstant"),
        row.text("machinability"),
        row.source(sources));
  }

  static Solid solid(Row row, Map<String, Source> sources) {
    return new Solid(
        row.text("id"),
        row.spread("young", "Gpa"),
        row.positiveSi("poisson"),
        row.positiveSi("densityKgPerM3"),
        row.positiveSi("thermalExpansionPerK"),
        row.source(sources));
  }

  static Friction friction(Row row, Map<String, Source> sources) {
    return new Friction(row.text("id"), row.spread("coefficient", ""), row.source(sources));
  }

  /** The value stays in the unit that its id ends in, which is SI throughout. */
  static Practice practice(Row row, Map<String, Source> sources) {
    Spread value = new Spread(row.number("valueP05"), row.number("value"), row.number("valueP95"));
    return new Practice(row.text("id"), value, row.text("note"), row.source(sources));
  }
}
