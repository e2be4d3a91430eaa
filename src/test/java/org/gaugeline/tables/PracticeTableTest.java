package org.gaugeline.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.gaugeline.quantity.UnitSuffix;
import org.gaugeline.reference.ReferenceData;
import org.junit.jupiter.api.Test;

class PracticeTableTest {
  private static final ReferenceData DATA = ReferenceTables.load();

  @Test
  void everyIdWithAUnitIsInSi() {
    assertThat(DATA.practices().keySet())
        .allSatisfy(
            id -> {
              UnitSuffix unit = UnitSuffix.findOf(id);
              assertThat(unit == null || unit.factorToSi() == 1 || id.endsWith("PerM"))
                  .as(id)
                  .isTrue();
            });
  }

  /** Machinery's Handbook, recalled: feed factor 1.0 at 0.30, 1.25 at 0.10, 1.40 at 0.05 mm. */
  @Test
  void thinChipExponentFitsTheFeedFactors() {
    double x = DATA.practice("thinChipExponent");
    assertThat(Math.pow(0.30 / 0.10, x)).isCloseTo(1.25, within(0.02));
    assertThat(Math.pow(0.30 / 0.05, x)).isCloseTo(1.40, within(0.03));
  }

  /**
   * "Shrink-fit toolholder fundamentals", Cutting Tool Engineering, Sep 2013: about 0.01 mm is
   * typical of tool holders.
   */
  @Test
  void shrinkInterferenceIsOfThePublishedSize() {
    double base = DATA.practice("shrinkInterferenceBaseM");
    double slope = DATA.practice("shrinkInterferenceSlope");
    assertThat(base + slope * 0.006).isCloseTo(1e-5, within(1e-6));
    assertThat(base + slope * 0.020).isCloseTo(2.1e-5, within(1e-9));
  }

  /**
   * Trade article with drilling test, Cutting Tool Engineering, Jul 2010: 148 holes at 2 µm, 125 at
   * 5 µm, about 5 % a micrometre; the rule takes 4 %.
   */
  @Test
  void lifeLossIsNearTheDrillingTest() {
    double perMetre = DATA.practice("lifeLossPerRunoutPerM");
    double measured = (1 - 125.0 / 148) / 3e-6;
    assertThat(perMetre).isBetween(0.6 * measured, measured);
  }

  @Test
  void aMissingValueIsNamed() {
    assertThatThrownBy(() -> DATA.practice("noSuchValue")).hasMessageContaining("noSuchValue");
  }
}
