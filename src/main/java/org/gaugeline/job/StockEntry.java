package org.gaugeline.job;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Holders that the shop owns: a catalogue reference, or a description of its own with whatever is
 * known of it.
 *
 * @param pointer where in the request it stands
 * @param ref catalogue id; null for an inline description
 * @param count how many
 * @param inline the description; null for a reference
 */
public record StockEntry(
    String pointer, @Nullable String ref, int count, @Nullable InlineHolder inline) {

  /** A holder in the caller's own words; absent members are estimated. */
  public record InlineHolder(
      @Nullable String family,
      @Nullable String interfaceId,
      @Nullable Double boreM,
      @Nullable Double projectionM,
      List<Section> profile,
      @Nullable String material,
      @Nullable Double massKg,
      @Nullable Boolean faceContact,
      @Nullable Boolean throughCoolant,
      @Nullable Double maxSpindleSpeedRadPerS,
      @Nullable Double balanceGradeMPerS,
      @Nullable Double balanceSpeedRadPerS,
      @Nullable Double residualUnbalanceKgM,
      @Nullable Double runoutTirM,
      @Nullable Double interferenceM,
      @Nullable Double nutTorqueNm,
      @Nullable Double frictionCoefficient,
      @Nullable Double clampingTorqueNm,
      @Nullable Double axialHoldN,
      @Nullable Double price,
      Tested tested) {
    /** Nothing known. */
    public static final InlineHolder NONE =
        new InlineHolder(
            null,
            null,
            null,
            null,
            List.of(),
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
            null,
            null,
            null,
            null,
            Tested.NOTHING);

    /** The same of another family. */
    public InlineHolder withFamily(String other) {
      return new InlineHolder(
          other,
          interfaceId,
          boreM,
          projectionM,
          profile,
          material,
          massKg,
          faceContact,
          throughCoolant,
          maxSpindleSpeedRadPerS,
          balanceGradeMPerS,
          balanceSpeedRadPerS,
          residualUnbalanceKgM,
          runoutTirM,
          interferenceM,
          nutTorqueNm,
          frictionCoefficient,
          clampingTorqueNm,
          axialHoldN,
          price,
          tested);
    }

    /** Whether nothing is known. */
    public boolean saysNothing() {
      return equals(NONE);
    }
  }

  /**
   * What only a test bench knows of a component; absent members are estimated.
   *
   * @param faceRunoutM runout of its seating face
   * @param faceDiameterM diameter on which that was measured
   * @param jointRadialNPerM lateral stiffness of the joint to the part nearer the spindle
   * @param jointRotationalNmPerRad bending stiffness of that joint
   * @param dampingRatio damping ratio
   * @param damper tuned mass inside; null where none is told of
   */
  public record Tested(
      @Nullable Double faceRunoutM,
      @Nullable Double faceDiameterM,
      @Nullable Double jointRadialNPerM,
      @Nullable Double jointRotationalNmPerRad,
      @Nullable Double dampingRatio,
      @Nullable TunedMass damper) {
    /** Nothing tested. */
    public static final Tested NOTHING = new Tested(null, null, null, null, null, null);
  }

  /** A tuned mass as it is told of. */
  public record TunedMass(
      @Nullable Double massKg, @Nullable Double frequencyHz, @Nullable Double dampingRatio) {}

  /** One frustum of an inline profile, from the gauge plane outward. */
  public record Section(
      double lengthM, double diameterM, @Nullable Double endDiameterM, @Nullable Double boreM) {}
}
