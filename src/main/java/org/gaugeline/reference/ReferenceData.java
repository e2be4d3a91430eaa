package org.gaugeline.reference;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * All tables, loaded once. Maps keep the order of the table files, so that nothing in an answer
 * depends on hashing.
 *
 * @param version SHA-256 of all table files, shortened: changes with any number in them
 * @param itToleranceM ISO 286 tolerance by grade: upper step limits with the IT3 … IT12 values
 */
public record ReferenceData(
    String version,
    Map<String, Source> sources,
    Map<String, Material> materials,
    Map<String, SpindleInterface> interfaces,
    Map<String, ClampingFamily> families,
    Map<String, ColletSize> colletSizes,
    List<ShankSize> shankSizes,
    List<TapSize> tapSizes,
    List<ArborSize> arborSizes,
    Map<String, Solid> solids,
    Map<String, Friction> frictions,
    List<StartingValue> startingValues,
    List<AllowedRunout> allowedRunouts,
    Map<OperationKind, ProcessCapability> capabilities,
    List<MachineClass> machineClasses,
    ToleranceTable itToleranceM,
    Map<String, Practice> practices) {

  /** Sizes nearer than this are one size. */
  private static final double SAME_SIZE_M = 5e-6;

  /** The median of a practice value; a missing id is a fault of the tables, found at the start. */
  public double practice(String id) {
    return practiceRow(id).value().median();
  }

  /** A practice value with its spread and source. */
  public Practice practiceRow(String id) {
    Practice row = practices.get(id);
    if (row == null) {
      throw new IllegalStateException("no practice value '" + id + "' in the tables");
    }
    return row;
  }

  /**
   * Starting value for a material, tool and cutting material; where the table has no row of that
   * cutting material, the row of the other one.
   */
  public StartingValue startingValue(
      String machinability, StartingValue.ToolClass toolClass, Substrate substrate) {
    StartingValue other = null;
    for (StartingValue row : startingValues) {
      if (row.machinability().equals(machinability) && row.toolClass() == toolClass) {
        if (row.substrate() == substrate) {
          return row;
        }
        other = row;
      }
    }
    if (other == null) {
      throw new IllegalStateException(
          "no starting value for " + machinability + ", " + toolClass.id() + " in the tables");
    }
    return other;
  }

  /** The coarse thread of a nominal diameter and its tap; null where none is tabled. */
  public @Nullable TapSize tapSize(double diameterM) {
    for (TapSize size : tapSizes) {
      if (Math.abs(size.diameterM() - diameterM) < SAME_SIZE_M) {
        return size;
      }
    }
    return null;
  }

  /** The arbor whose bore a shell mill of that diameter usually has. */
  public ArborSize arborOfCutter(double diameterM) {
    for (ArborSize size : arborSizes) {
      if (diameterM <= size.maxCutterM()) {
        return size;
      }
    }
    return arborSizes.get(arborSizes.size() - 1);
  }

  /** The arbor with that pilot for a cutter of that diameter; null where none is tabled. */
  public @Nullable ArborSize arborOfBore(double boreM, double diameterM) {
    ArborSize last = null;
    for (ArborSize size : arborSizes) {
      if (Math.abs(size.boreM() - boreM) < 2e-5) {
        if (diameterM <= size.maxCutterM()) {
          return size;
        }
        last = size;
      }
    }
    return last;
  }

  /** Machinability of a group's first material: the stand-in for a material of the caller's own. */
  public String groupMachinability(IsoGroup group) {
    for (Material material : materials.values()) {
      if (material.isoGroup() == group) {
        return material.machinability();
      }
    }
    throw new IllegalStateException("no material of group " + group + " in the tables");
  }
}
