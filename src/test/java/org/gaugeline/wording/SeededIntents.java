package org.gaugeline.wording;

import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.gaugeline.job.Intent;
import org.gaugeline.job.StockEntry;
import org.gaugeline.quantity.TextUnits;
import org.gaugeline.reference.ColletCondition;
import org.gaugeline.reference.Coolant;
import org.gaugeline.reference.Hand;
import org.gaugeline.reference.HoleEnd;
import org.gaugeline.reference.Material;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.ShankCondition;
import org.gaugeline.reference.ShankForm;
import org.gaugeline.reference.Stage;
import org.gaugeline.reference.Substrate;
import org.gaugeline.reference.TapForm;
import org.gaugeline.reference.TappingMode;
import org.gaugeline.reference.ToolKind;
import org.jspecify.annotations.Nullable;

/** Intents of every kind from a seed: sensible, rash and sparse ones. */
final class SeededIntents {
  private static final Double[] THREADS_MM = {3.0, 6.0, 10.0, 16.0, 24.0};

  /** A collet head that stands on an adapter of most spindles. */
  private static final String HEAD = "g-psc-c5-er-collet-er32-p100";

  private final SplittableRandom random;
  private final List<Material> materials;
  private final List<String> interfaces;

  SeededIntents(long seed, ReferenceData data) {
    this.random = new SplittableRandom(seed);
    this.materials =
        data.materials().values().stream().sorted(Comparator.comparing(Material::id)).toList();
    this.interfaces = data.interfaces().keySet().stream().sorted().toList();
  }

  Intent next() {
    OperationKind kind = any(OperationKind.values());
    ToolKind tool = toolFor(kind);
    double diameterM = random.nextInt(8) == 0 ? 0.5e-3 : between(2e-3, 32e-3);
    if (kind == OperationKind.TAPPING) {
      diameterM = any(THREADS_MM) * 1e-3;
    }
    if (tool == ToolKind.DISC_CUTTER || tool == ToolKind.SHELL_MILL) {
      diameterM = between(40e-3, 125e-3);
    }
    return new Intent(
        null,
        random.nextBoolean() ? TextUnits.METRIC : TextUnits.INCH,
        workpiece(materials.get(random.nextInt(materials.size()))),
        operation(kind, diameterM),
        feature(kind, diameterM),
        tool(tool, diameterM),
        machine(),
        shop(),
        new Intent.Preferences(null, null, null, null, null, null, null, null));
  }

  private Intent.Workpiece workpiece(Material material) {
    return new Intent.Workpiece(
        material.id(),
        maybe(between(material.minHardnessHb(), material.maxHardnessHb())),
        null,
        null,
        null,
        null,
        null,
        null);
  }

  private ToolKind toolFor(OperationKind kind) {
    return switch (kind) {
      case DRILLING -> ToolKind.DRILL;
      case REAMING -> ToolKind.REAMER;
      case BORING -> ToolKind.BORING_TOOL;
      case TAPPING -> ToolKind.TAP;
      case THREAD_MILLING -> ToolKind.THREAD_MILL;
      case FACE_MILLING -> random.nextBoolean() ? ToolKind.FACE_MILL : ToolKind.SHELL_MILL;
      case SLOTTING -> random.nextBoolean() ? ToolKind.END_MILL : ToolKind.DISC_CUTTER;
      case CHAMFERING -> ToolKind.CHAMFER_MILL;
      case PROFILING -> ToolKind.BALL_END_MILL;
      case SIDE_MILLING, HIGH_EFFICIENCY_MILLING, PLUNGE_MILLING, RAMPING -> ToolKind.END_MILL;
    };
  }

  private Intent.Operation operation(OperationKind kind, double diameterM) {
    return new Intent.Operation(
        kind,
        maybe(any(Stage.values())),
        maybe(diameterM * between(0.05, 3)),
        maybe(diameterM * (kind == OperationKind.BORING ? 0.1 : 1) * between(0.05, 1)),
        maybe(between(0.2, 12)),
        null,
        maybe(diameterM * between(0.001, 0.02)),
        null,
        null,
        maybe(any(Coolant.values())),
        null,
        maybe(any(TappingMode.values())),
        maybe(any(HoleEnd.values())),
        maybe(between(0.5, 10)),
        maybe(between(10, 5000)),
        maybe(between(0.01, 0.3)));
  }

