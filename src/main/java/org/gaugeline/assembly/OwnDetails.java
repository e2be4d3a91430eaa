package org.gaugeline.assembly;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.job.StockEntry.InlineHolder;
import org.gaugeline.job.StockEntry.Section;
import org.gaugeline.job.StockEntry.Tested;
import org.gaugeline.reference.ReferenceData;
import org.jspecify.annotations.Nullable;

/** What is told of a component, in the records of bodies. */
final class OwnDetails {
  private static final double NONE = Double.NaN;

  private OwnDetails() {}

  static boolean orElse(@Nullable Boolean given, boolean otherwise) {
    return given == null ? otherwise : given;
  }

  static double orElse(@Nullable Double given, double otherwise) {
    return given == null ? otherwise : given;
  }

  static Ratings ratings(InlineHolder given) {
    return new Ratings(
        orElse(given.maxSpindleSpeedRadPerS(), NONE),
        orElse(given.balanceGradeMPerS(), NONE),
        orElse(given.balanceSpeedRadPerS(), NONE),
        orElse(given.residualUnbalanceKgM(), NONE),
        orElse(given.runoutTirM(), NONE),
        orElse(given.massKg(), NONE),
        orElse(given.nutTorqueNm(), NONE),
        orElse(given.interferenceM(), NONE),
        orElse(given.frictionCoefficient(), NONE),
        orElse(given.clampingTorqueNm(), NONE),
        orElse(given.axialHoldN(), NONE));
  }

  /** The joint to the part nearer the spindle, without its face. */
  static Joint joint(InlineHolder given) {
    Tested tested = given.tested();
    return new Joint(
        orElse(tested.jointRadialNPerM(), NONE),
        orElse(tested.jointRotationalNmPerRad(), NONE),
        NONE,
        NONE);
  }

  /**
   * The same joint with the face that was measured on it.
   *
   * @param usualDiameterM where it was not said on which diameter
   */
  static Joint withFace(Joint joint, InlineHolder given, double usualDiameterM) {
    return new Joint(
        joint.radialNPerM(),
        joint.rotationalNmPerRad(),
        faceTiltRad(given, usualDiameterM),
        joint.runoutTirM());
  }

  /** Face runout over the diameter on which it was measured. */
  private static double faceTiltRad(InlineHolder given, double usualDiameterM) {
    Double runout = given.tested().faceRunoutM();
    return runout == null ? NONE : runout / orElse(given.tested().faceDiameterM(), usualDiameterM);
  }

  static double dampingRatio(InlineHolder given) {
    return orElse(given.tested().dampingRatio(), NONE);
  }

  /**
   * The profile as given, else that of a generic part stretched to the length; of the material that
   * was named, if the table of solids has it.
   */
  static List<ProfileSection> sections(
      InlineHolder given,
      List<ProfileSection> generic,
      double genericLengthM,
      double lengthM,
      ReferenceData data) {
    List<ProfileSection> sections = new ArrayList<>();
    for (Section section : given.profile()) {
      sections.add(
          new ProfileSection(
              section.lengthM(),
              section.diameterM(),
              orElse(section.endDiameterM(), section.diameterM()),
              orElse(section.boreM(), 0)));
    }
    if (sections.isEmpty()) {
      generic.forEach(section -> sections.add(section.stretched(lengthM / genericLengthM)));
    }
    String material = given.material();
    if (material != null && data.solids().containsKey(material)) {
      sections.replaceAll(section -> section.of(material));
    }
    return List.copyOf(sections);
  }

  /** Length of a part: as said, else that of its profile, else that of the generic one. */
  static double lengthM(InlineHolder given, double genericM) {
    double sum = 0;
    for (Section section : given.profile()) {
      sum += section.lengthM();
    }
    return orElse(given.projectionM(), sum > 0 ? sum : genericM);
  }

  /** A wall around a bore that the generic part does not have: never thinner than its own. */
  static List<ProfileSection> walled(
      List<ProfileSection> sections, double genericBoreM, double boreM) {
    double wall = sections.get(sections.size() - 1).endDiameterM() - genericBoreM;
    double least = boreM + Math.max(wall, 0.1 * boreM);
    return sections.stream()
        .map(
            s ->
                new ProfileSection(
                    s.lengthM(),
                    Math.max(s.startDiameterM(), least),
                    Math.max(s.endDiameterM(), least),
                    s.boreM(),
                    s.solidId()))
        .toList();
  }
}
