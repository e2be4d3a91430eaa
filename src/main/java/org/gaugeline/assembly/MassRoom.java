package org.gaugeline.assembly;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.job.StockEntry.InlineHolder;
import org.gaugeline.job.StockEntry.TunedMass;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.Solid;
import org.jspecify.annotations.Nullable;

/**
 * Room for a tuned mass in a body: a hollow in one of its sections, as usual damped bars have it.
 *
 * @param section index of that section
 * @param sectionM where that section begins, from the gauge plane
 * @param fromM where the hollow begins
 * @param toM where it ends
 * @param diameterM its diameter
 * @param usualKg the hollow filled with heavy metal
 * @param mostKg more than any mass in that body can weigh
 */
record MassRoom(
    int section,
    double sectionM,
    double fromM,
    double toM,
    double diameterM,
    double usualKg,
    double mostKg) {
  private static final double LEAST_M = 1e-3;

  /**
   * The room in a body; null where there is none.
   *
   * @param freeM length from the gauge plane in which no shank stands
   */
  static @Nullable MassRoom in(List<ProfileSection> sections, double freeM, ReferenceData data) {
    double at = freeM * data.practice("damperAtShare");
    double half = freeM * data.practice("damperLengthShare") / 2;
    double share = data.practice("damperDiameterShare");
    Solid heavy = data.solids().get("heavy-metal");
    double start = 0;
    for (int i = 0; i < sections.size() && heavy != null; i++) {
      ProfileSection one = sections.get(i);
      double end = start + one.lengthM();
      if (at >= start && at < end) {
        double from = Math.max(start, at - half);
        double to = Math.min(end, at + half);
        double thinnest = Math.min(one.startDiameterM(), one.endDiameterM());
        double diameter = Math.max(one.boreM(), share * thinnest);
        double usual = heavy.densityKgPerM3() * Math.PI / 4 * diameter * diameter * (to - from);
        double most = usual / (share * share) * freeM / (to - from);
        return to - from < LEAST_M || diameter < LEAST_M
            ? null
            : new MassRoom(i, start, from, to, diameter, usual, most);
      }
      start = end;
    }
    return null;
  }

  /** Whether a mass that was told of is there at all, and light enough. */
  static boolean holds(@Nullable MassRoom room, InlineHolder given) {
    TunedMass told = given.tested().damper();
    Double mass = told == null ? null : told.massKg();
    return told == null || (room != null && (mass == null || mass <= room.mostKg));
  }

  /** The mass that was told of, or another one where its weight was not said. */
  Damper damper(InlineHolder given, double otherwiseKg) {
    TunedMass told = given.tested().damper();
    Double mass = told == null ? null : told.massKg();
    return new Damper(
        (fromM + toM) / 2,
        mass == null ? otherwiseKg : mass,
        told == null ? Double.NaN : OwnDetails.orElse(told.frequencyHz(), Double.NaN),
        told == null ? Double.NaN : OwnDetails.orElse(told.dampingRatio(), Double.NaN));
  }

  /** The profile with the hollow. */
  List<ProfileSection> hollowed(List<ProfileSection> sections) {
    List<ProfileSection> hollowed = new ArrayList<>(sections.subList(0, section));
    ProfileSection one = sections.get(section);
    double end = sectionM + one.lengthM();
    piece(hollowed, one, sectionM, fromM, one.boreM());
    piece(hollowed, one, fromM, toM, diameterM);
    piece(hollowed, one, toM, end, one.boreM());
    hollowed.addAll(sections.subList(section + 1, sections.size()));
    return List.copyOf(hollowed);
  }

  private void piece(
      List<ProfileSection> pieces, ProfileSection of, double from, double to, double boreM) {
    if (to - from > 1e-9) {
      pieces.add(of.piece(from - sectionM, to - from, boreM));
    }
  }
}
