package org.gaugeline.assessment;

import org.gaugeline.mechanics.beam.BeamMaterial;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.Solid;
import org.gaugeline.reference.Word;
import org.jspecify.annotations.Nullable;

/** A plain round bar that might stand in place of a stack's slender part. */
public enum PlainBar implements Word {
  STEEL("steel", "steel", false),
  HEAVY_METAL("heavy-metal", "heavy-metal", false),
  CARBIDE("carbide", "carbide", false),
  DAMPED_STEEL("damped-steel", "steel", true);

  private static final String MASS = "heavy-metal";

  private final String id;
  private final String solidId;
  private final boolean damped;

  PlainBar(String id, String solidId, boolean damped) {
    this.id = id;
    this.solidId = solidId;
    this.damped = damped;
  }

  @Override
  public String id() {
    return id;
  }

  /** What the bar is made of. */
  BeamMaterial material(Models models) {
    return models.beam(solidId);
  }

  /** The mass inside it; null for none. */
  @Nullable Room room(ReferenceData data) {
    Solid heavy = data.solids().get(MASS);
    if (damped && heavy == null) {
      throw new IllegalStateException("no solid '" + MASS + "' in the tables");
    }
    return damped && heavy != null
        ? new Room(
            data.practice("damperAtShare"),
            data.practice("damperLengthShare"),
            data.practice("damperDiameterShare"),
            heavy.densityKgPerM3())
        : null;
  }

  /**
   * A hollow of the bar, filled with a mass that hangs in rubber.
   *
   * @param atShare its middle over the overhang, from the base
   * @param lengthShare its length over the overhang
   * @param diameterShare its diameter over the bar's
   * @param densityKgPerM3 of the mass
   */
  record Room(double atShare, double lengthShare, double diameterShare, double densityKgPerM3) {}
}
