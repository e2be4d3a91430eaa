package org.gaugeline.mechanics.beam;

import java.util.Arrays;

/**
 * The table behind a chain: one row per joint, cylinder or slice of a cone, base first.
 *
 * <p>A row keeps the integrals, over its own length and with x counted from its tip end, that both
 * statics and dynamics are made of: ∫dx/EI, ∫x dx/EI, ∫x² dx/EI and ∫dx/κGA. A joint is a row
 * without length or mass.
 */
final class ChainRows {
  static final int STRIDE = 9;
  static final int LENGTH = 0;
  static final int FLEX_0 = 1;
  static final int FLEX_1 = 2;
  static final int FLEX_2 = 3;
  static final int SHEAR = 4;
  static final int MASS = 5;
  static final int ROTARY = 6;
  static final int KIND = 7;

  /** Slope of ρA along the row: (base end − tip end)/(base end + tip end). */
  static final int MASS_SLOPE = 8;

  static final double JOINT = 0;
  static final double UNIFORM = 1;
  static final double NARROWING = 2;
  static final double WIDENING = 3;

  private static final double GAUSS_OFFSET = Math.sqrt(0.6);
  private static final double GAUSS_OUTER = 5.0 / 18;
  private static final double GAUSS_MIDDLE = 8.0 / 18;
  private static final int MOST_SLICES = 8;
  private static final double SLICE_PER_LOG_RATIO = 8;
  private static final double SLICE_LENGTH_IN_DIAMETERS = 0.7;

  double[] table = new double[16 * STRIDE];
  int size;

  void addJoint(ElasticJoint joint) {
    int at = next(JOINT);
    table[at + FLEX_0] = 1 / joint.rotationNmPerRad();
    table[at + FLEX_2] = 1 / joint.translationNPerM();
  }

  void addSegment(BeamSegment s) {
    if (s.isCylinder()) {
      addCylinder(s);
      return;
    }
    int slices = slices(s);
    double step = (s.endDiameterM() - s.startDiameterM()) / slices;
    double length = s.lengthM() / slices;
    for (int i = 0; i < slices; i++) {
      double start = s.startDiameterM() + i * step;
      addSlice(s, length, start, start + step);
    }
  }

  private void addCylinder(BeamSegment s) {
    int at = next(UNIFORM);
    double l = s.lengthM();
    double d = s.startDiameterM();
    double flex = l / Section.bendingStiffnessNm2(s, d);
    table[at + LENGTH] = l;
    table[at + FLEX_0] = flex;
    table[at + FLEX_1] = flex * l / 2;
    table[at + FLEX_2] = flex * l * l / 3;
    table[at + SHEAR] = l / Section.shearStiffnessN(s, d);
    table[at + MASS] = Section.massKgPerM(s, d);
    table[at + ROTARY] = Section.rotaryInertiaKgM(s, d);
  }

  private void addSlice(BeamSegment s, double l, double start, double end) {
    int at = next(end < start ? NARROWING : WIDENING);
    table[at + LENGTH] = l;
    double middle = (start + end) / 2;
    double half = (start - end) / 2 * GAUSS_OFFSET;
    addMass(s, at, middle + half, GAUSS_OUTER);
    addMass(s, at, middle, GAUSS_MIDDLE);
    addMass(s, at, middle - half, GAUSS_OUTER);
    double massStart = Section.massKgPerM(s, start);
    double massEnd = Section.massKgPerM(s, end);
    table[at + MASS_SLOPE] =
        massStart + massEnd > 0 ? (massStart - massEnd) / (massStart + massEnd) : 0;
    if (s.isSolid()) {
      setSolidConeFlexibility(s, at, start, end);
      return;
    }
    double offset = GAUSS_OFFSET / 2;
    addFlexibility(s, at, l, 0.5 + offset, middle + half, GAUSS_OUTER);
    addFlexibility(s, at, l, 0.5, middle, GAUSS_MIDDLE);
    addFlexibility(s, at, l, 0.5 - offset, middle - half, GAUSS_OUTER);
  }

  /*
   * With t from the tip end and d = p(1-t) + qt, Euler's beta integral gives
   * ∫ t^m (1-t)^n / d^(m+n+2) dt = m! n! / ((m+n+1)! p^(n+1) q^(m+1)):
   * the cone in closed form, without the cancellation of the usual primitive as p nears q.
   */
  private void setSolidConeFlexibility(BeamSegment s, int at, double q, double p) {
    double l = table[at + LENGTH];
    double scale = 64 * l / (Math.PI * s.material().youngPa() * p * q);
    double outer = 1 / (3 * p * p);
    double mixed = 1 / (6 * p * q);
    double inner = 1 / (3 * q * q);
    table[at + FLEX_0] = scale * (outer + 2 * mixed + inner);
    table[at + FLEX_1] = scale * l * (mixed + inner);
    table[at + FLEX_2] = scale * l * l * inner;
    BeamMaterial material = s.material();
    double shear = ShearCoefficient.solidRound(material.poisson()) * material.shearModulusPa();
    table[at + SHEAR] = 4 * l / (Math.PI * shear * p * q);
  }

  private void addMass(BeamSegment s, int at, double diameterM, double weight) {
    table[at + MASS] += weight * Section.massKgPerM(s, diameterM);
    table[at + ROTARY] += weight * Section.rotaryInertiaKgM(s, diameterM);
  }

  private void addFlexibility(
      BeamSegment s, int at, double l, double share, double diameterM, double weight) {
    double x = share * l;
    double flex = weight * l / Section.bendingStiffnessNm2(s, diameterM);
    table[at + FLEX_0] += flex;
    table[at + FLEX_1] += flex * x;
    table[at + FLEX_2] += flex * x * x;
    table[at + SHEAR] += weight * l / Section.shearStiffnessN(s, diameterM);
  }

  /** Takes over the rows of another table. */
  void addAll(double[] other, int rows) {
    int at = size * STRIDE;
    int end = at + rows * STRIDE;
    if (end > table.length) {
      table = Arrays.copyOf(table, 2 * end);
    }
    System.arraycopy(other, 0, table, at, rows * STRIDE);
    size += rows;
  }

  private static int slices(BeamSegment s) {
    double ratio = s.startDiameterM() / s.endDiameterM();
    double spread = Math.max(ratio, 1 / ratio) - 1;
    double mean = (s.startDiameterM() + s.endDiameterM()) / 2;
    double wanted =
        Math.max(SLICE_PER_LOG_RATIO * spread, s.lengthM() / (SLICE_LENGTH_IN_DIAMETERS * mean));
    return (int) Math.min(MOST_SLICES, Math.max(1, Math.ceil(wanted)));
  }

  private int next(double kind) {
    int at = size * STRIDE;
    if (at == table.length) {
      table = Arrays.copyOf(table, 2 * at);
    }
    table[at + KIND] = kind;
    size++;
    return at;
  }
}
