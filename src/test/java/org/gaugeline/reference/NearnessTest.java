package org.gaugeline.reference;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Slips of the keyboard are near, other names are not. */
class NearnessTest {
  @Test
  void doesNotCountCaseAndSeparators() {
    assertThat(distance("hsk a 63", "HSK-A63")).isZero();
  }

  @Test
  void countsWrongDigitsMoreThanSwappedBlocks() {
    assertThat(distance("HSK63A", "HSK-A63")).isLessThan(distance("HSK63A", "HSK-A32"));
    assertThat(distance("HSK63A", "HSK-A63")).isLessThan(distance("HSK63A", "HSK-A80"));
  }

  @Test
  void takesABeginningAsNear() {
    assertThat(distance("axialDepth", "axialDepthMm"))
        .isLessThan(distance("axialDpeth", "axialDepth"));
    assertThat(distance("x", "xenon")).isEqualTo(Nearness.FAR);
  }

  @Test
  void leavesOutWhatIsFar() {
    assertThat(distance("Morse 4", "HSK-A63")).isEqualTo(Nearness.FAR);
    assertThat(distance("listen", "silent-x")).isEqualTo(Nearness.FAR);
    assertThat(distance("C45", "GG25")).isEqualTo(Nearness.FAR);
    assertThat(distance("", "C45")).isEqualTo(Nearness.FAR);
  }

  private static int distance(String typed, String known) {
    return Nearness.of(Nearness.fold(typed), Nearness.fold(known));
  }
}
