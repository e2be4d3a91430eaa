package org.gaugeline.http;

import static org.gaugeline.quantity.UnitSuffix.BAR;
import static org.gaugeline.quantity.UnitSuffix.DEG;
import static org.gaugeline.quantity.UnitSuffix.KN;
import static org.gaugeline.quantity.UnitSuffix.KW;
import static org.gaugeline.quantity.UnitSuffix.MM;
import static org.gaugeline.quantity.UnitSuffix.M_PER_MIN;
import static org.gaugeline.quantity.UnitSuffix.N_PER_MM2;
import static org.gaugeline.quantity.UnitSuffix.RPM;
import static org.gaugeline.quantity.UnitSuffix.UM;
import static org.gaugeline.quantity.UnitSuffix.UM_PER_N;

import java.util.List;
import java.util.Objects;
import org.gaugeline.http.wire.WireIntent;
import org.gaugeline.job.Intent;
import org.gaugeline.job.RankBy;
import org.gaugeline.quantity.TextUnits;
import org.gaugeline.quantity.UnitSuffix;
import org.gaugeline.reference.ColletCondition;
import org.gaugeline.reference.Coolant;
import org.gaugeline.reference.Hand;
import org.gaugeline.reference.HoleEnd;
import org.gaugeline.reference.IsoGroup;
import org.gaugeline.reference.MillingDirection;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ShankCondition;
import org.gaugeline.reference.ShankForm;
import org.gaugeline.reference.Stage;
import org.gaugeline.reference.Substrate;
import org.gaugeline.reference.TapForm;
import org.gaugeline.reference.TappingMode;
import org.gaugeline.reference.ToolKind;
import org.jspecify.annotations.Nullable;

/** A checked body into an intent in SI. The unit of every member stands in its name. */
final class IntentReader {
  private static final WordIndex<IsoGroup> ISO_GROUPS = WordIndex.of(IsoGroup.values());
  private static final WordIndex<OperationKind> OPERATIONS = WordIndex.of(OperationKind.values());
  private static final WordIndex<Stage> STAGES = WordIndex.of(Stage.values());
  private static final WordIndex<Coolant> COOLANTS = WordIndex.of(Coolant.values());
  private static final WordIndex<MillingDirection> DIRECTIONS =
      WordIndex.of(MillingDirection.values());
  private static final WordIndex<TappingMode> TAPPING_MODES = WordIndex.of(TappingMode.values());
  private static final WordIndex<HoleEnd> HOLE_ENDS = WordIndex.of(HoleEnd.values());
  private static final WordIndex<TapForm> TAP_FORMS = WordIndex.of(TapForm.values());
  private static final WordIndex<ToolKind> TOOLS = WordIndex.of(ToolKind.values());
  private static final WordIndex<Hand> HANDS = WordIndex.of(Hand.values());
  private static final WordIndex<Substrate> SUBSTRATES = WordIndex.of(Substrate.values());
  private static final WordIndex<ShankForm> SHANK_FORMS = WordIndex.of(ShankForm.values());
  private static final WordIndex<ShankCondition> SHANK_CONDITIONS =
      WordIndex.of(ShankCondition.values());
  private static final WordIndex<ColletCondition> COLLET_CONDITIONS =
      WordIndex.of(ColletCondition.values());
  private static final WordIndex<RankBy> RANK_BY = WordIndex.of(RankBy.values());

  private IntentReader() {}

  /** The body must have passed the schema's check: required members are there. */
  static Intent read(WireIntent wire) {
    return new Intent(
        wire.label(),
        Objects.requireNonNullElse(TextUnits.find(wire.textUnits()), TextUnits.METRIC),
        workpiece(Objects.requireNonNull(wire.workpiece())),
        operation(Objects.requireNonNull(wire.operation())),
        feature(orElse(wire.feature(), WireIntent.Feature.NONE)),
        tool(Objects.requireNonNull(wire.tool())),
        machine(Objects.requireNonNull(wire.machine())),
        shop(orElse(wire.shop(), WireIntent.Shop.NONE)),
        preferences(orElse(wire.preferences(), WireIntent.Preferences.NONE)));
  }

  private static Intent.Workpiece workpiece(WireIntent.Workpiece w) {
    return new Intent.Workpiece(
        Objects.requireNonNull(w.material()),
        w.hardnessHb(),
        si(w.kc11NPerMm2(), N_PER_MM2),
        w.mc(),
        ISO_GROUPS.find(w.isoGroup()),
        si(w.complianceUmPerN(), UM_PER_N),
        si(w.ktNPerMm2(), N_PER_MM2),
        w.krRatio());
  }

  private static Intent.Operation operation(WireIntent.Operation o) {
    return new Intent.Operation(
        OPERATIONS.get(Objects.requireNonNull(o.kind())),
        STAGES.find(o.stage()),
        si(o.axialDepthMm(), MM),
        si(o.radialDepthMm(), MM),
        si(o.cuttingSpeedMPerMin(), M_PER_MIN),
        si(o.spindleSpeedRpm(), RPM),
        si(o.feedPerToothMm(), MM),
        si(o.feedPerRevMm(), MM),
        si(o.preDrilledDiameterMm(), MM),
        COOLANTS.find(o.coolant()),
        DIRECTIONS.find(o.direction()),
        TAPPING_MODES.find(o.tapping()),
        HOLE_ENDS.find(o.hole()),
        o.minutesPerPart(),
        o.partsPerYear(),
        si(o.rampAngleDeg(), DEG));
  }

