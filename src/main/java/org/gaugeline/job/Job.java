package org.gaugeline.job;

import java.util.List;
import java.util.Set;
import org.gaugeline.quantity.TextUnits;
import org.gaugeline.reference.ColletCondition;
import org.gaugeline.reference.ContactMode;
import org.gaugeline.reference.Coolant;
import org.gaugeline.reference.Hand;
import org.gaugeline.reference.HoleEnd;
import org.gaugeline.reference.IsoGroup;
import org.gaugeline.reference.Material;
import org.gaugeline.reference.MillingDirection;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ShankCondition;
import org.gaugeline.reference.ShankForm;
import org.gaugeline.reference.Solid;
import org.gaugeline.reference.SpindleInterface;
import org.gaugeline.reference.Spread;
import org.gaugeline.reference.Stage;
import org.gaugeline.reference.Substrate;
import org.gaugeline.reference.TapForm;
import org.gaugeline.reference.TappingMode;
import org.gaugeline.reference.ToolKind;
import org.jspecify.annotations.Nullable;

/**
 * A complete job in SI. NaN stands only where the Javadoc says so; everything else is a number.
 *
 * @param label the caller's name for it; empty where none was given
 * @param assumptions what was filled in
 */
public record Job(
    String label,
    TextUnits textUnits,
    Workpiece workpiece,
    Operation operation,
    Feature feature,
    Tool tool,
    Machine machine,
    Shop shop,
    Preferences preferences,
    List<Assumption> assumptions) {

  /**
   * The material as cut.
   *
   * @param material table row; null where the caller gave constants for a material of its own
   * @param ownConstants whether the caller's constants replaced the table's
   * @param handbookPowerPa energy per volume by the handbook at that hardness; NaN where unknown
   * @param ktPa measured linear tangential cutting coefficient; NaN where not given
   * @param krRatio measured ratio of the radial to the tangential one; NaN where not given
   */
  public record Workpiece(
      String name,
      @Nullable Material material,
      IsoGroup isoGroup,
      double hardnessHb,
      Spread kc11Pa,
      double mc,
      boolean ownConstants,
      double handbookPowerPa,
      Spread radialRatio,
      double ktPa,
      double krRatio,
      double complianceMPerN,
      String sourceKey) {}

  /**
   * The cut. Depths and feeds that the kind of operation does not have are 0.
   *
   * @param feedPerToothM per tooth (per lip for drills); a tap's lands share its pitch
   * @param tapping how spindle and feed are coupled; of use in tapping only
   * @param hole whether the hole has a bottom; of use in tapping only
   * @param rampAngleRad angle at which a ramp goes down; 0 for other operations
   */
  public record Operation(
      OperationKind kind,
      Stage stage,
      double axialDepthM,
      double radialDepthM,
      double spindleSpeedRadPerS,
      double cuttingSpeedMPerS,
      double feedPerToothM,
      double preDrilledDiameterM,
      Coolant coolant,
      MillingDirection direction,
      TappingMode tapping,
      HoleEnd hole,
      double minutesPerPart,
      double partsPerYear,
      double rampAngleRad) {

    /** The same cut at another spindle speed, with the same feed per tooth. */
    public Operation atSpeed(double spindleSpeed, double toolDiameterM) {
      return new Operation(
          kind,
          stage,
          axialDepthM,
          radialDepthM,
          spindleSpeed,
          spindleSpeed * toolDiameterM / 2,
          feedPerToothM,
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

  /**
   * What the tool reaches into.
   *
   * @param raM asked roughness; NaN where none was asked
   * @param toleranceBandM tolerance band, m
   */
  public record Feature(
      double depthM,
      double wallDraftRad,
      double wallClearanceM,
      double nominalSizeM,
      double toleranceBandM,
      double raM,
      double tiltRad,
      double pocketWidthM,
      List<Intent.Obstruction> obstructions) {}

  /**
   * The cutting tool. One with a bore has no shank: its overall length is that of its body, {@code
   * shankDiameterM} its bore.
   *
   * @param shankTolerance tolerance of the shank; empty for a bore of which none was given
   * @param pitchM pitch of the thread NaN for tools without one
   * @param tapForm how a tap makes its thread; of use for taps only
   * @param exchangeableHead whether the cutting head comes off its shank
   * @param maxSpindleSpeedRadPerS marked limit; +∞ where none is known
   * @param price price of a new edge or tool
   * @param massKg mass; NaN where it follows from the tool's shape
   */
  public record Tool(
      ToolKind kind,
      double diameterM,
      int teeth,
      double helixRad,
      Hand hand,
      Hand helixHand,
      double cornerRadiusM,
      double fluteLengthM,
      double neckDiameterM,
      double neckLengthM,
      double overallLengthM,
      Substrate substrate,
      Solid solid,
      double shankDiameterM,
      ShankForm shankForm,
      String shankTolerance,
      double pitchM,
      TapForm tapForm,
      boolean throughCoolant,
      boolean exchangeableHead,
      double leadAngleRad,
      double pointAngleRad,
      double maxSpindleSpeedRadPerS,
      double price,
      double lifeMinutes,
      double massKg) {

    /** Whether it is screwed onto an arbor instead of being held by a shank. */
    public boolean bored() {
      return shankForm == ShankForm.PILOT_BORE;
    }
  }

  /**
   * The machine tool.
   *
   * @param speedGiven whether the caller stated the top speed: it then overrides the guide value of
   *     the interface
   * @param coolantPressurePa of the coolant through the spindle; NaN where not said
   */
  public record Machine(
      SpindleInterface spindle,
      boolean faceContact,
      double maxSpindleSpeedRadPerS,
      boolean speedGiven,
      double powerW,
      double torqueNm,
      List<Intent.CurvePoint> torqueCurve,
      Spread clampingForceN,
      int axes,
      boolean throughCoolant,
      double coolantPressurePa,
      ToolChanger changer) {

    /** Speed that the interface bears for sure; +∞ where the stated top speed overrides it. */
    public double guideSpeedRadPerS() {
      if (speedGiven) {
        return Double.POSITIVE_INFINITY;
      }
      return (faceContact ? spindle.faceRatedSpeedRadPerS() : spindle.nativeRatedSpeedRadPerS())
          .p05();
    }

    /** Surfaces in contact with a holder of that form. */
    public ContactMode contact(boolean holderFaceContact) {
      return spindle.contact(faceContact && holderFaceContact);
    }
  }

  /** What the tool changer carries. */
  public record ToolChanger(
      double maxMassKg,
      double maxLengthM,
      double maxDiameterM,
      double maxDiameterNeighboursEmptyM,
      double maxMomentNm) {}

  /** What the shop owns and can operate. */
  public record Shop(
      boolean shrinkUnit,
      boolean balancer,
      boolean torqueWrench,
      boolean presetter,
      Set<String> excludedFamilies,
      List<StockEntry> stock,
      boolean stockOnly,
      double hourlyRate,
      String currency,
      ShankCondition shankCondition,
      ColletCondition colletCondition) {}

  /**
   * What matters to the asker.
   *
   * @param stability whether the stable depth is judged
   */
  public record Preferences(
      RankBy rankBy,
      double accuracyWeight,
      double gripWeight,
      double reachWeight,
      double speedWeight,
      double confidence,
      int limit,
      boolean stability) {}
}
