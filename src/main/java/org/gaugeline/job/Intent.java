package org.gaugeline.job;

import java.util.List;
import org.gaugeline.quantity.TextUnits;
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

/**
 * What was asked, as far as it was said, in SI. Absent members are null; {@link Completion} fills
 * them. Quantities are checked for range by the edge before they come here.
 */
public record Intent(
    @Nullable String label,
    TextUnits textUnits,
    Workpiece workpiece,
    Operation operation,
    Feature feature,
    Tool tool,
    Machine machine,
    Shop shop,
    Preferences preferences) {

  /** The same with another cut. */
  public Intent with(Operation other) {
    return new Intent(
        label, textUnits, workpiece, other, feature, tool, machine, shop, preferences);
  }

  /** The material, by name or by the caller's own cutting constants. */
  public record Workpiece(
      String material,
      @Nullable Double hardnessHb,
      @Nullable Double kc11Pa,
      @Nullable Double mc,
      @Nullable IsoGroup isoGroup,
      @Nullable Double complianceMPerN,
      @Nullable Double ktPa,
      @Nullable Double krRatio) {}

  /** The cut. */
  public record Operation(
      OperationKind kind,
      @Nullable Stage stage,
      @Nullable Double axialDepthM,
      @Nullable Double radialDepthM,
      @Nullable Double cuttingSpeedMPerS,
      @Nullable Double spindleSpeedRadPerS,
      @Nullable Double feedPerToothM,
      @Nullable Double feedPerRevM,
      @Nullable Double preDrilledDiameterM,
      @Nullable Coolant coolant,
      @Nullable MillingDirection direction,
      @Nullable TappingMode tapping,
      @Nullable HoleEnd hole,
      @Nullable Double minutesPerPart,
      @Nullable Double partsPerYear,
      @Nullable Double rampAngleRad) {

    /** The same with another axial depth. */
    public Operation withAxialDepthM(double depthM) {
      return changed(depthM, radialDepthM, cuttingSpeedMPerS, spindleSpeedRadPerS, feedPerToothM);
    }

    /** The same with another radial depth. */
    public Operation withRadialDepthM(double depthM) {
      return changed(axialDepthM, depthM, cuttingSpeedMPerS, spindleSpeedRadPerS, feedPerToothM);
    }

    /** The same with another spindle speed, said as before: by cutting speed or by itself. */
    public Operation withCuttingSpeedMPerS(double speedMPerS) {
      return changed(axialDepthM, radialDepthM, speedMPerS, null, feedPerToothM);
    }

    /** The same with another spindle speed. */
    public Operation withSpindleSpeedRadPerS(double speedRadPerS) {
      return changed(axialDepthM, radialDepthM, null, speedRadPerS, feedPerToothM);
    }

    /** The same with another feed per tooth. */
    public Operation withFeedPerToothM(double feedM) {
      return changed(axialDepthM, radialDepthM, cuttingSpeedMPerS, spindleSpeedRadPerS, feedM);
    }

    /** The same with another feed per revolution. */
    public Operation withFeedPerRevM(double feedM) {
      return new Operation(
          kind,
          stage,
          axialDepthM,
          radialDepthM,
          cuttingSpeedMPerS,
          spindleSpeedRadPerS,
          null,
          feedM,
          preDrilledDiameterM,
          coolant,
          direction,
          tapping,
          hole,
          minutesPerPart,
          partsPerYear,
          rampAngleRad);
    }

    private Operation changed(
        @Nullable Double axialM,
        @Nullable Double radialM,
        @Nullable Double cuttingMPerS,
        @Nullable Double spindleRadPerS,
        @Nullable Double feedM) {
      return new Operation(
          kind,
          stage,
          axialM,
          radialM,
          cuttingMPerS,
          spindleRadPerS,
          feedM,
          feedM == null ? feedPerRevM : null,
          preDrilledDiameterM,
          coolant,
          direction,
          tapping,
          hole,
          minutesPerPart,
          partsPerYear,
          rampAngleRad);
    }
  }

  /** What the tool reaches into and how exact the result must be. */
  public record Feature(
      @Nullable Double depthM,
      @Nullable Double wallDraftRad,
      @Nullable Double wallClearanceM,
      @Nullable Double nominalSizeM,
      @Nullable Integer toleranceGrade,
      @Nullable Double toleranceBandM,
      @Nullable Double raM,
      @Nullable Double tiltRad,
      @Nullable Double pocketWidthM,
      List<Obstruction> obstructions) {}

  /** A step, clamp or fixture beside the tool. */
  public record Obstruction(double heightM, double distanceM) {}

  /** The cutting tool. */
  public record Tool(
      ToolKind kind,
      double diameterM,
      @Nullable Integer teeth,
      @Nullable Double helixRad,
      @Nullable Hand hand,
      @Nullable Hand helixHand,
      @Nullable Double cornerRadiusM,
      @Nullable Double fluteLengthM,
      @Nullable Double neckDiameterM,
      @Nullable Double neckLengthM,
      @Nullable Double overallLengthM,
      @Nullable Substrate substrate,
      @Nullable Double shankDiameterM,
      @Nullable ShankForm shankForm,
      @Nullable String shankTolerance,
      @Nullable Double pitchM,
      @Nullable TapForm tapForm,
      @Nullable Boolean throughCoolant,
      @Nullable Boolean exchangeableHead,
      @Nullable Double leadAngleRad,
      @Nullable Double pointAngleRad,
      @Nullable Double maxSpindleSpeedRadPerS,
      @Nullable Double price,
      @Nullable Double lifeMinutes,
      @Nullable Double cutterBodyLengthM,
      @Nullable Double massKg) {}

  /** The machine tool. */
  public record Machine(
      String interfaceId,
      @Nullable Boolean faceContact,
      @Nullable Double maxSpindleSpeedRadPerS,
      @Nullable Double powerW,
      @Nullable Double torqueNm,
      List<CurvePoint> torqueCurve,
      @Nullable Double clampingForceN,
      @Nullable Integer axes,
      @Nullable Boolean throughCoolant,
      @Nullable Double coolantPressurePa,
      @Nullable Double changerMaxMassKg,
      @Nullable Double changerMaxLengthM,
      @Nullable Double changerMaxDiameterM,
      @Nullable Double changerMaxDiameterNeighboursEmptyM,
      @Nullable Double changerMaxMomentNm) {}

  /** A point of the continuous torque curve. */
  public record CurvePoint(double spindleSpeedRadPerS, double torqueNm) {}

  /** What the shop owns and can operate. */
  public record Shop(
      @Nullable Boolean shrinkUnit,
      @Nullable Boolean balancer,
      @Nullable Boolean torqueWrench,
      @Nullable Boolean presetter,
      List<String> excludedFamilies,
      List<StockEntry> stock,
      @Nullable Boolean stockOnly,
      @Nullable Double hourlyRate,
      @Nullable String currency,
      @Nullable ShankCondition shankCondition,
      @Nullable ColletCondition colletCondition) {}

  /** What matters to the asker. */
  public record Preferences(
      @Nullable RankBy rankBy,
      @Nullable Double accuracyWeight,
      @Nullable Double gripWeight,
      @Nullable Double reachWeight,
      @Nullable Double speedWeight,
      @Nullable Double confidence,
      @Nullable Integer limit,
      @Nullable Boolean stability) {
    /** Whether the stable depth is asked for in so many words. */
    public boolean asksStability() {
      return Boolean.TRUE.equals(stability);
    }
  }
}
