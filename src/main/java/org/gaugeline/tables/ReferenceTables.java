package org.gaugeline.tables;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.gaugeline.reference.Material;
import org.gaugeline.reference.MaterialIndex;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ProcessCapability;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.Source;
import org.gaugeline.reference.SpindleInterface;

/** Loads all reference tables, once. */
public final class ReferenceTables {
  /** Every table file, in the order in which the version is computed over them. */
  static final List<String> FILES =
      List.of(
          "sources.csv",
          "handbook-power.csv",
          "materials.csv",
          "spindle-interfaces.csv",
          "clamping-families.csv",
          "er-collets.csv",
          "shanks.csv",
          "tap-sizes.csv",
          "arbors.csv",
          "solids.csv",
          "frictions.csv",
          "starting-values.csv",
          "allowed-runout.csv",
          "process-capability.csv",
          "machine-classes.csv",
          "iso286-it.csv",
          "practice.csv",
          "holder-series.csv",
          "projections.csv",
          "extensions.csv",
          "sleeves.csv",
          "adapters.csv",
          SymbolTables.FILE);

  private static final int VERSION_DIGITS = 12;

  private final TableFolder folder;
  private final Map<String, Source> sources;

  private ReferenceTables(TableFolder folder) {
    this.folder = folder;
    this.sources =
        ordered(
            TableReader.index(
                rows("sources.csv", WorkpieceTables.SOURCES),
                WorkpieceTables::source,
                Source::key));
  }

  /**
   * The tables packaged with the service.
   *
   * @throws TableException naming file and line of the first fault
   */
  public static ReferenceData load() {
    return load(TableFolder.packaged());
  }

  /** The tables of another folder, such as a corrected set. */
  public static ReferenceData load(TableFolder folder) {
    return new ReferenceTables(folder).read();
  }

  private ReferenceData read() {
    Map<String, SpindleInterface> interfaces =
        index(
            "spindle-interfaces.csv",
            HoldingTables.INTERFACES,
            HoldingTables::spindleInterface,
            SpindleInterface::id);
    return new ReferenceData(
        version(),
        sources,
        materials(),
        interfaces,
        index("clamping-families.csv", HoldingTables.FAMILIES, HoldingTables::family, f -> f.id()),
        index("er-collets.csv", HoldingTables.COLLETS, HoldingTables::collet, c -> c.id()),
        List.copyOf(
            index("shanks.csv", HoldingTables.SHANKS, HoldingTables::shank, s -> s.id()).values()),
        List.copyOf(
            index("tap-sizes.csv", HoldingTables.TAPS, HoldingTables::tap, t -> t.id()).values()),
        List.copyOf(
            index("arbors.csv", HoldingTables.ARBORS, HoldingTables::arbor, a -> a.id()).values()),
        index("solids.csv", WorkpieceTables.SOLIDS, WorkpieceTables::solid, s -> s.id()),
        index("frictions.csv", WorkpieceTables.FRICTIONS, WorkpieceTables::friction, f -> f.id()),
        list("starting-values.csv", CuttingTables.STARTING, CuttingTables::startingValue),
        list("allowed-runout.csv", CuttingTables.RUNOUT, CuttingTables::allowedRunout),
        capabilities(),
        list(
            "machine-classes.csv",
            CuttingTables.MACHINES,
            (row, keys) -> CuttingTables.machineClass(row, interfaces, keys)),
        CuttingTables.tolerances(rows("iso286-it.csv", CuttingTables.TOLERANCES), sources),
        index("practice.csv", WorkpieceTables.PRACTICE, WorkpieceTables::practice, p -> p.id()));
  }

  private Map<String, Material> materials() {
    PowerConstants power =
        new PowerConstants(rows("handbook-power.csv", PowerConstants.COLUMNS), sources);
    Map<String, Material> materials =
        index(
            "materials.csv",
            WorkpieceTables.MATERIALS,
            (row, keys) -> WorkpieceTables.material(row, power, keys),
            Material::id);
    try {
      MaterialIndex.of(materials.values());
    } catch (IllegalArgumentException e) {
      throw new TableException("materials.csv", 0, String.valueOf(e.getMessage()), e);
    }
    return materials;
  }

  private Map<OperationKind, ProcessCapability> capabilities() {
    Map<OperationKind, ProcessCapability> map = new EnumMap<>(OperationKind.class);
    index(
            "process-capability.csv",
            CuttingTables.CAPABILITY,
            CuttingTables::capability,
            c -> c.operation().id())
        .values()
        .forEach(capability -> map.put(capability.operation(), capability));
    for (OperationKind kind : OperationKind.values()) {
      if (!map.containsKey(kind)) {
        throw new TableException("process-capability.csv", 0, "lacks " + kind.id());
      }
    }
    return Collections.unmodifiableMap(map);
  }

  private <V> Map<String, V> index(
      String file,
      List<String> columns,
      BiFunction<Row, Map<String, Source>, V> read,
      Function<V, String> idOf) {
    return ordered(TableReader.index(rows(file, columns), row -> read.apply(row, sources), idOf));
  }

  private <V> List<V> list(
      String file, List<String> columns, BiFunction<Row, Map<String, Source>, V> read) {
    List<V> values = new ArrayList<>();
    for (Row row : rows(file, columns)) {
      values.add(TableReader.guarded(row, r -> read.apply(r, sources)));
    }
    return List.copyOf(values);
  }

  private List<Row> rows(String file, List<String> columns) {
    return TableReader.table(file, folder.read(file), columns);
  }

  private static <V> Map<String, V> ordered(Map<String, V> map) {
    return Collections.unmodifiableMap(map);
  }

  private String version() {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      for (String file : FILES) {
        digest.update(folder.read(file).getBytes(StandardCharsets.UTF_8));
      }
      return HexFormat.of().formatHex(digest.digest()).substring(0, VERSION_DIGITS);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
