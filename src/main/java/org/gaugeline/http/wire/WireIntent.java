package org.gaugeline.http.wire;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The body of a recommendation request. Component names are the members' names; a trailing
 * underscore keeps them apart from Java's own words.
 */
public record WireIntent(
    @Nullable String label,
    @Nullable String textUnits,
    @Nullable Workpiece workpiece,
    @Nullable Operation operation,
    @Nullable Feature feature,
    @Nullable Tool tool,
    @Nullable Machine machine,
    @Nullable Shop shop,
    @Nullable Preferences preferences) {

  /** The material. */
  public record Workpiece(
      @Nullable String material,
      @Nullable Double hardnessHb,
      @Nullable Double kc11NPerMm2,
      @Nullable Double mc,
      @Nullable String isoGroup,
      @Nullable Double complianceUmPerN,
      @Nullable Double ktNPerMm2,
      @Nullable Double krRatio) {
    /** Nothing said. */
    public static final Workpiece NONE =
        new Workpiece(null, null, null, null, null, null, null, null);
  }

  /** The cut. */
  public record Operation(
      @Nullable String kind,
      @Nullable String stage,
      @Nullable Double axialDepthMm,
      @Nullable Double radialDepthMm,
      @Nullable Double cuttingSpeedMPerMin,
      @Nullable Double spindleSpeedRpm,
      @Nullable Double feedPerToothMm,
      @Nullable Double feedPerRevMm,
      @Nullable Double preDrilledDiameterMm,
      @Nullable Double rampAngleDeg,
      @Nullable String coolant,
      @Nullable String direction,
      @Nullable String tapping,
      @Nullable String hole,
      @Nullable Double minutesPerPart,
      @Nullable Double partsPerYear) {
    /** Nothing said. */
    public static final Operation NONE =
        new Operation(
            null, null, null, null, null, null, null, null, null, null, null, null, null, null,
            null, null);
  }

  /** What the tool reaches into and how exact the result must be. */
  public record Feature(
      @Nullable Double depthMm,
      @Nullable Double wallDraftDeg,
      @Nullable Double wallClearanceMm,
      @Nullable Double nominalSizeMm,
      @Nullable String toleranceGrade,
      @Nullable Double toleranceBandUm,
      @Nullable Double raUm,
      @Nullable Double tiltDeg,
      @Nullable Double pocketWidthMm,
      @Nullable List<Obstruction> obstructions) {
    /** Nothing said. */
    public static final Feature NONE =
        new Feature(null, null, null, null, null, null, null, null, null, null);
  }

  /** A step, clamp or fixture beside the tool. */
  public record Obstruction(@Nullable Double heightMm, @Nullable Double distanceMm) {}

  /** The cutting tool. */
  public record Tool(
      @Nullable String kind,
      @Nullable Double diameterMm,
      @Nullable Integer teeth,
      @Nullable Double helixDeg,
      @Nullable String hand,
      @Nullable String helixHand,
      @Nullable Double cornerRadiusMm,
      @Nullable Double fluteLengthMm,
      @Nullable Double neckDiameterMm,
      @Nullable Double neckLengthMm,
      @Nullable Double overallLengthMm,
      @Nullable String substrate,
      @Nullable Shank shank,
      @Nullable Double pitchMm,
      @Nullable Double pointAngleDeg,
      @Nullable Double leadAngleDeg,
      @Nullable String tapForm,
      @Nullable Double cutterBodyLengthMm,
      @Nullable Double massKg,
      @Nullable Double maxSpindleSpeedRpm,
      @Nullable Boolean throughCoolant,
      @Nullable Boolean exchangeableHead,
      @Nullable Double price,
      @Nullable Double lifeMinutes) {
    /** Nothing said. */
    public static final Tool NONE =
        new Tool(
            null, null, null, null, null, null, null, null, null, null, null, null, null, null,
            null, null, null, null, null, null, null, null, null, null);
  }

  /** How the tool offers itself to the holder. */
  public record Shank(
      @Nullable Double diameterMm, @Nullable String form, @Nullable String tolerance) {
    /** Nothing said. */
    public static final Shank NONE = new Shank(null, null, null);
  }

  /** The machine tool. */
  public record Machine(
      @Nullable String interface_,
      @Nullable Boolean faceContact,
      @Nullable Double maxSpindleSpeedRpm,
      @Nullable Double powerKw,
      @Nullable Double torqueNm,
      @Nullable List<TorqueCurvePoint> torqueCurve,
      @Nullable Double clampingForceKn,
      @Nullable Integer axes,
      @Nullable Boolean throughCoolant,
      @Nullable Double coolantPressureBar,
      @Nullable ToolChanger toolChanger) {
    /** Nothing said. */
    public static final Machine NONE =
        new Machine(null, null, null, null, null, null, null, null, null, null, null);
  }

  /** A point of the continuous torque curve. */
  public record TorqueCurvePoint(@Nullable Double spindleSpeedRpm, @Nullable Double torqueNm) {}

  /** What the tool changer carries. */
  public record ToolChanger(
      @Nullable Double maxMassKg,
      @Nullable Double maxLengthMm,
      @Nullable Double maxDiameterMm,
      @Nullable Double maxDiameterNeighboursEmptyMm,
      @Nullable Double maxMomentNm) {
    /** Nothing said. */
    public static final ToolChanger NONE = new ToolChanger(null, null, null, null, null);
  }

  /** What the shop owns and can operate. */
  public record Shop(
      @Nullable Boolean shrinkUnit,
      @Nullable Boolean balancer,
      @Nullable Boolean torqueWrench,
      @Nullable Boolean presetter,
      @Nullable List<String> excludedFamilies,
      @Nullable List<StockEntry> stock,
      @Nullable Boolean stockOnly,
      @Nullable Double hourlyRate,
      @Nullable String currency,
      @Nullable String shankCondition,
      @Nullable String colletCondition) {
    /** Nothing said. */
    public static final Shop NONE =
        new Shop(null, null, null, null, null, null, null, null, null, null, null);
  }

  /**
   * Holders that the shop owns: `ref` names one of the catalogue; or the entry describes it with
   * whatever is known of it, `family` at least.
   */
  public record StockEntry(
      @Nullable String ref,
      @Nullable Integer count,
      @Nullable String role,
      @Nullable String family,
      @Nullable String interface_,
      @Nullable Double boreMm,
      @Nullable Double projectionMm,
      @Nullable List<ProfileSection> profile,
      @Nullable String material,
      @Nullable Double massKg,
      @Nullable Boolean faceContact,
      @Nullable Boolean throughCoolant,
      @Nullable Double maxSpindleSpeedRpm,
      @Nullable Double balanceGrade,
      @Nullable Double balanceSpeedRpm,
      @Nullable Double residualUnbalanceGmm,
      @Nullable Double runoutUm,
      @Nullable Double faceRunoutUm,
      @Nullable Double faceDiameterMm,
      @Nullable Double interferenceUm,
      @Nullable Double nutTorqueNm,
      @Nullable Double frictionCoefficient,
      @Nullable Double clampingTorqueNm,
      @Nullable Double axialHoldN,
      @Nullable JointStiffness jointStiffness,
      @Nullable Double dampingRatio,
      @Nullable Damper damper,
      @Nullable Double price) {}

  /** One frustum of a body. */
  public record ProfileSection(
      @Nullable Double lengthMm,
      @Nullable Double diameterMm,
      @Nullable Double endDiameterMm,
      @Nullable Double boreMm) {}

  /** Measured stiffness of the joint to the part nearer the spindle. */
  public record JointStiffness(@Nullable Double radialNPerM, @Nullable Double rotationalNmPerRad) {}

  /** Tuned mass inside a body. */
  public record Damper(
      @Nullable Double massKg, @Nullable Double frequencyHz, @Nullable Double dampingRatio) {}

  /** What matters to the asker. */
  public record Preferences(
      @Nullable String rankBy,
      @Nullable Weights weights,
      @Nullable Double confidence,
      @Nullable Integer limit,
      @Nullable Boolean stability) {
    /** Nothing said. */
    public static final Preferences NONE = new Preferences(null, null, null, null, null);
  }

  /** Exponents of the four criteria in the overall score; only their ratios matter. */
  public record Weights(
      @Nullable Double accuracy,
      @Nullable Double grip,
      @Nullable Double reach,
      @Nullable Double speed) {
    /** Nothing said. */
    public static final Weights NONE = new Weights(null, null, null, null);
  }
}
