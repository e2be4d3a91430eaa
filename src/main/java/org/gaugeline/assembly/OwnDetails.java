package org.gaugeline.assembly;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.job.StockEntry.InlineHolder;
import org.gaugeline.job.StockEntry.Section;
import org.gaugeline.job.StockEntry.Tested;
import org.gaugeline.job.StockEntry.TunedMass;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.Solid;
import org.jspecify.annotations.Nullable;

/** What is told of a component, in the records of bodies. */
final class OwnDetails {
  private static final double NONE = Double.NaN;

  private OwnDetails() {}

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

  /**
   * A tuned mass in the middle of the free length of a body; null where nothing is told of one, or
   * where it has no room.
   *
   * @param freeM length from the gauge plane in which no shank stands
   */
  static @Nullable Damper damper(
      InlineHolder given, List<ProfileSection> sections, double freeM, ReferenceData data) {
    TunedMass told = given.tested().damper();
    Damper usual = told == null ? null : usualDamper(sections, freeM, data);
    return told == null || usual == null
        ? null
        : new Damper(usual.atM(), orElse(told.massKg(), usual.massKg()));
  }

  /** A tuned mass as usual bars have it: heavy metal that fills a share of length and diameter. */
  static @Nullable Damper usualDamper(
      List<ProfileSection> sections, double freeM, ReferenceData data) {
    double share = data.practice("damperLengthShare");
    double at = freeM * (1 - share);
    ProfileSection around = at(sections, at);
    Solid heavy = data.solids().get("heavy-metal");
    if (around == null || heavy == null) {
      return null;
    }
    double diameter = hollowM(around, data);
    double volume = Math.PI / 4 * diameter * diameter * freeM * share;
    return new Damper(at, heavy.densityKgPerM3() * volume);
  }

  /** The profile with a hollow for the mass. */
  static List<ProfileSection> hollowed(
      List<ProfileSection> sections, Damper damper, double freeM, ReferenceData data) {
    double half = freeM * data.practice("damperLengthShare") / 2;
    List<ProfileSection> hollowed = new ArrayList<>();
    double from = 0;
    for (ProfileSection section : sections) {
      double start = Math.max(0, damper.atM() - half - from);
      double end = Math.min(section.lengthM(), damper.atM() + half - from);
      boolean holds = damper.atM() >= from && damper.atM() < from + section.lengthM();
      if (!holds) {
        hollowed.add(section);
      } else {
        addPiece(hollowed, section, 0, start, section.boreM());
        addPiece(hollowed, section, start, end, hollowM(section, data));
        addPiece(hollowed, section, end, section.lengthM(), section.boreM());
      }
      from += section.lengthM();
    }
    return List.copyOf(hollowed);
  }

  private static void addPiece(
      List<ProfileSection> pieces, ProfileSection section, double from, double to, double boreM) {
    if (to - from > 1e-6) {
      pieces.add(section.piece(from, to - from, boreM));
    }
  }

  private static double hollowM(ProfileSection section, ReferenceData data) {
    double thinnest = Math.min(section.startDiameterM(), section.endDiameterM());
    return Math.max(section.boreM(), data.practice("damperDiameterShare") * thinnest);
  }

  private static @Nullable ProfileSection at(List<ProfileSection> sections, double atM) {
    double from = 0;
    for (ProfileSection section : sections) {
      if (atM >= from && atM < from + section.lengthM()) {
        return section;
      }
      from += section.lengthM();
    }
    return null;
  }
}
