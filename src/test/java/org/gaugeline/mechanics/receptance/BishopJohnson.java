package org.gaugeline.mechanics.receptance;

import org.hipparchus.complex.Complex;

/**
 * Euler–Bernoulli receptances of a uniform bar in closed form (Bishop and Johnson, The Mechanics of
 * Vibration; Schmitz and Smith 2009, ch. 9, as coded in a public script) and their coupling by the
 * matrix formula. Independent of elements.
 */
record BishopJohnson(
    double youngPa,
    double densityKgPerM3,
    double areaM2,
    double inertiaM4,
    double lengthM,
    double lossFactor) {

  static BishopJohnson round(double diameterM, double lengthM, double loss) {
    double square = diameterM * diameterM;
    return new BishopJohnson(
        200e9, 7800, Math.PI / 4 * square, Math.PI / 64 * square * square, lengthM, loss);
  }

  static BishopJohnson square(double sideM, double lengthM, double loss) {
    double area = sideM * sideM;
    return new BishopJohnson(200e9, 7800, area, area * area / 12, lengthM, loss);
  }

  private Complex bending() {
    return new Complex(1, lossFactor).multiply(youngPa * inertiaM4);
  }

  private Complex lambda(double omega) {
    return new Complex(omega * omega * densityKgPerM3 * areaM2).divide(bending()).pow(0.25);
  }

  /** Clamped–free tip, [[H, L], [N, P]]. */
  Complex[][] clamped(double omega) {
    Complex w = lambda(omega);
    Complex x = w.multiply(lengthM);
    Complex down = bending().multiply(x.cos().multiply(x.cosh()).add(1));
    Complex l = x.sin().multiply(x.sinh()).divide(w.square().multiply(down));
    return new Complex[][] {
      {c1(x).negate().divide(w.pow(3).multiply(down)), l}, {l, c5(x).divide(w.multiply(down))}
    };
  }

  /** Free–free, the end's own receptances: tip (sign 1) or base (sign −1). */
  Complex[][] free(double omega, int sign) {
    Complex w = lambda(omega);
    Complex x = w.multiply(lengthM);
    Complex down = bending().multiply(x.cos().multiply(x.cosh()).subtract(1));
    Complex l =
        x.sin().multiply(x.sinh()).divide(w.square().multiply(down)).multiply((double) sign);
    return new Complex[][] {
      {c1(x).negate().divide(w.pow(3).multiply(down)), l}, {l, c5(x).divide(w.multiply(down))}
    };
  }

  /** Free–free, motion of the tip by loads on the base. */
  Complex[][] across(double omega) {
    Complex w = lambda(omega);
    Complex x = w.multiply(lengthM);
    Complex down = bending().multiply(x.cos().multiply(x.cosh()).subtract(1));
    Complex c4 = x.cos().subtract(x.cosh());
    return new Complex[][] {
      {
        x.sin().subtract(x.sinh()).divide(w.pow(3).multiply(down)),
        c4.negate().divide(w.square().multiply(down))
      },
      {c4.divide(w.square().multiply(down)), x.sin().add(x.sinh()).divide(w.multiply(down))}
    };
  }

  /** G11 = R11 − R12a (R2a2a + R2b2b + K⁻¹)⁻¹ R2a1. */
  Complex[][] coupledTo(
      Complex[][] base, Complex translationCompliance, Complex rotationCompliance, double omega) {
    Complex[][] inner = free(omega, -1);
    Complex[][] sum = new Complex[2][2];
    for (int i = 0; i < 2; i++) {
      for (int j = 0; j < 2; j++) {
        sum[i][j] = inner[i][j].add(base[i][j]);
      }
    }
    sum[0][0] = sum[0][0].add(translationCompliance);
    sum[1][1] = sum[1][1].add(rotationCompliance);
    Complex[][] r12 = across(omega);
    Complex[][] r21 = {{r12[0][0], r12[1][0]}, {r12[0][1], r12[1][1]}};
    Complex[][] change = times(times(r12, inverse(sum)), r21);
    Complex[][] tip = free(omega, 1);
    for (int i = 0; i < 2; i++) {
      for (int j = 0; j < 2; j++) {
        tip[i][j] = tip[i][j].subtract(change[i][j]);
      }
    }
    return tip;
  }

  private static Complex c1(Complex x) {
    return x.cos().multiply(x.sinh()).subtract(x.sin().multiply(x.cosh()));
  }

  private static Complex c5(Complex x) {
    return x.cos().multiply(x.sinh()).add(x.sin().multiply(x.cosh()));
  }

  private static Complex[][] times(Complex[][] a, Complex[][] b) {
    Complex[][] product = new Complex[2][2];
    for (int i = 0; i < 2; i++) {
      for (int j = 0; j < 2; j++) {
        product[i][j] = a[i][0].multiply(b[0][j]).add(a[i][1].multiply(b[1][j]));
      }
    }
    return product;
  }

  private static Complex[][] inverse(Complex[][] m) {
    Complex det = m[0][0].multiply(m[1][1]).subtract(m[0][1].multiply(m[1][0]));
    return new Complex[][] {
      {m[1][1].divide(det), m[0][1].negate().divide(det)},
      {m[1][0].negate().divide(det), m[0][0].divide(det)}
    };
  }
}
