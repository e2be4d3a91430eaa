package org.gaugeline.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** The file and the codes match, or nothing starts. */
class TemplatesTest {
  private final String file = file();

  private static String file() {
    try (InputStream in = TemplatesTest.class.getResourceAsStream("/wording/en.txt")) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void everyCodeHasASentence() {
    Templates.Sentences sentences = Templates.load();
    assertThat(sentences.reasons().keySet()).containsExactlyInAnyOrderElementsOf(Codes.reasons());
    assertThat(sentences.reasons().values())
        .allSatisfy(variants -> assertThat(variants).containsOnlyKeys(Variant.values()));
    assertThat(sentences.limits().keySet()).containsExactlyInAnyOrderElementsOf(Codes.limits());
  }

  @Test
  void aCodeWithoutASentenceIsRefused() {
    for (String key :
        new String[] {
          "reason.slip-margin.for", "reason.changer-mass", "caution.hot-holder", "step.heat-nose",
          "assumption.plain-shank", "limit.slip", "change./tool/shank/form", "reason.unlimited",
          "finding.holder-speed", "meaning.slip", "formula.slip", "remedy.shank-form"
        }) {
      String without = file.replaceAll("(?m)^" + key + " = .*$", "");
      assertThatThrownBy(() -> Templates.parse(without))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining(key);
    }
  }

  @Test
  void aSentenceWithoutACodeIsRefused() {
    for (String key :
        new String[] {
          "caution.gremlins",
          "reason.slip-margin.perhaps",
          "reason.luck",
          "wish.luck",
          "finding.slip",
          "finding.luck",
          "meaning.luck",
          "formula.luck",
          "remedy.luck"
        }) {
      assertThatThrownBy(() -> Templates.parse(file + key + " = Good luck.\n"))
          .hasMessageContaining(key + " has a sentence and no code");
    }
  }

  @Test
  void aSecondSentenceIsRefused() {
    assertThatThrownBy(() -> Templates.parse(file + "caution.hot-holder = Hot.\n"))
        .hasMessageContaining("caution.hot-holder is worded twice");
  }

  @Test
  void anUnknownPlaceholderIsRefused() {
    assertThatThrownBy(() -> Templates.parse(file + "caution.luck = Take {lots} of it.\n"))
        .hasMessageContaining("caution.luck: unknown placeholder {lots}");
    assertThatThrownBy(() -> Templates.parse(file + "no sentence at all\n"))
        .hasMessageContaining("no sentence at all");
  }

  /** The catalogue tells a remedy without a job, so it has no numbers to fill in. */
  @Test
  void aRemedyWithPlaceholdersIsRefused() {
    String numbered = file.replaceAll("(?m)^remedy.slip = .*$", "remedy.slip = Lose {demand}.");
    assertThatThrownBy(() -> Templates.parse(numbered))
        .hasMessageContaining("remedy.slip must be without placeholders");
  }

  @Test
  void everySentenceEndsAsOne() {
    assertThat(file.lines().filter(line -> line.contains(" = ") && !line.startsWith("#")))
        .filteredOn(line -> !line.startsWith("member."))
        .allMatch(line -> line.endsWith("."));
  }
}
