package org.gaugeline.mechanics.chatter;

import org.gaugeline.mechanics.receptance.TipModel;
import org.hipparchus.complex.Complex;

/**
 * The zeroth-order solution as its authors draw it: for each chatter frequency and lobe a depth and
 * a speed, a = −(2πΛ_R/(N K_t))(1 + κ²), n = 1/(N T), T = (ε + 2kπ)/ω_c, ε = π − 2 atan κ. The
 * limit at a speed is the lowest lobe over it. Another route than the fixed-speed condition.
 */
record ClassicalLobes(MillingProcess process, TipModel tip, double stepRadPerS, double endRadPerS) {

  double limitM(double spindleRadPerS) {
    double lowest = Double.POSITIVE_INFINITY;
    Complex[] last = roots(stepRadPerS);
    for (double w = 2 * stepRadPerS; w < endRadPerS; w += stepRadPerS) {
      Complex[] now = roots(w);
      if (now[0].subtract(last[0]).norm() > now[1].subtract(last[0]).norm()) {
        now = new Complex[] {now[1], now[0]};
      }
      for (int i = 0; i < 2; i++) {
        lowest = Math.min(lowest, crossing(w, last[i], now[i], spindleRadPerS));
      }
      last = now;
    }
    return lowest;
  }

  /** Depth of the lobe segment between two frequencies where it passes the speed. */
  private double crossing(double w, Complex before, Complex after, double spindleRadPerS) {
    double depth0 = depth(before);
    double depth1 = depth(after);
    double lowest = Double.POSITIVE_INFINITY;
    if (depth0 > 0 && depth1 > 0) {
      double wanted = 2 * Math.PI / (process.teeth() * spindleRadPerS);
      int most = (int) (w * wanted / (2 * Math.PI)) + 1;
      for (int k = 0; k <= most; k++) {
        double t0 = (phase(before) + 2 * Math.PI * k) / (w - stepRadPerS);
        double t1 = (phase(after) + 2 * Math.PI * k) / w;
        if ((t0 - wanted) * (t1 - wanted) <= 0) {
          double share = (wanted - t0) / (t1 - t0);
          lowest = Math.min(lowest, depth0 + share * (depth1 - depth0));
        }
      }
    }
    return lowest;
  }

  private double depth(Complex root) {
    double kappa = root.getImaginary() / root.getReal();
    return -2
        * Math.PI
        * root.getReal()
        / (process.teeth() * process.tangentialPa())
        * (1 + kappa * kappa);
  }

  private static double phase(Complex root) {
    return Math.PI - 2 * Math.atan(root.getImaginary() / root.getReal());
  }

  /** Roots of a0 Λ² + a1 Λ + 1 = 0. */
  private Complex[] roots(double w) {
    double[] g = new double[4];
    tip.x().at(w, g, 0);
    tip.y().at(w, g, 2);
    Complex x = new Complex(g[0], g[1]);
    Complex y = new Complex(g[2], g[3]);
    DirectionalFactors f = DirectionalFactors.of(process);
    Complex a0 = x.multiply(y).multiply(f.xx() * f.yy() - f.xy() * f.yx());
    Complex a1 = x.multiply(f.xx()).add(y.multiply(f.yy()));
    Complex root = a1.square().subtract(a0.multiply(4.0)).sqrt();
    Complex down = a0.multiply(2.0);
    return new Complex[] {
      a1.negate().add(root).divide(down), a1.negate().subtract(root).divide(down)
    };
  }
}