  private Intent.Feature feature(OperationKind kind, double diameterM) {
    return new Intent.Feature(
        maybe(diameterM * between(0.5, 12)),
        maybe(between(0, 0.05)),
        maybe(between(1e-4, 2e-3)),
        maybe(
            kind == OperationKind.THREAD_MILLING
                ? diameterM * between(1.5, 3)
                : between(5e-3, 0.3)),
        maybe(random.nextInt(5, 13)),
        maybe(between(5e-6, 2e-4)),
        maybe(between(1e-7, 6e-6)),
        random.nextInt(6) == 0 ? between(-0.3, 0.8) : null,
        random.nextInt(6) == 0 ? diameterM * between(1, 4) : null,
        random.nextInt(4) == 0
            ? List.of(new Intent.Obstruction(between(0.01, 0.1), between(0.01, 0.04)))
            : List.of());
  }

  private Intent.Tool tool(ToolKind kind, double diameterM) {
    return new Intent.Tool(
        kind,
        diameterM,
        maybe(random.nextInt(1, 8)),
        maybe(between(0, 0.8)),
        null,
        maybe(any(Hand.values())),
        null,
        null,
        null,
        null,
        null,
        maybe(random.nextBoolean() ? Substrate.CARBIDE : Substrate.HSS),
        null,
        maybe(any(ShankForm.values())),
        null,
        null,
        maybe(any(TapForm.values())),
        maybe(random.nextBoolean()),
        null,
        null,
        null,
        maybe(between(300, 4000)),
        maybe(between(5, 100)),
        maybe(between(5, 100)),
        maybe(between(5e-3, 60e-3)),
        maybe(1e4 * diameterM * diameterM * between(0.002, 0.02)));
  }

  private Intent.Machine machine() {
    return new Intent.Machine(
        interfaces.get(random.nextInt(interfaces.size())),
        maybe(random.nextBoolean()),
        maybe(between(300, 4000)),
        maybe(between(500, 30_000)),
        maybe(between(1, 200)),
        List.of(),
        maybe(between(2_000, 40_000)),
        maybe(random.nextInt(3, 6)),
        maybe(random.nextBoolean()),
        null,
        maybe(between(0.3, 12)),
        maybe(between(0.08, 0.4)),
        maybe(between(0.02, 0.1)),
        maybe(between(0.03, 0.15)),
        maybe(between(0.2, 20)));
  }

  private Intent.Shop shop() {
    List<StockEntry> stock =
        switch (random.nextInt(8)) {
          case 0, 1 -> List.of(dryHolder());
          case 2 -> List.of(new StockEntry("/shop/stock/0", HEAD, 1, null));
          default -> List.of();
        };
    return new Intent.Shop(
        maybe(random.nextBoolean()),
        maybe(random.nextBoolean()),
        maybe(random.nextBoolean()),
        maybe(random.nextBoolean()),
        switch (random.nextInt(4)) {
          case 0 -> List.of("er-collet", "shrink-fit");
          case 1 -> List.of("hydraulic", "high-torque-hydraulic", "precision-collet");
          default -> List.of();
        },
        stock,
        random.nextInt(8) == 0,
        maybe(between(40, 120)),
        maybe("USD"),
        maybe(any(ShankCondition.values())),
        maybe(any(ColletCondition.values())));
  }

  /** A hydraulic or collet holder that passes no coolant. */
  private StockEntry dryHolder() {
    StockEntry.InlineHolder holder =
        new StockEntry.InlineHolder(
            random.nextBoolean() ? "er-collet" : "hydraulic",
            null,
            null,
            null,
            List.of(),
            null,
            null,
            random.nextBoolean(),
            false,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            StockEntry.Tested.NOTHING);
    return new StockEntry("/shop/stock/0", null, 1, holder);
  }

  private double between(double least, double most) {
    return random.nextDouble(least, most);
  }

  private <T> T any(T[] of) {
    return of[random.nextInt(of.length)];
  }

  private <T> @Nullable T maybe(T value) {
    return random.nextBoolean() ? value : null;
  }
}
