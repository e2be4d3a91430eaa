package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gaugeline.assembly.GivenAssembly;
import org.gaugeline.assembly.Measured;
import org.gaugeline.assessment.DerivationStep;
import org.gaugeline.job.StockEntry;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every line of a derivation that has a formula follows from the lines before it. */
class DerivationTest {
  private static final Assessor ASSESSOR = new Assessor(Bench.DATA, Bench.CATALOGUE, Bench.ADVISOR);

  @ParameterizedTest
  @CsvSource({
    "01-impeller-hub-side-milling, g-hsk-a63-er-collet-er32-p100",
    "16-volute-deep-wall, g-hsk-a63-hydraulic-20-p75+x-shrink-fit-12-s20-l100",
    "06-manifold-drilling, g-bt40-shrink-fit-10-p75"
  })
  void recomputesFromItsOwnLines(String demo, String ref) {
    GivenAssembly given =
        new GivenAssembly(
            List.of(
                new GivenAssembly.Component(
                    "/assembly/components/0", null, ref, StockEntry.InlineHolder.NONE)),
            null,
            Measured.NONE);
    List<DerivationStep> steps = ASSESSOR.judge(Intents.demo(demo).intent(), given).derivation();
    Map<String, Double> known = new LinkedHashMap<>();
    int computed = 0;
    for (DerivationStep step : steps) {
      assertThat(known).as("symbols are unique").doesNotContainKey(step.symbol());
      if (!step.formula().isEmpty()) {
        double again = new Arithmetic(step.formula(), known).value();
        assertThat(again)
            .as("%s = %s", step.symbol(), step.formula())
            .isCloseTo(step.value(), within(1e-9 * Math.abs(step.value()) + 1e-300));
        computed++;
      }
      known.put(step.symbol(), step.value());
    }
    assertThat(computed).isGreaterThan(12);
  }

  /** Sums, products, powers, sqrt and ln of symbols: what a pocket calculator does. */
  private static final class Arithmetic {
    private final String text;
    private final Map<String, Double> known;
    private int at;

    Arithmetic(String formula, Map<String, Double> known) {
      this.text = formula.replace(" ", "");
      this.known = known;
    }

    double value() {
      double value = sum();
      assertThat(at).as("all of %s is read", text).isEqualTo(text.length());
      return value;
    }

    private double sum() {
      double value = product();
      while (at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-')) {
        boolean plus = text.charAt(at++) == '+';
        double next = product();
        value += plus ? next : -next;
      }
      return value;
    }

    private double product() {
      double value = power();
      while (at < text.length() && (text.charAt(at) == '*' || text.charAt(at) == '/')) {
        boolean times = text.charAt(at++) == '*';
        double next = power();
        value = times ? value * next : value / next;
      }
      return value;
    }

    private double power() {
      double base = atom();
      if (at < text.length() && text.charAt(at) == '^') {
        at++;
        return Math.pow(base, atom());
      }
      return base;
    }

    private double atom() {
      if (text.charAt(at) == '(') {
        at++;
        double value = sum();
        at++;
        return value;
      }
      int from = at;
      while (at < text.length()
          && (Character.isLetterOrDigit(text.charAt(at)) || text.charAt(at) == '_')) {
        at++;
      }
      String word = text.substring(from, at);
      if (word.equals("sqrt") || word.equals("ln")) {
        double inside = atom();
        return word.equals("sqrt") ? Math.sqrt(inside) : Math.log(inside);
      }
      Double value = known.get(word);
      return value == null ? Double.parseDouble(word) : value;
    }
  }
}
