package org.gaugeline.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class SentenceTest {
  /** Has a value, lacks a subject. */
  private static final Filling FILLING =
      new Filling() {
        @Override
        public boolean has(Placeholder placeholder) {
          return placeholder == Placeholder.VALUE;
        }

        @Override
        public void write(StringBuilder out, Placeholder placeholder) {
          out.append(placeholder == Placeholder.VALUE ? "7 mm" : "?");
        }
      };

  @Test
  void fillsValues() {
    assertThat(Sentence.parse("Take {value}.").with(FILLING)).isEqualTo("Take 7 mm.");
    assertThat(Sentence.parse("{value}{value}").with(FILLING)).isEqualTo("7 mm7 mm");
  }

  @Test
  void leavesOutWhatHasNoValue() {
    assertThat(Sentence.parse("Turn[ to {value}][ of {subject}], gently.").with(FILLING))
        .isEqualTo("Turn to 7 mm, gently.");
  }

  @Test
  void isTheSameStringWhereNothingIsFilled() {
    Sentence sentence = Sentence.parse("Close the guard.");
    assertThat(sentence.with(FILLING)).isSameAs(sentence.with(FILLING));
  }

  @Test
  void refusesWhatItCannotRead() {
    assertThatThrownBy(() -> Sentence.parse("{luck}")).hasMessageContaining("{luck}");
    assertThatThrownBy(() -> Sentence.parse("a [b")).hasMessageContaining("no ]");
    assertThatThrownBy(() -> Sentence.parse("a {value")).hasMessageContaining("no }");
  }
}
