package org.gaugeline.mechanics.cutting;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.mechanics.Require;

/**
 * Edge of a cutter that leaves its own shape in the work, cut into slices of even lead angle: the
 * cone of a chamfer mill, the profile of a thread mill. Each slice has its own radius and its own
 * arc, counted from the point where the edge generates the surface.
 *
 * @param slices parts of one tooth's edge
 */
public record FormEdge(List<Slice> slices) {
  private static final int SLICES = 48;

  /** Depth of an internal 60° thread over its pitch: five eighths of the triangle (ISO 68-1). */
  public static final double THREAD_DEPTH_PER_PITCH = 5 * Math.sqrt(3) / 16;

  /**
   * Area of an internal 60° thread groove over the square of its pitch: depth times the mean of ¾
   * at the minor and ⅛ at the major diameter, 35√3/256 = 0.2368 (from the profile of ISO 68-1).
   */
  public static final double THREAD_AREA_PER_PITCH_SQUARED = 35 * Math.sqrt(3) / 256;

  private static final double FLANK_RAD = Math.PI / 6;

  /**
   * A slice of an edge.
   *
   * @param lengthM length of edge, m, &gt; 0
   * @param leadSine sine of the angle between edge and radial feed: chip h = fz·leadSine·sin θ
   * @param axialCosine share of the force normal to the edge that pushes the cutter into its
   *     holder; 0 where two flanks balance
   * @param radiusM radius at which it cuts, m, &gt; 0
   * @param arcRad arc of contact, rad, 0 to π
   */
  public record Slice(
      double lengthM, double leadSine, double axialCosine, double radiusM, double arcRad) {
    public Slice {
      Require.positive("lengthM", lengthM);
      Require.within("leadSine", leadSine, 0, 1);
      Require.within("axialCosine", axialCosine, 0, 1);
      Require.positive("radiusM", radiusM);
      Require.within("arcRad", arcRad, 0, Math.PI);
    }
  }

  /** Checks that there is an edge. */
  public FormEdge {
    Require.atLeastOne("slices", slices.size());
    slices = List.copyOf(slices);
  }

  /**
   * Cone that breaks the edge of a straight wall. The stock is a triangle: as wide as the chamfer
   * at its upper end, nothing at its lower; arcs from ae = R·(1 − cos θ) at the radius of each
   * height.
   *
   * @param middleDiameterM diameter of the cone at the middle of the chamfer, m, at least the width
   * @param heightM height of the chamfer along the axis, m, &gt; 0
   * @param widthM width of the chamfer across the axis, m, &gt; 0
   * @return the edge
   */
  public static FormEdge chamfer(double middleDiameterM, double heightM, double widthM) {
    Require.positive("heightM", heightM);
    Require.positive("widthM", widthM);
    Require.within("middleDiameterM", middleDiameterM, widthM, Double.MAX_VALUE);
    double length = Math.hypot(heightM, widthM);
    List<Slice> slices = new ArrayList<>(SLICES);
    for (int i = 0; i < SLICES; i++) {
      double share = (i + 0.5) / SLICES;
      double radius = middleDiameterM / 2 + widthM * (share - 0.5);
      double cosine = Math.max(-1, 1 - widthM * share / radius);
      slices.add(
          new Slice(length / SLICES, heightM / length, widthM / length, radius, Math.acos(cosine)));
    }
    return new FormEdge(slices);
  }

  /**
   * Profile of a thread mill that circles in a hole of the thread's minor diameter and cuts the
   * full 60° profile in one pass. With e the radius of the circle, r1 that of the hole and R the
   * cutter's at a depth of the profile, contact ends where e² + R² + 2·e·R·cos θ = r1².
   *
   * @param toolDiameterM cutting diameter, m, below the minor diameter
   * @param majorDiameterM major diameter of the thread, m
   * @param pitchM pitch P, m, &gt; 0
   * @param lengthM length of thread cut at once, m, &gt; 0: as many pitches cut beside each other
   * @return the edge
   */
  public static FormEdge internalThread(
      double toolDiameterM, double majorDiameterM, double pitchM, double lengthM) {
    Require.positive("pitchM", pitchM);
    Require.positive("lengthM", lengthM);
    double depth = THREAD_DEPTH_PER_PITCH * pitchM;
    double minor = majorDiameterM - 2 * depth;
    Require.between("toolDiameterM", toolDiameterM, 2 * depth, minor);
    double pitches = lengthM / pitchM;
    double orbit = (majorDiameterM - toolDiameterM) / 2;
    List<Slice> slices = new ArrayList<>(SLICES + 1);
    for (int i = 0; i < SLICES; i++) {
      double fromTip = depth * (1 - (i + 0.5) / SLICES);
      double flanks = 2 * pitches * depth / SLICES / Math.cos(FLANK_RAD);
      double radius = toolDiameterM / 2 - fromTip;
      slices.add(
          new Slice(flanks, Math.sin(FLANK_RAD), 0, radius, arcInHole(orbit, radius, minor / 2)));
    }
    double tip = toolDiameterM / 2;
    slices.add(new Slice(pitches * pitchM / 8, 1, 0, tip, arcInHole(orbit, tip, minor / 2)));
    return new FormEdge(slices);
  }

  private static double arcInHole(double orbitM, double radiusM, double holeRadiusM) {
    double cosine =
        (holeRadiusM * holeRadiusM - orbitM * orbitM - radiusM * radiusM) / (2 * orbitM * radiusM);
    return Math.acos(Math.max(-1, Math.min(1, cosine)));
  }

  /**
   * Section that one tooth pulls through the work per unit of feed, Σ b·sin κ·R·(1 − cos θ), m².
   */
  public double sectionM2() {
    double section = 0;
    for (Slice slice : slices) {
      section +=
          slice.lengthM() * slice.leadSine() * slice.radiusM() * (1 - Math.cos(slice.arcRad()));
    }
    return section;
  }
}
