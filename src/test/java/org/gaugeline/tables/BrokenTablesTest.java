package org.gaugeline.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Copies of the tables with one thing broken stop with the file and the line of the fault. */
class BrokenTablesTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      quoteCharacter = '`',
      value = {
        "solids.csv ! 8200 ! heavy ! densityKgPerM3 is not a number: 'heavy'",
        "solids.csv ! 8200 ! NaN ! densityKgPerM3 is not a finite decimal number: 'NaN'",
        "solids.csv ! 8200 ! 8200d ! densityKgPerM3 is not a finite decimal number: '8200d'",
        "solids.csv ! 8200 ! -8200 ! densityKgPerM3 must be > 0",
        "solids.csv ! solids-recalled ! nowhere ! sourceKey 'nowhere' is not in sources.csv",
        "solids.csv ! ,carbide-data ! , ! sourceKey is blank",
        "solids.csv ! hss, ! carbide, ! 'carbide' stands twice",
        "solids.csv ! poisson ! poison ! column 'poison' is not known",
        "solids.csv ! ,poisson, ! , ! column 'poisson' is missing",
        "solids.csv ! hss, ! hss,extra, ! has 9 cells",
        "solids.csv ! # units ! # unit ! is not known",
        "frictions.csv ! 0.1,0.13,0.17 ! 0.14,0.13,0.17 ! p05 ≤ median",
        "clamping-families.csv ! ,shrink, ! ,glue, ! gripModel 'glue' is not one of",
        "clamping-families.csv ! true,true,false ! yes,true,false ! sideLoad must be true or false",
        "materials.csv ! ,alloy,0.2 ! ,wood,0.2 ! steelClass 'wood' is not known",
        "iso286-it.csv ! 10,2.5 ! 5,2.5 ! upperLimitMm must ascend",
        "machine-classes.csv ! HSK-E25 ! HSK-E26 ! 'HSK-E26' is not known",
        "er-collets.csv ! ER16, ! \"ER16, ! is not comma-separated text",
        "spindle-interfaces.csv ! taper-only ! no-contact ! nativeContact 'no-contact'"
      })
  void stopsWithFileAndLine(String file, String find, String put, String message) {
    String text = TableFolder.packaged().read(file);
    assertThat(text).contains(find);
    int line = line(text, find);
    String broken =
        text.substring(0, text.indexOf(find))
            + put
            + text.substring(text.indexOf(find) + find.length());
    assertThatThrownBy(() -> ReferenceTables.load(with(file, broken)))
        .isInstanceOf(TableException.class)
        .hasMessageStartingWith(file + ":" + line + ": ")
        .hasMessageContaining(message);
  }

  @Test
  void anAliasOfTwoMaterialsStops() {
    String text = TableFolder.packaged().read("materials.csv").replace("|4140|", "|304|");
    assertThatThrownBy(() -> ReferenceTables.load(with("materials.csv", text)))
        .hasMessageStartingWith("materials.csv: ")
        .hasMessageContaining("'304' names both 42CrMo4 and X5CrNi18-10");
  }

  @Test
  void aMissingHeaderEntryStops() {
    String text = TableFolder.packaged().read("solids.csv").replaceFirst("# licence:.*\n", "");
    assertThatThrownBy(() -> ReferenceTables.load(with("solids.csv", text)))
        .hasMessage("solids.csv:1: header entry '# licence:' is missing");
  }

  @Test
  void anEmptyHeaderEntryStops() {
    String text =
        TableFolder.packaged().read("solids.csv").replaceFirst("# valid:.*\n", "# valid:\n");
    assertThatThrownBy(() -> ReferenceTables.load(with("solids.csv", text)))
        .hasMessageContaining("header entry 'valid' is empty");
  }

  @Test
  void aMissingFileStops() {
    assertThatThrownBy(() -> TableFolder.packaged().read("nothing.csv"))
        .hasMessage("nothing.csv: no such table in the package");
  }

  @Test
  void aChangedNumberChangesTheVersion() {
    String text = TableFolder.packaged().read("solids.csv").replace("8200", "8210");
    assertThat(ReferenceTables.load(with("solids.csv", text)).version())
        .isNotEqualTo(ReferenceTables.load().version());
  }

  private static int line(String text, String find) {
    return (int) text.substring(0, text.indexOf(find)).chars().filter(c -> c == '\n').count() + 1;
  }

  private static TableFolder with(String file, String text) {
    return name -> name.equals(file) ? text : TableFolder.packaged().read(name);
  }
}
