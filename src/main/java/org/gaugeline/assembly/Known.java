package org.gaugeline.assembly;

import org.jspecify.annotations.Nullable;

/**
 * What no catalogue says of a body, and somebody may have measured or read off.
 *
 * @param rear the joint to the part nearer the spindle
 * @param front the joint to the tool, or to the next part
 * @param dampingRatio measured damping ratio; NaN where not measured
 * @param collet the collet in it; null where nothing is said of it
 */
public record Known(Joint rear, Joint front, double dampingRatio, @Nullable GivenCollet collet) {

  /** Nothing known. */
  public static final Known NOTHING =
      new Known(Joint.UNMEASURED, Joint.UNMEASURED, Double.NaN, null);

  /**
   * A collet that somebody chose.
   *
   * @param id its size; empty where not said
   * @param boreM its nominal bore; NaN where not said
   * @param maxSpeedRadPerS speed marked on collet or nut; NaN for none
   */
  public record GivenCollet(String id, double boreM, double maxSpeedRadPerS) {}

  /** This body behind another: its rear joint is then one between the two. */
  Known behind(Known before) {
    return new Known(before.rear, front, lesser(before.dampingRatio, dampingRatio), collet);
  }

  /** With what is known better of the same body. */
  Known with(Known better) {
    GivenCollet other = better.collet;
    return new Known(
        better.rear.orElse(rear),
        better.front.orElse(front),
        Double.isNaN(better.dampingRatio) ? dampingRatio : better.dampingRatio,
        other == null ? collet : other);
  }

  /** With another joint to the tool. */
  Known withFront(Joint joint) {
    return new Known(rear, joint, dampingRatio, collet);
  }

  /** Of two measured values the smaller, of one that one. */
  private static double lesser(double a, double b) {
    return Double.isNaN(a) ? b : Double.isNaN(b) ? a : Math.min(a, b);
  }
}
