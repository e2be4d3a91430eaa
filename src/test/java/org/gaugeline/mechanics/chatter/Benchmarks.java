package org.gaugeline.mechanics.chatter;

import org.gaugeline.mechanics.cutting.MillingEngagement;
import org.gaugeline.mechanics.receptance.ModalResponse;
import org.gaugeline.mechanics.receptance.TipMode;
import org.gaugeline.mechanics.receptance.TipModel;

/** Cuts and tips of published examples. */
final class Benchmarks {
  static final double TWO_PI = 2 * Math.PI;

  /** Altintas, Manufacturing Automation, 2nd ed. (2012), p. 162, as listed in a public script. */
  static final ModalResponse BOOK_X =
      ModalResponse.of(
          TipMode.ofResidue(TWO_PI * 452.77, 0.123718, 9.202966e-5, -1.862195e-4),
          TipMode.ofResidue(TWO_PI * 1448.53, 0.01651, -4.181562e-5, -3.043618e-4));

  static final ModalResponse BOOK_Y =
      ModalResponse.of(
          TipMode.ofResidue(TWO_PI * 516.17, 0.0243, -2.3929e-6, -1.721539e-4),
          TipMode.ofResidue(TWO_PI * 1407.64, 0.0324, 4.055052e-5, -3.618808e-4));

  static final TipModel BOOK_TIP = new TipModel(BOOK_X, BOOK_Y);

  static final MillingProcess BOOK_CUT =
      new MillingProcess(
          2, 1319.4e6, 788.8 / 1319.4, MillingEngagement.down(31.75e-3 / 2, 31.75e-3));

  /**
   * One mode at 922 Hz along the feed: the usual semi-discretization benchmark (published lists).
   */
  static final ModalResponse BENCHMARK_X = oneMode(0.03993, 922, 0.011);

  /** In the style of Schmitz and Smith 2009, ch. 4 (set-up from memory). */
  static final ModalResponse SYMMETRIC =
      ModalResponse.of(TipMode.ofStiffness(TWO_PI * 500, 8e6, 0.02));

  static final MillingProcess QUARTER_UP =
      MillingProcess.ofResultant(4, 750e6, Math.toRadians(68), MillingEngagement.up(0.25, 1));

  private Benchmarks() {}

  static MillingProcess benchmarkCut(MillingEngagement engagement) {
    return new MillingProcess(2, 6e8, 2e8 / 6e8, engagement);
  }

  static double radPerS(double rpm) {
    return rpm * TWO_PI / 60;
  }

  private static ModalResponse oneMode(double massKg, double hz, double zeta) {
    double w = TWO_PI * hz;
    return ModalResponse.of(TipMode.ofStiffness(w, massKg * w * w, zeta));
  }
}
