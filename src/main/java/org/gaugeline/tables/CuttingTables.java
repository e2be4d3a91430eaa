package org.gaugeline.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.gaugeline.reference.AllowedRunout;
import org.gaugeline.reference.MachineClass;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ProcessCapability;
import org.gaugeline.reference.Source;
import org.gaugeline.reference.SpindleInterface;
import org.gaugeline.reference.Stage;
import org.gaugeline.reference.StartingValue;
import org.gaugeline.reference.Substrate;
import org.gaugeline.reference.ToleranceTable;

/** Reads the rows of starting values, allowed runout, capability, machines and tolerances. */
final class CuttingTables {
  static final List<String> STARTING =
      List.of(
          "machinability",
          "toolClass",
          "substrate",
          "cuttingSpeedMPerMin",
          "minCuttingSpeedMPerMin",
          "maxCuttingSpeedMPerMin",
          "feedPerDiameter",
          "minFeedMm",
          "maxFeedMm",
          "sourceKey");
  static final List<String> RUNOUT =
      List.of(
          "operations",
          "stages",
          "substrates",
          "perFeed",
          "perTolerance",
          "absoluteUm",
          "floorUm",
          "sourceKey");
  static final List<String> CAPABILITY =
      List.of("operation", "bestGrade", "usualGrade", "minRaUm", "maxRaUm", "sourceKey");
  static final List<String> MACHINES =
      List.of(
          "interfaceIds",
          "maxSpindleSpeedRpm",
          "powerKw",
          "torqueNm",
          "changerMaxMassKg",
          "changerMaxLengthMm",
          "changerMaxDiameterMm",
          "changerMaxDiameterNeighboursEmptyMm",
          "changerMaxMomentNm",
          "sourceKey");
  static final List<String> TOLERANCES =
      List.of(
          "upperLimitMm",
          "it3Um",
          "it4Um",
          "it5Um",
          "it6Um",
          "it7Um",
          "it8Um",
          "it9Um",
          "it10Um",
          "it11Um",
          "it12Um",
          "sourceKey");

  private CuttingTables() {}

  static StartingValue startingValue(Row row, Map<String, Source> sources) {
    return new StartingValue(
        row.text("machinability"),
        row.word("toolClass", StartingValue.ToolClass.values()),
        row.word("substrate", Substrate.values()),
        row.positiveSi("cuttingSpeedMPerMin"),
        row.positiveSi("minCuttingSpeedMPerMin"),
        row.positiveSi("maxCuttingSpeedMPerMin"),
        row.positiveSi("feedPerDiameter"),
        row.positiveSi("minFeedMm"),
        row.positiveSi("maxFeedMm"),
        row.source(sources));
  }

  static AllowedRunout allowedRunout(Row row, Map<String, Source> sources) {
    return new AllowedRunout(
        row.words("operations", OperationKind.values()),
        row.words("stages", Stage.values()),
        row.words("substrates", Substrate.values()),
        row.si("perFeed"),
        row.si("perTolerance"),
        row.si("absoluteUm"),
        row.positiveSi("floorUm"),
        row.source(sources));
  }

  static ProcessCapability capability(Row row, Map<String, Source> sources) {
    return new ProcessCapability(
        row.word("operation", OperationKind.values()),
        row.integer("bestGrade"),
        row.integer("usualGrade"),
        row.positiveSi("minRaUm"),
        row.positiveSi("maxRaUm"),
        row.source(sources));
  }

  static MachineClass machineClass(
      Row row, Map<String, SpindleInterface> interfaces, Map<String, Source> sources) {
    for (String id : row.list("interfaceIds")) {
      if (!interfaces.containsKey(id)) {
        throw row.fault("interfaceIds: '" + id + "' is not known");
      }
    }
    return new MachineClass(
        row.list("interfaceIds"),
        row.positiveSi("maxSpindleSpeedRpm"),
        row.positiveSi("powerKw"),
        row.positiveSi("torqueNm"),
        row.positiveSi("changerMaxMassKg"),
        row.positiveSi("changerMaxLengthMm"),
        row.positiveSi("changerMaxDiameterMm"),
        row.positiveSi("changerMaxDiameterNeighboursEmptyMm"),
        row.positiveSi("changerMaxMomentNm"),
        row.source(sources));
  }

  static ToleranceTable tolerances(List<Row> rows, Map<String, Source> sources) {
    double[] limits = new double[rows.size()];
    double[][] bands = new double[rows.size()][];
    List<String> keys = new ArrayList<>();
    for (int step = 0; step < limits.length; step++) {
      Row row = rows.get(step);
      keys.add(row.source(sources));
      limits[step] = row.positiveSi("upperLimitMm");
      if (step > 0 && limits[step] <= limits[step - 1]) {
        throw row.fault("upperLimitMm must ascend, was '" + row.text("upperLimitMm") + "'");
      }
      bands[step] = new double[10];
      for (int grade = 3; grade <= 12; grade++) {
        bands[step][grade - 3] = row.positiveSi("it" + grade + "Um");
      }
    }
    return new ToleranceTable(limits, bands, keys.get(0));
  }
}
