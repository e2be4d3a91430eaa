package org.gaugeline.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.gaugeline.quantity.TextBytes;
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
        public void write(TextBytes out, Placeholder placeholder) {
          out.append(placeholder == Placeholder.VALUE ? "7 mm" : "?");
        }
      };

  private static String said(String template) {
    TextBytes out = new TextBytes(1);
    Sentence.parse(template).write(out, FILLING);
    return out.toString();
  }

  @Test
  void fillsValues() {
    assertThat(said("Take {value}.")).isEqualTo("Take 7 mm.");
    assertThat(said("{value}{value}")).isEqualTo("7 mm7 mm");
  }

  @Test
  void leavesOutWhatHasNoValue() {
    assertThat(said("Turn[ to {value}][ of {subject}], gently."))
        .isEqualTo("Turn to 7 mm, gently.");
  }

  @Test
  void saysWhatIsNotAscii() {
    assertThat(said("≥ {value} – 5 µm")).isEqualTo("≥ 7 mm – 5 µm");
  }

  @Test
  void refusesWhatItCannotRead() {
    assertThatThrownBy(() -> Sentence.parse("{luck}")).hasMessageContaining("{luck}");
    assertThatThrownBy(() -> Sentence.parse("a [b")).hasMessageContaining("no ]");
    assertThatThrownBy(() -> Sentence.parse("a {value")).hasMessageContaining("no }");
  }
}
