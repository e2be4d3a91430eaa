package org.gaugeline.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SixDigitsTest {
  private static final long SEED = 8_461_903L;

  @ParameterizedTest
  @CsvSource({
    "3.14159265, 3.14159, 3.14159, 3.1416",
    "-3.14159265, -3.14159, -3.1416, -3.14159",
    "123456789, 123457000, 123456000, 123457000",
    "0.3, 0.3, 0.3, 0.3",
    "999999.7, 1000000, 999999, 1000000",
    "1e-20, 1e-20, 1e-20, 1e-20",
    "0, 0, 0, 0"
  })
  void roundsToSixDigits(double value, double nearest, double down, double up) {
    assertThat(SixDigits.round(value)).isEqualTo(nearest);
    assertThat(SixDigits.roundDown(value)).isEqualTo(down);
    assertThat(SixDigits.roundUp(value)).isEqualTo(up);
  }

  @Test
  void agreesWithDecimalArithmeticAndKeepsToTheSafeSide() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 50_000; i++) {
      double sign = random.nextBoolean() ? 1 : -1;
      double value = sign * Math.pow(10, random.nextDouble(-20, 25));
      double rounded = SixDigits.round(value);
      double down = SixDigits.roundDown(value);
      double up = SixDigits.roundUp(value);
      String why = "seed " + SEED + ", value " + value;
      assertThat(rounded).as(why).isEqualTo(decimal(value, RoundingMode.HALF_EVEN));
      assertThat(down).as(why).isLessThanOrEqualTo(value);
      assertThat(up).as(why).isGreaterThanOrEqualTo(value);
      assertThat(down).as(why).isEqualTo(decimal(value, RoundingMode.FLOOR));
      assertThat(up).as(why).isEqualTo(decimal(value, RoundingMode.CEILING));
      if (Math.abs(value) > 1e-12 && Math.abs(value) < 1e15) {
        assertThat(digits(rounded)).as(why).isLessThanOrEqualTo(6);
      }
    }
  }

  @Test
  void roundingAgainChangesNothing() {
    SplittableRandom random = new SplittableRandom(SEED + 1);
    for (int i = 0; i < 50_000; i++) {
      double once = SixDigits.round(Math.pow(10, random.nextDouble(-15, 20)));
      String why = "seed " + (SEED + 1) + ", value " + once;
      assertThat(SixDigits.round(once)).as(why).isEqualTo(once);
      assertThat(SixDigits.roundDown(once)).as(why).isEqualTo(once);
      assertThat(SixDigits.roundUp(once)).as(why).isEqualTo(once);
    }
  }

  @Test
  void neverAnswersNegativeZeroAndLeavesNonFiniteAlone() {
    assertThat(Double.doubleToRawLongBits(SixDigits.round(-0.0))).isZero();
    assertThat(SixDigits.round(Double.NaN)).isNaN();
    assertThat(SixDigits.round(Double.POSITIVE_INFINITY)).isInfinite();
  }

  private static double decimal(double value, RoundingMode mode) {
    return new BigDecimal(value).round(new MathContext(6, mode)).doubleValue();
  }

  private static int digits(double value) {
    return new BigDecimal(Double.toString(value)).stripTrailingZeros().precision();
  }

  @Test
  void printsTheDecimalThatRoundingGives() {
    SplittableRandom random = new SplittableRandom(20261125);
    char[] out = new char[SixDigits.PRINTED];
    for (int i = 0; i < 20_000; i++) {
      double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(-12, 16));
      String printed = new String(out, 0, SixDigits.print(value, out));
      assertThat(Double.parseDouble(printed)).as("%s", value).isEqualTo(SixDigits.round(value));
    }
    for (double value : new double[] {0, 1, -1, 10, 999_999.5, 0.1, 1e-5, 123456789, 5e8, 100}) {
      String printed = new String(out, 0, SixDigits.print(value, out));
      assertThat(Double.parseDouble(printed)).as("%s", value).isEqualTo(SixDigits.round(value));
    }
  }
}
