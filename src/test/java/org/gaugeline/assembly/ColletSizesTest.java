package org.gaugeline.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.tables.CatalogueTables;
import org.gaugeline.tables.ReferenceTables;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Which shanks a collet takes, and how far it closes on them: collets are made a millimetre apart,
 * the smallest half a millimetre (common practice after ISO 15488).
 */
class ColletSizesTest {
  private static final ReferenceData DATA = ReferenceTables.load();
  private static final HolderCatalogue CATALOGUE = CatalogueTables.load(DATA, null);

  private static HolderBody chuck(String size) {
    List<HolderBody> all = CATALOGUE.byInterface().getOrDefault("HSK-A63", List.of());
    return all.stream()
        .filter(b -> b.family().id().equals("er-collet"))
        .filter(b -> b.colletSize() != null && b.colletSize().id().equals(size))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "ER11, 3.175, 0.325",
    "ER11, 4.7625, 0.2375",
    "ER11, 6.35, 0.15",
    "ER11, 6, 0",
    "ER11, 6.5, 0",
    "ER16, 6.35, 0.65",
    "ER16, 9.525, 0.475",
    "ER32, 12.7, 0.3",
    "ER32, 12, 0"
  })
  void takesInchShanksToo(String size, double shankMm, double closesMm) {
    HolderBody chuck = chuck(size);
    assertThat(chuck.takes(shankMm * 1e-3)).as("%s on %s mm", size, shankMm).isTrue();
    assertThat(chuck.colletClosesByM(shankMm * 1e-3)).isCloseTo(closesMm * 1e-3, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"ER11, 7.1", "ER11, 0.4", "ER16, 10.5", "ER32, 20.1"})
  void refusesWhatIsOutsideOfItsRange(String size, double shankMm) {
    assertThat(chuck(size).takes(shankMm * 1e-3)).isFalse();
  }
}
