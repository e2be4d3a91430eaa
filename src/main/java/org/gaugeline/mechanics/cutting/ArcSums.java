package org.gaugeline.mechanics.cutting;

import java.util.Arrays;

/**
 * Force per width at the points of an arc, folded over all teeth onto the steps of one pitch: the
 * force itself and its products with sine and cosine of the immersion.
 *
 * <p>Lateral components on the tool, x along the feed and y towards φ = 0 (Altintas,
 * <em>Manufacturing Automation</em>, ch. 2): fx = −ft·cos φ − fr·sin φ, fy = ft·sin φ − fr·cos φ,
 * where fr = (Fr/Ft)·sin κ·ft is the lateral part of the force normal to the edge. They follow from
 * the three sums.
 */
final class ArcSums {
  final double[] tangential;
  final double[] sine;
  final double[] cosine;

  ArcSums(int steps) {
    tangential = new double[steps];
    sine = new double[steps];
    cosine = new double[steps];
  }

  void clear() {
    Arrays.fill(tangential, 0);
    Arrays.fill(sine, 0);
    Arrays.fill(cosine, 0);
  }

  /** Takes the points of one arc in place of what was there. */
  void set(ArcPoints points, ChipForceTable table, double chipAtNinetyM) {
    clear();
    add(points, table, chipAtNinetyM);
  }

  /** Adds the points of one arc with the chip h = chipAtNinety·sin φ. */
  void add(ArcPoints points, ChipForceTable table, double chipAtNinetyM) {
    int count = points.sine.length;
    for (int base = 0; base < count; base += tangential.length) {
      int inPitch = Math.min(tangential.length, count - base);
      for (int i = 0; i < inPitch; i++) {
        double s = points.sine[base + i];
        double force = points.weight[base + i] * table.forcePerWidth(chipAtNinetyM * s);
        tangential[i] += force;
        sine[i] += force * s;
        cosine[i] += force * points.cosine[base + i];
      }
    }
  }

  /** Sums of the component along the feed. */
  double[] feed(double lateralRatio) {
    double[] feed = new double[sine.length];
    for (int i = 0; i < feed.length; i++) {
      feed[i] = -cosine[i] - lateralRatio * sine[i];
    }
    return feed;
  }

  /** Sums of the component towards φ = 0. */
  double[] normal(double lateralRatio) {
    double[] normal = new double[sine.length];
    for (int i = 0; i < normal.length; i++) {
      normal[i] = sine[i] - lateralRatio * cosine[i];
    }
    return normal;
  }
}
