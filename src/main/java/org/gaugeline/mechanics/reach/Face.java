package org.gaugeline.mechanics.reach;

/** Gap of one straight edge to one obstacle. */
record Face(double distanceM, double heightM, double sin, double cos) {

  static Face of(Obstacle obstacle) {
    double draft = obstacle.draftRad();
    return new Face(
        obstacle.distanceM(),
        obstacle.heightM(),
        draft == 0 ? 0 : Math.sin(draft),
        draft == 0 ? 1 : Math.cos(draft));
  }

  double edgeGapM(double z0, double r0, double z1, double r1) {
    double off0 = off(z0, r0);
    double above0 = z0 - heightM;
    double off1 = off(z1, r1);
    double above1 = z1 - heightM;
    double ends = Math.min(Math.max(off0, above0), Math.max(off1, above1));
    double d0 = off0 - above0;
    double d1 = off1 - above1;
    if (d0 * d1 >= 0 || Double.isInfinite(d0)) {
      return ends;
    }
    return Math.min(ends, above0 + (above1 - above0) * d0 / (d0 - d1));
  }

  /** Where on the edge the gap is smallest, 0 at the first end to 1 at the second. */
  double nearestShare(double z0, double r0, double z1, double r1) {
    double off0 = off(z0, r0);
    double above0 = z0 - heightM;
    double off1 = off(z1, r1);
    double above1 = z1 - heightM;
    double end0 = Math.max(off0, above0);
    double end1 = Math.max(off1, above1);
    double d0 = off0 - above0;
    double d1 = off1 - above1;
    if (d0 * d1 < 0 && !Double.isInfinite(d0)) {
      double share = d0 / (d0 - d1);
      if (above0 + (above1 - above0) * share < Math.min(end0, end1)) {
        return share;
      }
    }
    return end1 < end0 ? 1 : 0;
  }

  private double off(double z, double r) {
    return (distanceM - r) * cos + z * sin;
  }
}
