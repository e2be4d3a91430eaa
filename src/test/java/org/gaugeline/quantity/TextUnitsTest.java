package org.gaugeline.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TextUnitsTest {
  @Test
  void metric() {
    TextUnits units = TextUnits.METRIC;
    assertThat(units.length(0.0125)).isEqualTo("12.5 mm");
    assertThat(units.fineLength(3.14e-6)).isEqualTo("3.14 µm");
    assertThat(units.roughness(1.6e-6)).isEqualTo("1.6 µm");
    assertThat(units.force(12_345)).isEqualTo("12345 N");
    assertThat(units.torque(66.34)).isEqualTo("66.3 N·m");
    assertThat(units.cuttingSpeed(2)).isEqualTo("120 m/min");
    assertThat(units.power(13_250)).isEqualTo("13.3 kW");
    assertThat(units.mass(1.2)).isEqualTo("1.2 kg");
    assertThat(units.spindleSpeed(1000)).isEqualTo("9549 1/min");
  }

  @Test
  void inch() {
    TextUnits units = TextUnits.INCH;
    assertThat(units.length(0.0254)).isEqualTo("1 in");
    assertThat(units.fineLength(2.54e-6)).isEqualTo("1 tenths");
    assertThat(units.roughness(1.6e-6)).isEqualTo("63 µin");
    assertThat(units.force(4448.2216)).isEqualTo("1000 lbf");
    assertThat(units.torque(135.58)).isEqualTo("100 lbf·ft");
    assertThat(units.cuttingSpeed(2.032)).isEqualTo("400 ft/min");
    assertThat(units.power(7457)).isEqualTo("10 hp");
    assertThat(units.mass(0.45359237)).isEqualTo("1 lb");
  }

  @Test
  void writesNeitherExponentNorTrailingZeros() {
    assertThat(TextUnits.number(0, 3)).isEqualTo("0");
    assertThat(TextUnits.number(1e-7, 3)).isEqualTo("0.0000001");
    assertThat(TextUnits.number(1_200_000, 3)).isEqualTo("1200000");
    assertThat(TextUnits.number(-2.5, 3)).isEqualTo("-2.5");
  }
}
