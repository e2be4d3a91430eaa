package org.gaugeline.mechanics.chatter;

import java.util.List;
import org.gaugeline.mechanics.receptance.TipMode;

/**
 * Modes of a tip in both directions as first-order equations z′ = A z + B F, [x, y] = C z.
 *
 * <p>Each mode has the states q and p = q̇/ω_n, both scaled by s = √(α² + β²ω_n²) so that they are
 * as large as the displacement they cause: q′ = ω_n p, p′ = −ω_n q − 2ζω_n p + (s/ω_n)F, x = (α/s)q
 * + (βω_n/s)p.
 */
final class ModalStates {
  /** Number of states. */
  final int count;

  final double[] a;

  /** Entry s/ω of each state's input; 0 for q. */
  final double[] input;

  /** What each state adds to its direction's displacement. */
  final double[] output;

  /** What each state adds to its direction's velocity, but for the direct share of a force. */
  final double[] velocity;

  /** Direction of each state, 0 for x and 1 for y. */
  final int[] direction;

  ModalStates(List<TipMode> x, List<TipMode> y) {
    count = 2 * (x.size() + y.size());
    a = new double[count * count];
    input = new double[count];
    output = new double[count];
    velocity = new double[count];
    direction = new int[count];
    for (int i = 0; i < x.size(); i++) {
      fill(2 * i, x.get(i), 0);
    }
    for (int i = 0; i < y.size(); i++) {
      fill(2 * (x.size() + i), y.get(i), 1);
    }
  }

  private void fill(int at, TipMode mode, int along) {
    double w = mode.angularFrequencyRadPerS();
    double alpha = mode.inverseMassPerKg();
    double beta = mode.velocityShareSPerKg() * w;
    double size = Math.hypot(alpha, beta);
    a[at * count + at + 1] = w;
    a[(at + 1) * count + at] = -w;
    a[(at + 1) * count + at + 1] = -2 * mode.dampingRatio() * w;
    input[at + 1] = size / w;
    output[at] = size > 0 ? alpha / size : 0;
    output[at + 1] = size > 0 ? beta / size : 0;
    velocity[at] = -w * output[at + 1];
    velocity[at + 1] = w * output[at] - 2 * mode.dampingRatio() * w * output[at + 1];
    direction[at] = along;
    direction[at + 1] = along;
  }
}
