package org.gaugeline.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.gaugeline.tables.ReferenceTables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MaterialSpellingsTest {
  private static final Map<String, Material> MATERIALS = ReferenceTables.load().materials();
  private static final MaterialIndex INDEX = MaterialIndex.of(MATERIALS.values());

  @Test
  void noSpellingStandsTwiceInTheTable() {
    Map<String, String> named = new HashMap<>();
    for (Material material : MATERIALS.values()) {
      Stream.concat(Stream.of(material.id()), material.aliases().stream())
          .forEach(
              name -> {
                String other = named.put(MaterialIndex.spelling(name), material.id() + ": " + name);
                assertThat(other).as("%s: %s", material.id(), name).isNull();
              });
    }
  }

  @Test
  void everyNameFindsItsRow() {
    assertThat(MATERIALS.values())
        .allSatisfy(
            material -> {
              assertThat(INDEX.find(material.id())).isSameAs(material);
              assertThat(material.aliases())
                  .allSatisfy(alias -> assertThat(INDEX.find(alias)).isSameAs(material));
            });
  }

  @ParameterizedTest
  @CsvSource({
    "AISI 304, 304",
    "aisi304, 304",
    "DIN EN 1.4301, 14301",
    "UNS S30400, s30400",
    "EN-GJL-250, gjl250",
    "SAE 4140, 4140",
    "engineering steel, engineeringsteel",
    "Jisco 4, jisco4",
    "EN, en",
    "EN-, en"
  })
  void aStandardsNameInFrontDoesNotMatter(String typed, String spelling) {
    assertThat(MaterialIndex.spelling(typed)).isEqualTo(spelling);
  }
}
