package org.gaugeline.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import org.gaugeline.reference.AllowedRunout;
import org.gaugeline.reference.IsoGroup;
import org.gaugeline.reference.Material;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.Stage;
import org.gaugeline.reference.StartingValue;
import org.gaugeline.reference.Substrate;
import org.junit.jupiter.api.Test;

class ReferenceTablesTest {
  private static final ReferenceData DATA = ReferenceTables.load();

  @Test
  void versionIsStableAndShort() {
    assertThat(DATA.version()).matches("[0-9a-f]{12}");
    assertThat(ReferenceTables.load().version()).isEqualTo(DATA.version());
  }

  @Test
  void everySourceHasCitationAndLicence() {
    assertThat(DATA.sources().values())
        .allSatisfy(
            source -> {
              assertThat(source.citation()).isNotBlank();
              assertThat(source.licence()).isNotBlank();
            });
  }

  @Test
  void everySourceIsUsedAndEveryTableNamesItsTest() throws ClassNotFoundException {
    StringBuilder all = new StringBuilder();
    for (String file : ReferenceTables.FILES) {
      String text = TableFolder.packaged().read(file);
      String test = text.lines().filter(l -> l.startsWith("# checked-by: ")).findFirst().orElse("");
      assertThat(Class.forName(test.substring("# checked-by: ".length()))).as(file).isNotNull();
      if (!file.equals("sources.csv")) {
        all.append(text.replace('\n', ',')).append(',');
      }
    }
    assertThat(DATA.sources().values())
        .filteredOn(source -> !source.key().equals(ShopHolder.SOURCE))
        .filteredOn(source -> !source.note().startsWith("named by a model"))
        .allSatisfy(source -> assertThat(all).contains("," + source.key() + ","));
  }

  @Test
  void materialsCoverEveryGroup() {
    assertThat(DATA.materials()).hasSizeGreaterThanOrEqualTo(64);
    for (IsoGroup group : IsoGroup.values()) {
      assertThat(DATA.materials().values()).as(group.id()).anyMatch(m -> m.isoGroup() == group);
    }
  }

  @Test
  void listsEveryFamilyOfTheContract() {
    assertThat(DATA.families().keySet())
        .containsExactlyInAnyOrder(
            "side-lock",
            "inclined-side-lock",
            "er-collet",
            "precision-collet",
            "milling-chuck",
            "shrink-fit",
            "hydraulic",
            "high-torque-hydraulic",
            "shell-mill-arbor",
            "disc-arbor",
            "tapping-chuck",
            "floating-reamer-holder",
            "drill-chuck");
  }

  @Test
  void everyMachinabilityHasStartingValuesForEveryToolClass() {
    Set<String> have = new HashSet<>();
    for (StartingValue value : DATA.startingValues()) {
      assertThat(have.add(value.machinability() + value.toolClass() + value.substrate()))
          .as("%s", value)
          .isTrue();
      assertThat(value.minCuttingSpeedMPerS()).isLessThanOrEqualTo(value.cuttingSpeedMPerS());
      assertThat(value.maxCuttingSpeedMPerS()).isGreaterThanOrEqualTo(value.cuttingSpeedMPerS());
      assertThat(value.minFeedM()).isLessThan(value.maxFeedM());
    }
    for (Material material : DATA.materials().values()) {
      for (StartingValue.ToolClass tool : StartingValue.ToolClass.values()) {
        assertThat(have)
            .contains(
                material.machinability() + tool + Substrate.CARBIDE,
                material.machinability() + tool + Substrate.HSS);
      }
    }
  }

  @Test
  void everyOperationStageAndSubstrateHasExactlyOneAllowedRunout() {
    for (OperationKind kind : OperationKind.values()) {
      assertThat(DATA.capabilities()).containsKey(kind);
      for (Stage stage : Stage.values()) {
        for (Substrate substrate : Substrate.values()) {
          assertThat(DATA.allowedRunouts().stream().filter(r -> covers(r, kind, stage, substrate)))
              .as("%s %s %s", kind, stage, substrate)
              .hasSize(1);
        }
      }
    }
  }

  @Test
  void everyInterfaceHasExactlyOneMachineClass() {
    for (String id : DATA.interfaces().keySet()) {
      assertThat(DATA.machineClasses().stream().filter(m -> m.interfaceIds().contains(id)))
          .as(id)
          .hasSize(1);
    }
  }

  @Test
  void everySubstrateHasItsSolid() {
    for (Substrate substrate : Substrate.values()) {
      assertThat(DATA.solids()).containsKey(substrate.id());
    }
  }

  private static boolean covers(
      AllowedRunout row, OperationKind kind, Stage stage, Substrate substrate) {
    return row.operations().contains(kind)
        && row.stages().contains(stage)
        && row.substrates().contains(substrate);
  }
}