  private static Intent.Feature feature(WireIntent.Feature f) {
    String grade = f.toleranceGrade();
    return new Intent.Feature(
        si(f.depthMm(), MM),
        si(f.wallDraftDeg(), DEG),
        si(f.wallClearanceMm(), MM),
        si(f.nominalSizeMm(), MM),
        grade == null ? null : Integer.valueOf(grade.substring("IT".length())),
        si(f.toleranceBandUm(), UM),
        si(f.raUm(), UM),
        si(f.tiltDeg(), DEG),
        si(f.pocketWidthMm(), MM),
        orEmpty(f.obstructions()).stream().map(IntentReader::obstruction).toList());
  }

  private static Intent.Obstruction obstruction(WireIntent.Obstruction o) {
    return new Intent.Obstruction(given(o.heightMm(), MM), given(o.distanceMm(), MM));
  }

  private static Intent.Tool tool(WireIntent.Tool t) {
    WireIntent.Shank shank = orElse(t.shank(), WireIntent.Shank.NONE);
    return new Intent.Tool(
        TOOLS.get(Objects.requireNonNull(t.kind())),
        given(t.diameterMm(), MM),
        t.teeth(),
        si(t.helixDeg(), DEG),
        HANDS.find(t.hand()),
        HANDS.find(t.helixHand()),
        si(t.cornerRadiusMm(), MM),
        si(t.fluteLengthMm(), MM),
        si(t.neckDiameterMm(), MM),
        si(t.neckLengthMm(), MM),
        si(t.overallLengthMm(), MM),
        SUBSTRATES.find(t.substrate()),
        si(shank.diameterMm(), MM),
        SHANK_FORMS.find(shank.form()),
        shank.tolerance(),
        si(t.pitchMm(), MM),
        TAP_FORMS.find(t.tapForm()),
        t.throughCoolant(),
        t.exchangeableHead(),
        si(t.leadAngleDeg(), DEG),
        si(t.pointAngleDeg(), DEG),
        si(t.maxSpindleSpeedRpm(), RPM),
        t.price(),
        t.lifeMinutes(),
        si(t.cutterBodyLengthMm(), MM),
        t.massKg());
  }

  private static Intent.Machine machine(WireIntent.Machine m) {
    WireIntent.ToolChanger changer = orElse(m.toolChanger(), WireIntent.ToolChanger.NONE);
    return new Intent.Machine(
        Objects.requireNonNull(m.interface_()),
        m.faceContact(),
        si(m.maxSpindleSpeedRpm(), RPM),
        si(m.powerKw(), KW),
        m.torqueNm(),
        orEmpty(m.torqueCurve()).stream().map(IntentReader::curvePoint).toList(),
        si(m.clampingForceKn(), KN),
        m.axes(),
        m.throughCoolant(),
        si(m.coolantPressureBar(), BAR),
        changer.maxMassKg(),
        si(changer.maxLengthMm(), MM),
        si(changer.maxDiameterMm(), MM),
        si(changer.maxDiameterNeighboursEmptyMm(), MM),
        changer.maxMomentNm());
  }

  private static Intent.CurvePoint curvePoint(WireIntent.TorqueCurvePoint p) {
    return new Intent.CurvePoint(
        given(p.spindleSpeedRpm(), RPM), given(p.torqueNm(), UnitSuffix.NM));
  }

  private static Intent.Shop shop(WireIntent.Shop s) {
    return new Intent.Shop(
        s.shrinkUnit(),
        s.balancer(),
        s.torqueWrench(),
        s.presetter(),
        orEmpty(s.excludedFamilies()),
        StockReader.read(orEmpty(s.stock())),
        s.stockOnly(),
        s.hourlyRate(),
        s.currency(),
        SHANK_CONDITIONS.find(s.shankCondition()),
        COLLET_CONDITIONS.find(s.colletCondition()));
  }

  private static Intent.Preferences preferences(WireIntent.Preferences p) {
    WireIntent.Weights weights = orElse(p.weights(), WireIntent.Weights.NONE);
    return new Intent.Preferences(
        RANK_BY.find(p.rankBy()),
        weights.accuracy(),
        weights.grip(),
        weights.reach(),
        weights.speed(),
        p.confidence(),
        p.limit(),
        p.stability());
  }

  /** Adding zero turns −0 into 0. */
  static @Nullable Double si(@Nullable Double value, UnitSuffix unit) {
    return value == null ? null : (Double) (unit.toSi(value) + 0.0);
  }

  static double given(@Nullable Double value, UnitSuffix unit) {
    return unit.toSi(Objects.requireNonNull(value)) + 0.0;
  }

  static <T> List<T> orEmpty(@Nullable List<T> list) {
    return list == null ? List.of() : list;
  }

  static <T> T orElse(@Nullable T value, T absent) {
    return value == null ? absent : value;
  }
}
