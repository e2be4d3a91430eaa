package org.gaugeline.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class TextNumberTest {
  private static final long SEED = 31;

  private static String text(double value, int digits) {
    TextBytes out = new TextBytes(1);
    TextNumber.append(out, value, digits);
    return out.toString();
  }

  @Test
  void roundsAndCarries() {
    assertThat(text(9.996, 3)).isEqualTo("10");
    assertThat(text(0.9996, 3)).isEqualTo("1");
    assertThat(text(-0.05004, 3)).isEqualTo("-0.05");
    assertThat(text(12.305, 4)).isEqualTo("12.31");
    assertThat(text(1e17, 3)).isEqualTo("100000000000000000");
    assertThat(text(1e-20, 3)).isEqualTo("0.00000000000000000001");
    assertThat(text(-0.0, 3)).isEqualTo("0");
  }

  /** Half a unit of the last digit away at most, and never written with an exponent. */
  @Test
  void staysWithinHalfOfTheLastDigit() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 20_000; round++) {
      double value = Math.pow(10, random.nextDouble(-12, 14)) * (random.nextBoolean() ? 1 : -1);
      int digits = random.nextInt(1, 7);
      String text = text(value, digits);
      String context = "seed " + SEED + ": " + value + " in " + digits + " digits: " + text;
      double last = Math.pow(10, Math.floor(Math.log10(Math.abs(value))) + 1 - digits);
      double away = Math.abs(new BigDecimal(text).doubleValue() - value);
      assertThat(away).as(context).isLessThanOrEqualTo(0.5 * Math.min(last, 1) * (1 + 1e-9));
      assertThat(text).as(context).matches("-?\\d+(\\.\\d*[1-9])?");
    }
  }
}
