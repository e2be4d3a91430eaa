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

  private static String printed(double value) {
    TextBytes out = new TextBytes(1);
    SixDigits.append(out, value);
    return out.toString();
  }

  @Test
  void printsTheDecimalThatRoundingGives() {
    SplittableRandom random = new SplittableRandom(SEED + 2);
    for (int i = 0; i < 50_000; i++) {
      double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(-12, 16));
      assertPrintsAsItRounds(value, "seed " + (SEED + 2) + ", value " + value);
    }
    for (int exponent = -15; exponent < 20; exponent++) {
      double power = Double.parseDouble("1e" + exponent);
      for (double value : new double[] {power, Math.nextUp(power), Math.nextDown(power)}) {
        assertPrintsAsItRounds(value, "value " + value);
        assertPrintsAsItRounds(-value, "value " + -value);
      }
    }
  }

  private static void assertPrintsAsItRounds(double value, String why) {
    String printed = printed(value);
    assertThat(Double.parseDouble(printed))
        .as(why)
        .isEqualTo(decimal(value, RoundingMode.HALF_EVEN));
    double magnitude = Math.abs(value);
    if (magnitude > 1.1e-6 && magnitude < 0.9e9) {
      assertThat(printed).as(why).matches("-?(0|[1-9]\\d*)(\\.\\d*[1-9])?");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "100, 100",
    "-1, -1",
    "999999.5, 1000000",
    "123456789, 123457000",
    "0.000123456789, 0.000123457",
    "-12.5, -12.5"
  })
  void printsPlainly(double value, String plain) {
    assertThat(printed(value)).isEqualTo(plain);
  }
}
