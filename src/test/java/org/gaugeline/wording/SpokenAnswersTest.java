package org.gaugeline.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import java.util.regex.Pattern;
import org.gaugeline.quantity.TextUnits;
import org.junit.jupiter.api.Test;

/** Whole answers in words, over seeded jobs. */
class SpokenAnswersTest {
  private static final long SEED = 4_711;
  private static final int ROUNDS = 300;
  private static final String END = "(?=[ .,;:)]|$)";
  private static final Pattern METRIC =
      Pattern.compile("\\d (mm|µm|m/min|N|kN|N·m|kW|kg|K|N/mm²)" + END);
  private static final Pattern INCH =
      Pattern.compile("\\d (in|tenths|µin|ft/min|lbf|klbf|lbf·ft|hp|lb|°F|ksi)" + END);
  private static final Pattern UNFILLED =
      Pattern.compile("[{}\\[\\]]|NaN|Infinity|null|unknown amount| {2}| [.,;:]");

  private final Spoken words = new Spoken(TemplateWords.load());

  @Test
  void textKeepsToTheUnitsAskedFor() {
    Answers.forEach(
        SEED,
        ROUNDS,
        (intent, answer) ->
            assertThat(Answers.texts(words, answer))
                .as("seed %d: %s", SEED, intent)
                .noneMatch(
                    text ->
                        (intent.textUnits() == TextUnits.INCH ? METRIC : INCH)
                            .matcher(text)
                            .find()));
  }

  @Test
  void everyBlankIsFilled() {
    Answers.forEach(
        SEED,
        ROUNDS,
        (intent, answer) ->
            assertThat(Answers.texts(words, answer))
                .as("seed %d: %s", SEED, intent)
                .isNotEmpty()
                .allMatch(text -> text.endsWith("."))
                .noneMatch(text -> UNFILLED.matcher(text).find()));
  }

  @Test
  void theUnitsOfTextChangeNoNumber() {
    Answers.forEach(
        SEED,
        ROUNDS / 10,
        (intent, answer) -> {
          TextUnits other =
              intent.textUnits() == TextUnits.INCH ? TextUnits.METRIC : TextUnits.INCH;
          assertThat(Objects.requireNonNull(Answers.answer(Jobs.in(other, intent))))
              .as("seed %d: %s", SEED, intent)
              .usingRecursiveComparison()
              .withComparatorForType(Double::compare, Double.class)
              .ignoringFields("job.textUnits")
              .isEqualTo(answer);
        });
  }
}
