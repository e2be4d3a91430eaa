package org.gaugeline.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Objects;
import org.gaugeline.reference.Material;
import org.gaugeline.reference.MaterialIndex;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.SourceKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MaterialTableTest {
  private static final ReferenceData DATA = ReferenceTables.load();
  private static final Map<String, Material> MATERIALS = DATA.materials();
  private static final MaterialIndex INDEX = MaterialIndex.of(MATERIALS.values());

  @ParameterizedTest
  @CsvSource({
    "42CrMo4, 42CrMo4",
    "42 crmo 4, 42CrMo4",
    "4140, 42CrMo4",
    "1.7225, 42CrMo4",
    "17225, 42CrMo4",
    "304, X5CrNi18-10",
    "V2A, X5CrNi18-10",
    "1.4404, X2CrNiMo17-12-2",
    "6061, EN-AW-6061",
    "en aw-7075, EN-AW-7075",
    "D2, X153CrMoV12",
    "grey iron, EN-GJL",
    "Grauguss, EN-GJL",
    "GGG-40, EN-GJS-400-15",
    "UNS N07718, alloy-718",
    "alloy 718, alloy-718",
    "Ti64, Ti-6Al-4V",
    "17-4 PH, X5CrNiCuNb16-4",
    "Messing, CuZn39Pb3",
    "Vergütungsstahl, 42CrMo4",
    "AISI 316L, X2CrNiMo17-12-2",
    "SAE4140, 42CrMo4",
    "DIN EN 1.4301, X5CrNi18-10",
    "S30400, X5CrNi18-10",
    "GJL-250, EN-GJL-250",
    "gg 25, EN-GJL-250",
    "AW-6082, EN-AW-6082",
    "JIS S45C, C45E",
    "SUS316L, X2CrNiMo17-12-2",
    "ASTM A36, S275JR",
    "1045, C45E",
    "1020, C22E",
    "8620, 20NiCrMo2-2",
    "12L14, 11SMn30",
    "1.2311, 40CrMnMo7",
    "1.2312, 40CrMnMoS8-6",
    "1.2738, 40CrMnNiMo8-6-4",
    "H13, X40CrMoV5-1",
    "H11, X37CrMoV5-1",
    "O2, 90MnCrV8",
    "M2, HS6-5-2C",
    "303, X8CrNiS18-9",
    "430, X6Cr17",
    "904L, X1NiCrMoCu25-20-5",
    "1.4571, X6CrNiMoTi17-12-2",
    "super duplex, X2CrNiMoN25-7-4",
    "gray iron, EN-GJL",
    "ductile iron, EN-GJS-400-15",
    "CGI, EN-GJV-450",
    "ADI, EN-GJS-800-10",
    "7075, EN-AW-7075",
    "2024, EN-AW-2024",
    "AlSi10Mg, EN-AC-AlSi10Mg",
    "A380, EN-AC-AlSi12",
    "AZ91, MgAl9Zn1",
    "brass, CuZn39Pb3",
    "bronze, CuSn8",
    "NAB, CuAl10Ni5Fe4",
    "acetal, POM",
    "nylon, PA6",
    "peek, PEEK",
    "Ti grade 2, Ti-grade-2",
    "Ti-5553, Ti-5Al-5V-5Mo-3Cr",
    "718 solution annealed, alloy-718-solution",
    "UNS N10276, NiMo16Cr15W",
    "N04400, NiCu30Fe",
    "UNS N07001, NiCr20Co13Mo4Ti3Al",
    "HRC 62, hardened-steel-60-65-hrc",
    "50 HRC, hardened-steel-50-55-hrc"
  })
  void findsWhatPeopleType(String typed, String id) {
    assertThat(INDEX.find(typed)).isNotNull().isSameAs(MATERIALS.get(id));
  }

  /** Tabellenbuch Zerspantechnik, 5th ed.; encyclopaedia article on specific cutting force. */
  @ParameterizedTest
  @CsvSource({
    "S235JR, 1800, 0.20",
    "42CrMo4, 2500, 0.26",
    "S275JR, 1780, 0.17",
    "EN-GJL, 1050, 0.23",
    "EN-AW-1050, 470, 0.27",
    "X5CrNi18-10, 2000, 0.20"
  })
  void specificForces(String id, double kc11NPerMm2, double mc) {
    assertThat(get(id).kc11Pa().median()).isCloseTo(kc11NPerMm2 * 1e6, within(1.0));
    assertThat(get(id).mc()).isEqualTo(mc);
  }

  /** Machinery's Handbook 31st ed. p. 1147: 1.88 at 190 HB and 2.07 at 230 HB, alloy steel. */
  @Test
  void handbookPowerIsInterpolatedAtTheReferenceHardness() {
    double expected = 2.38e9; // 4140 class, 280 to 300 HB
    assertThat(get("42CrMo4").handbookPowerPa()).isCloseTo(expected, within(1e3));
    assertThat(get("EN-GJL").handbookPowerPa()).isNaN();
  }

  /** Machinery's Handbook 31st ed. p. 1147: end points of the alloy and plain carbon columns. */
  @Test
  void hardnessExponentIsTheSlopeOfTheHandbook() {
    double alloy = Math.log(2.73 / 1.69) / Math.log(350.0 / 150);
    double carbon = Math.log(3.11 / 1.80) / Math.log(350.0 / 110);
    assertThat(get("42CrMo4").hardnessExponent()).isCloseTo(alloy, within(0.005));
    assertThat(get("C45E").hardnessExponent()).isCloseTo(carbon, within(0.005));
  }

  @Test
  void rememberedValuesCarryAWideSpread() {
    assertThat(MATERIALS.values())
        .allSatisfy(
            material -> {
              double ratio = material.kc11Pa().p95() / material.kc11Pa().p05();
              SourceKind kind =
                  Objects.requireNonNull(DATA.sources().get(material.sourceKey())).kind();
              assertThat(ratio)
                  .as("%s of %s", material.id(), kind)
                  .isGreaterThan(kind == SourceKind.MEMORY ? 1.45 : 1.3);
            });
  }

  @Test
  void suggestsTheNearestSpelling() {
    assertThat(INDEX.find("42CrMo5")).isNull();
    assertThat(INDEX.nearest("42CrMo5", 3)).startsWith("42CrMo4");
    assertThat(INDEX.nearest("grey irn", 1)).containsExactly("EN-GJL");
    assertThat(INDEX.nearest("titan", 1)).containsExactly("Ti-6Al-4V");
    assertThat(INDEX.nearest("unobtainium", 1000)).isEmpty();
  }

  private static Material get(String id) {
    return Objects.requireNonNull(MATERIALS.get(id), id);
  }
}
