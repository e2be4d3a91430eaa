package org.gaugeline.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.gaugeline.reference.ItemSymbol;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.tables.ReferenceTables;
import org.gaugeline.tables.SymbolTables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Symbols of ISO 13399 as published in the open schema of that standard and in the device schema of
 * machine tools; HAND and TP from memory.
 */
class SymbolLinesTest {
  private static final ReferenceData DATA = ReferenceTables.load();
  private static final List<ItemSymbol> TABLE = SymbolTables.load(DATA);
  private static final SymbolLines SYMBOLS = new SymbolLines(TABLE);

  private static JsonNode mapped(String line) {
    ObjectNode tree = (ObjectNode) ContractSchemas.parse(line.replace('\'', '"'));
    List<Fault> faults = new ArrayList<>();
    SYMBOLS.apply(tree, faults);
    assertThat(faults).isEmpty();
    return tree;
  }

  @Test
  void coversTheSymbolsThatToolListsUse() {
    assertThat(TABLE.stream().map(ItemSymbol::symbol))
        .contains(
            "DC", "NOF", "FHA", "LF", "OAL", "LCF", "APMX", "DMM", "DCONMS", "CZCMS", "LPR", "BD",
            "RPMX", "WT");
  }

  @Test
  void everyPathIsAMemberOfTheContract() {
    Schema line = ContractDocument.load().schema("AssessmentIntent");
    for (ItemSymbol symbol : TABLE) {
      Schema at = line;
      for (String step : symbol.path().substring(1).split("/", -1)) {
        at =
            Objects.requireNonNull(
                step.equals("0") ? at.items() : at.properties().get(step), symbol.path());
      }
      assertThat(at.kind()).as(symbol.path()).isNotEqualTo(Schema.Kind.OBJECT);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{'DC':12} | /tool/diameterMm | 12",
        "{'NOF':4.0} | /tool/teeth | 4",
        "{'FHA':40} | /tool/helixDeg | 40",
        "{'APMX':24} | /tool/fluteLengthMm | 24",
        "{'APMX':24,'LCF':26} | /tool/fluteLengthMm | 26",
        "{'OAL':83} | /tool/overallLengthMm | 83",
        "{'DCONMS':12} | /tool/shank/diameterMm | 12",
        "{'DCONMS':12,'DMM':16} | /tool/shank/diameterMm | 16",
        "{'HAND':'L'} | /tool/hand | left",
        "{'CZCMS':'HSK A 63'} | /assembly/components/0/interface | HSK-A63",
        "{'CZCMS':'HSKA063'} | /machine/interface | HSK-A63",
        "{'CZCMS':'HSK63A','machine':{'interface':'HSK-A100'}} | /machine/interface | HSK-A100",
        "{'CZCMS':'HSK100A'} | /machine/interface | HSK-A100",
        "{'CZCMS':'PSC C6'} | /machine/interface | PSC-C6",
        "{'CZCMS':'BT 40'} | /machine/interface | BT40",
        "{'CZCMS':'something'} | /machine/interface | something",
        "{'LPR':100} | /assembly/components/0/projectionMm | 100",
        "{'LPR':100,'BD':50} | /assembly/components/0/profile/0/diameterMm | 50",
        "{'LPR':100,'BD':50} | /assembly/components/0/profile/0/lengthMm | 100",
        "{'WT':1.4} | /assembly/components/0/massKg | 1.4",
        "{'RPMX':20000} | /tool/maxSpindleSpeedRpm | 20000",
        "{'LF':145} | /assembly/measured/gaugeLengthMm | 145",
        "{'LF':145,'LPR':100,'assembly':{'measured':{'gaugeLengthMm':200}}}"
            + " | /assembly/measured/gaugeLengthMm | 200",
        "{'BD':50,'assembly':{'components':[{'projectionMm':90}]}}"
            + " | /assembly/components/0/profile/0/lengthMm | 90",
        "{'LF':145,'LPR':100} | /assembly/stickOutMm | 45.0",
        "{'tool':{'DC':12}} | /tool/diameterMm | 12",
        "{'tool':{'DC':12,'diameterMm':10}} | /tool/diameterMm | 10",
        "{'assembly':{'components':[{'ref':'x','LPR':90,'RPMX':9000}]}}"
            + " | /assembly/components/0/maxSpindleSpeedRpm | 9000"
      })
  void standsForTheContractsMember(String line, String pointer, String value) {
    assertThat(mapped(line).at(pointer).asText()).isEqualTo(value);
  }

  @Test
  void leavesNoSymbolBehind() {
    JsonNode line = mapped("{'DC':12,'LF':145,'LPR':100,'BD':50,'CZCMS':'BT40','tool':{'NOF':3}}");
    assertThat(line.findParent("DC")).isNull();
    assertThat(line.findParent("LF")).isNull();
    assertThat(line.at("/assembly/measured").isMissingNode()).isTrue();
    assertThat(line.at("/tool/teeth").asInt()).isEqualTo(3);
  }

  @Test
  void asksForTheLengthOfABodyOfWhichOnlyTheDiameterIsSaid() {
    ObjectNode line = (ObjectNode) ContractSchemas.parse("{\"BD\":50}");
    List<Fault> faults = new ArrayList<>();
    SYMBOLS.apply(line, faults);
    assertThat(faults).extracting(Fault::code).containsExactly("projection-needed");
  }

  /** Whatever stands beside symbols, a line is read, and what is wrong is found later. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "{'LPR':75,'LF':120,'assembly':'x'}",
        "{'LPR':75,'LF':120,'assembly':null}",
        "{'LPR':75,'LF':120,'assembly':1}",
        "{'DMM':10,'DCONMS':10,'tool':[1]}",
        "{'LPR':75,'assembly':{'components':'x'}}",
        "{'LPR':75,'assembly':{'components':[[]]}}",
        "{'CZCMS':{},'machine':[]}",
        "{'LF':'x','LPR':[]}",
        "{'NOF':'x','HAND':7,'BD':null,'LPR':1}"
      })
  void bearsAnythingBesideSymbols(String line) {
    ObjectNode tree = (ObjectNode) ContractSchemas.parse(line.replace('\'', '"'));
    SYMBOLS.apply(tree, new ArrayList<>());
    assertThat(tree.has("LPR") || tree.has("DMM") || tree.has("NOF")).isFalse();
  }
}
