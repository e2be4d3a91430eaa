package org.gaugeline.http.wire;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** The body of an assessment request: the intent, and the assembly that somebody chose for it. */
public record WireAssessment(
    @Nullable String label,
    @Nullable String textUnits,
    WireIntent.@Nullable Workpiece workpiece,
    WireIntent.@Nullable Operation operation,
    WireIntent.@Nullable Feature feature,
    WireIntent.@Nullable Tool tool,
    WireIntent.@Nullable Machine machine,
    WireIntent.@Nullable Shop shop,
    WireIntent.@Nullable Preferences preferences,
    @Nullable Assembly assembly) {

  /** The intent alone. */
  public WireIntent intent() {
    return new WireIntent(
        label, textUnits, workpiece, operation, feature, tool, machine, shop, preferences);
  }

  /** The assembly, as far as it is known. */
  public record Assembly(
      @Nullable List<Component> components,
      @Nullable Double stickOutMm,
      @Nullable Measured measured) {
    /** Nothing said. */
    public static final Assembly NONE = new Assembly(null, null, null);
  }

  /** One component: of the catalogue, in the caller's own words, or the former with the latter. */
  public record Component(
      @Nullable String ref,
      @Nullable String role,
      @Nullable String family,
      @Nullable String interface_,
      @Nullable Double boreMm,
      @Nullable Double projectionMm,
      @Nullable List<WireIntent.ProfileSection> profile,
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
      WireIntent.@Nullable JointStiffness jointStiffness,
      @Nullable Double dampingRatio,
      WireIntent.@Nullable Damper damper,
      @Nullable Double price) {

    /** The same in the shape of a stock entry. */
    public WireIntent.StockEntry asEntry() {
      return new WireIntent.StockEntry(
          ref,
          null,
          role,
          family,
          interface_,
          boreMm,
          projectionMm,
          profile,
          material,
          massKg,
          faceContact,
          throughCoolant,
          maxSpindleSpeedRpm,
          balanceGrade,
          balanceSpeedRpm,
          residualUnbalanceGmm,
          runoutUm,
          faceRunoutUm,
          faceDiameterMm,
          interferenceUm,
          nutTorqueNm,
          frictionCoefficient,
          clampingTorqueNm,
          axialHoldN,
          jointStiffness,
          dampingRatio,
          damper,
          price);
    }
  }

  /** What was measured on the finished assembly. */
  public record Measured(
      @Nullable Double runoutAtTipUm,
      @Nullable Double gaugeLengthMm,
      @Nullable Double massKg,
      @Nullable List<Mode> modes,
      @Nullable List<Sample> response) {
    /** Nothing measured. */
    public static final Measured NONE = new Measured(null, null, null, null, null);
  }

  /** The response of the tip at one frequency. */
  public record Sample(
      @Nullable String direction,
      @Nullable Double frequencyHz,
      @Nullable Double realMPerN,
      @Nullable Double imaginaryMPerN) {}

  /** One mode of the tip. */
  public record Mode(
      @Nullable String direction,
      @Nullable Double frequencyHz,
      @Nullable Double dampingRatio,
      @Nullable Double stiffnessNPerM) {}
}
