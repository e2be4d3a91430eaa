package org.gaugeline.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.HolderCatalogue;
import org.gaugeline.reference.ReferenceData;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShopFilesTest {
  private static final ReferenceData DATA = ReferenceTables.load();
  private static final Path EXAMPLE = Path.of("src/test/resources/shop-holders");
  private static final String COLUMNS =
      "ref,family,interface,boreMm,colletSize,projectionMm,profile,count\n";

  @TempDir Path folder = Path.of(".");

  @Test
  void addsTheShopsHolders() {
    HolderCatalogue catalogue = CatalogueTables.load(DATA, EXAMPLE);
    HolderBody shrink = get(catalogue, "PUMP-SF12-L");
    assertThat(shrink.origin()).isEqualTo(HolderBody.Origin.SHOP);
    assertThat(shrink.projectionM()).isEqualTo(0.145);
    assertThat(shrink.sections()).hasSize(3);
    assertThat(shrink.minInsertionM()).isCloseTo(0.035, within(1e-12));
    assertThat(shrink.ratings().maxSpeedRadPerS()).isCloseTo(25_000 * Math.PI / 30, within(1e-9));
    assertThat(shrink.ratings().balanceGradeMPerS()).isCloseTo(0.0025, within(1e-12));
    assertThat(shrink.ratings().runoutTirM()).isCloseTo(3e-6, within(1e-15));
    assertThat(shrink.ratings().massKg()).isNaN();
    assertThat(catalogue.countByRef())
        .containsEntry("PUMP-SF12-L", 4)
        .containsEntry("PUMP-HY20", 2)
        .doesNotContainKey("PUMP-SL20");
    assertThat(catalogue.byInterface().get("HSK-A63")).contains(shrink);
    assertThat(DATA.sources()).containsKey(shrink.sourceKey());
  }

  @Test
  void completesWhatAFileLeavesOut() {
    HolderCatalogue catalogue = CatalogueTables.load(DATA, EXAMPLE);
    HolderBody collet = get(catalogue, "PUMP-ER32");
    assertThat(collet.boreM()).isCloseTo(0.020, within(1e-12));
    assertThat(collet.takes(0.012)).isTrue();
    assertThat(collet.faceContact()).isFalse();
    assertThat(get(catalogue, "PUMP-HY20").faceContact()).isTrue();
    assertThat(get(catalogue, "PUMP-HY20").sections().get(1).endDiameterM()).isEqualTo(0.046);
    assertThat(get(catalogue, "PUMP-SL20").price()).isNaN();
    assertThat(get(catalogue, "PUMP-SL20").minInsertionM()).isCloseTo(0.050, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "A,shrink-fit,HSK-A63,twelve,,60,60:63:63:12,1 ! boreMm is not a number: 'twelve'",
        "A,shrinkfit,HSK-A63,12,,60,60:63:63:12,1 ! family 'shrinkfit' is not known",
        "A,shrink-fit,HSK-B63,12,,60,60:63:63:12,1 ! interface 'HSK-B63' is not known",
        "A,shrink-fit,HSK-A63,12,,60,50:63:63:12,1 ! profile lengths add up to 50.0 mm",
        "A,shrink-fit,HSK-A63,12,,60,60:63:63,1 ! is not length:start:end:bore",
        "A,shrink-fit,HSK-A63,12,,60,60:63:x:12,1 ! has a bad number",
        "A,shrink-fit,HSK-A63,12,,60,60:11:11:12,1 ! diameters > bore",
        "A,shrink-fit,HSK-A63,,,60,60:63:63:12,1 ! boreMm is blank",
        "A,shrink-fit,HSK-A63,12,ER32,60,60:63:63:12,1 ! takes no colletSize",
        "A,er-collet,HSK-A63,,,60,60:63:63:12,1 ! needs colletSize",
        "A,shrink-fit,HSK-A63,12,,60,60:63:63:12,1.5 ! count must be a whole number",
        "A,shrink-fit,HSK-A63,12,,60,60:63:63:12,-1 ! count must be ≥ 0",
        "A,shrink-fit,HSK-A63,12,,60 ! has 6 cells"
      })
  void aBadRowStopsWithFileAndLine(String row, String message) throws IOException {
    Files.writeString(folder.resolve("own.csv"), "# own holders\n" + COLUMNS + row + "\n");
    assertThatThrownBy(() -> CatalogueTables.load(DATA, folder))
        .isInstanceOf(TableException.class)
        .hasMessageStartingWith("own.csv:3: ")
        .hasMessageContaining(message);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"ref\": 1}",
        "[\n1]",
        "[\n{\"ref\": \"A\", \"colour\": \"red\"}]",
        "[\n{\"ref\": \"A\", \"ref\": \"B\"}]",
        "[\n{\"ref\": [\"A\"]}]",
        "[\n{\"ref\": \"A\", \"profile\": [{\"lengthMm\": 5}]}]",
        "[\n{\"ref\": \"A\"}]",
        "[\n{\"ref\""
      })
  void badJsonStopsWithFileAndLine(String text) throws IOException {
    Files.writeString(folder.resolve("own.json"), text);
    assertThatThrownBy(() -> CatalogueTables.load(DATA, folder))
        .isInstanceOf(TableException.class)
        .hasMessageStartingWith("own.json:" + (text.startsWith("[") ? 2 : 1) + ": ");
  }

  @Test
  void theSameRefTwiceStops() throws IOException {
    String row = "A,shrink-fit,HSK-A63,12,,60,60:63:63:12,1\n";
    Files.writeString(folder.resolve("own.csv"), COLUMNS + row + row);
    assertThatThrownBy(() -> CatalogueTables.load(DATA, folder))
        .hasMessage("own.csv:3: ref 'A' stands twice");
  }

  @Test
  void anUnknownColumnAndAMissingFolderStop() throws IOException {
    Files.writeString(folder.resolve("own.csv"), "ref,familiy\n");
    assertThatThrownBy(() -> CatalogueTables.load(DATA, folder))
        .hasMessage("own.csv:1: column 'familiy' is not known");
    assertThatThrownBy(() -> CatalogueTables.load(DATA, folder.resolve("none")))
        .hasMessageContaining("is not a folder that can be read");
  }

  private static HolderBody get(HolderCatalogue catalogue, String ref) {
    return Objects.requireNonNull(catalogue.byRef().get(ref), ref);
  }
}
