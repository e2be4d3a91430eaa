package org.gaugeline.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.HolderCatalogue;
import org.gaugeline.assembly.ProfileSection;
import org.gaugeline.reference.ArborSize;
import org.gaugeline.reference.ContactMode;
import org.gaugeline.reference.GripModel;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.ShankSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GenericSeriesTest {
  private static final ReferenceData DATA = ReferenceTables.load();
  private static final HolderCatalogue CATALOGUE = CatalogueTables.load(DATA, null);
  private static final Map<String, HolderBody> BODIES = CATALOGUE.byRef();

  @Test
  void everyInterfaceHasBodiesOfTheCoveredFamilies() {
    assertThat(BODIES).hasSizeBetween(5_000, 14_000);
    CATALOGUE
        .byInterface()
        .forEach(
            (id, bodies) -> {
              assertThat(bodies).as(id).hasSizeGreaterThan(20);
              Set<String> families = new TreeSet<>();
              bodies.forEach(body -> families.add(body.family().id()));
              assertThat(families).as(id).contains("er-collet", "shrink-fit");
            });
    Set<String> families = new TreeSet<>();
    BODIES.values().forEach(body -> families.add(body.family().id()));
    assertThat(families)
        .containsExactly(
            "disc-arbor",
            "drill-chuck",
            "er-collet",
            "floating-reamer-holder",
            "high-torque-hydraulic",
            "hydraulic",
            "inclined-side-lock",
            "milling-chuck",
            "precision-collet",
            "shell-mill-arbor",
            "shrink-fit",
            "side-lock",
            "tapping-chuck");
  }

  @Test
  void profilesAddUpToTheProjectionAndKeepAWall() {
    for (HolderBody body : BODIES.values()) {
      double sum = 0;
      for (ProfileSection section : body.sections()) {
        sum += section.lengthM();
        double wall =
            (Math.min(section.startDiameterM(), section.endDiameterM()) - section.boreM()) / 2;
        assertThat(wall).as(body.ref()).isGreaterThan(0.0019);
      }
      assertThat(sum).as(body.ref()).isCloseTo(body.projectionM(), within(1e-9));
      assertThat(body.minInsertionM()).as(body.ref()).isLessThanOrEqualTo(body.maxInsertionM());
      assertThat(body.maxInsertionM()).as(body.ref()).isLessThan(body.projectionM());
      assertThat(body.sections().get(0).startDiameterM())
          .as(body.ref())
          .isEqualTo(body.spindleInterface().flangeDiameterM());
      assertThat(body.price()).as(body.ref()).isGreaterThan(50);
      assertThat(DATA.sources()).containsKey(body.sourceKey());
    }
  }

  @Test
  void fixedBoresAreStandardShanksWithTheirInsertion() {
    for (HolderBody body : BODIES.values()) {
      boolean fixed = body.colletSize() == null && body.family().gripModel() != GripModel.JAWS;
      if (fixed && !isArbor(body)) {
        ShankSize shank =
            DATA.shankSizes().stream()
                .filter(s -> body.takes(s.diameterM()))
                .findFirst()
                .orElseThrow(() -> new AssertionError(body.ref() + " fits no standard shank"));
        double least =
            body.family().id().endsWith("side-lock") ? shank.lengthM() : shank.minInsertionM();
        assertThat(body.minInsertionM()).as(body.ref()).isCloseTo(least, within(1e-9));
      }
    }
  }

  @Test
  void arborsAreShortAndCarryStandardBores() {
    List<HolderBody> arbors = BODIES.values().stream().filter(GenericSeriesTest::isArbor).toList();
    assertThat(arbors).hasSizeGreaterThan(500);
    assertThat(arbors)
        .allSatisfy(
            body -> {
              ArborSize size = DATA.arborOfBore(body.boreM(), 0);
              assertThat(size).as(body.ref()).isNotNull();
              assertThat(body.minInsertionM())
                  .as("pilot of %s", body.ref())
                  .isEqualTo(Objects.requireNonNull(size).pilotLengthM());
              assertThat(body.projectionM()).as(body.ref()).isLessThanOrEqualTo(0.16);
              assertThat(nose(body)).as(body.ref()).isGreaterThan(1.5 * body.boreM());
            });
  }

  private static boolean isArbor(HolderBody body) {
    return body.family().gripModel() == GripModel.ARBOR
        || body.family().gripModel() == GripModel.DISC_ARBOR;
  }

  @Test
  void onlySteepTapersComeWithAndWithoutFaceContact() {
    for (HolderBody body : BODIES.values()) {
      boolean steep = body.spindleInterface().nativeContact() == ContactMode.TAPER_ONLY;
      assertThat(body.faceContact()).as(body.ref()).isEqualTo(!steep || body.ref().endsWith("-fc"));
      if (steep && !body.faceContact()) {
        HolderBody dearer = get(body.ref() + "-fc");
        assertThat(dearer.price()).isGreaterThan(body.price());
        assertThat(dearer.sections()).isEqualTo(body.sections());
      }
    }
  }

  @Test
  void inchBoresComeOnInchFlangesOnly() {
    assertThat(BODIES.keySet().stream().filter(ref -> ref.contains("in-p")))
        .isNotEmpty()
        .allMatch(ref -> ref.startsWith("g-cat"));
    assertThat(get("g-cat40-side-lock-1-2in-p100").boreM()).isCloseTo(0.0127, within(1e-9));
  }

  /**
   * Empty holders: 0.5–1 kg size 30, 1–2 kg size 40, 3–6 kg size 50 (common practice), ± a third.
   */
  @ParameterizedTest
  @CsvSource({
    "g-hsk-a63-shrink-fit-12-p100, 1.0, 1.35",
    "g-hsk-a63-shrink-fit-slim-12-p100, 0.8, 1.2",
    "g-bt30-shrink-fit-6-p60, 0.4, 0.9",
    "g-bt30-er-collet-er20-p60, 0.4, 1.1",
    "g-bt40-shrink-fit-12-p75, 0.9, 1.6",
    "g-bt40-er-collet-er32-p75, 0.9, 2.0",
    "g-bt50-shrink-fit-20-p120, 3.0, 5.5",
    "g-bt50-er-collet-er40-p120, 3.0, 6.5",
    "g-hsk-e25-er-collet-er11-p50, 0.06, 0.25",
    "g-hsk-a100-shrink-fit-20-p160, 2.5, 5.0"
  })
  void massesAreThoseOfRealHolders(String ref, double fromKg, double toKg) {
    assertThat(massKg(get(ref))).isBetween(fromKg, toKg);
  }

  @Test
  void noBodyIsLighterOrHeavierThanHoldersAre() {
    assertThat(BODIES.values())
        .allSatisfy(
            body -> assertThat(massKg(body)).as(body.ref()).isGreaterThan(0.05).isLessThan(17));
  }

  @Test
  void slimNosesAreSlimmer() {
    HolderBody slim = get("g-hsk-a63-shrink-fit-slim-12-p130");
    HolderBody plain = get("g-hsk-a63-shrink-fit-12-p130");
    assertThat(nose(slim)).isLessThan(0.8 * nose(plain));
  }

  private static double nose(HolderBody body) {
    return body.sections().get(body.sections().size() - 1).endDiameterM();
  }

  /** Mass of steel sections by midpoint slices, plus the shank of the interface. */
  private static double massKg(HolderBody body) {
    double mass = body.spindleInterface().shankMassKg();
    int slices = 40;
    for (ProfileSection s : body.sections()) {
      for (int i = 0; i < slices; i++) {
        double at = (i + 0.5) / slices;
        double diameter = s.startDiameterM() + at * (s.endDiameterM() - s.startDiameterM());
        double area = Math.PI / 4 * (diameter * diameter - s.boreM() * s.boreM());
        mass += 7850 * area * s.lengthM() / slices;
      }
    }
    return mass;
  }

  private static HolderBody get(String ref) {
    return Objects.requireNonNull(BODIES.get(ref), ref);
  }
}
