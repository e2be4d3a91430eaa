package org.gaugeline.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.gaugeline.reference.IsoGroup;
import org.gaugeline.reference.Material;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.StartingValue;
import org.gaugeline.reference.StartingValue.ToolClass;
import org.gaugeline.reference.Substrate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is published or generally known of groups of materials holds for every row. */
class MaterialFactsTest {
  private static final ReferenceData DATA = ReferenceTables.load();
  private static final Map<String, Material> MATERIALS = DATA.materials();

  /** Share of the drive's energy that reaches the cut, for bands that are told at the drive. */
  private static final double DRIVE_EFFICIENCY = 0.8;

  private static final double THICKNESS_MM = 0.3;

  /** Energy per volume at the cut, least and most, N/mm² (1 W·s/mm³ is 1000 N/mm²). */
  private record Band(double least, double most) {}

  /**
   * Kalpakjian and Schmid, table 21.2 (recalled), energy at the drive in W·s/mm³: steels 2 to 9,
   * stainless 2 to 5, cast irons 1.1 to 5.4, titanium 2 to 5, high-temperature alloys 3.3 to 8.5,
   * magnesium 0.3 to 0.6. Aluminium and hardened steel: Stephenson and Agapiou, table 2.1, 0.012 to
   * 0.022 and 0.09 to 0.20 kW/(cm³/min), and 0.065 to 0.09 up to 45 HRC; the lower end of aluminium
   * is Kalpakjian's 0.4. Copper alloys: power constants of soft brass, 0.68, to hard bronze, 2.48,
   * Machinery's Handbook, 31st ed. (recalled). Plastics: no published band, far below the metals.
   */
  private static Band band(Material material) {
    return switch (material.isoGroup()) {
      case P -> atDrive(2000, 9000);
      case M -> atDrive(2000, 5000);
      case K -> atDrive(1100, 5400);
      case S -> material.id().startsWith("Ti-") ? atDrive(2000, 5000) : atDrive(3300, 8500);
      case H -> new Band(material.hardnessHb() < 481 ? 3900 : 5400, 12_000);
      case N ->
          switch (material.machinability()) {
            case "plastic" -> new Band(30, 300);
            case "brass-copper", "aluminium-bronze" -> new Band(680, 2480);
            default ->
                material.id().startsWith("Mg") ? atDrive(300, 600) : new Band(400 * 0.8, 1320);
          };
    };
  }

  private static Band atDrive(double least, double most) {
    return new Band(least * DRIVE_EFFICIENCY, most);
  }

  @Test
  void energyPerVolumeLiesInThePublishedBandOfItsGroup() {
    assertThat(MATERIALS.values())
        .allSatisfy(
            material -> {
              Band band = band(material);
              assertThat(specificForce(material))
                  .as("%s at %.1f mm, N/mm²", material.id(), THICKNESS_MM)
                  .isBetween(band.least(), band.most());
            });
  }

  @Test
  void plasticsAreFarBelowEveryMetal() {
    double lightestMetal =
        MATERIALS.values().stream()
            .filter(material -> !material.machinability().equals("plastic"))
            .mapToDouble(MaterialFactsTest::specificForce)
            .min()
            .orElseThrow();
    assertThat(MATERIALS.values())
        .filteredOn(material -> material.machinability().equals("plastic"))
        .hasSizeGreaterThanOrEqualTo(6)
        .allSatisfy(
            material -> assertThat(specificForce(material)).isLessThan(0.75 * lightestMetal));
  }

  /** Common knowledge of the trade; the order, not the amounts. */
  @ParameterizedTest
  @CsvSource({
    "11SMn30, C15",
    "11SMn30, 42CrMo4",
    "44SMn28, C45E",
    "40CrMnMoS8-6, 40CrMnMo7",
    "Ti-grade-2, Ti-6Al-4V",
    "Ti-6Al-4V, Ti-5Al-5V-5Mo-3Cr",
    "Ti-5Al-5V-5Mo-3Cr, NiCu30Fe",
    "Ti-6Al-4V, alloy-718",
    "alloy-718-solution, alloy-718",
    "X5CrNi18-10, X2CrNiMoN22-5-3",
    "X2CrNiMoN22-5-3, X2CrNiMoN25-7-4",
    "EN-GJL-150, EN-GJL-200",
    "EN-GJL-200, EN-GJL-250",
    "EN-GJL-250, EN-GJL-300",
    "EN-GJL-300, EN-GJV-450",
    "EN-GJS-400-15, EN-GJS-500-7",
    "EN-GJS-500-7, EN-GJS-600-3",
    "EN-GJS-600-3, EN-GJS-700-2",
    "EN-GJS-700-2, EN-GJS-800-10",
    "MgAl9Zn1, EN-AW-1050",
    "EN-AW-2011, EN-AW-2024",
    "CuZn39Pb3, CuZn37",
    "CuZn37, CuAl10Ni5Fe4",
    "hardened-steel-45-50-hrc, hardened-steel-50-55-hrc",
    "hardened-steel-50-55-hrc, hardened-steel-55-60-hrc",
    "hardened-steel-55-60-hrc, hardened-steel-60-65-hrc"
  })
  void cutsEasier(String easier, String harder) {
    assertThat(specificForce(get(easier))).isLessThan(specificForce(get(harder)));
  }

  /** Machinery's Handbook, 31st ed. p. 1147: power constants rise with hardness in every column. */
  @Test
  void forceNeverFallsWithHardnessAndSteelsScale() {
    assertThat(MATERIALS.values())
        .allSatisfy(
            material -> {
              assertThat(material.hardnessExponent()).isBetween(0.0, 1.0);
              assertThat(material.hardnessExponent() > 0)
                  .as(material.id())
                  .isEqualTo(material.isoGroup() == IsoGroup.P);
            });
  }

  /** Drilling factors of steel, recalled: 24 000 up to 200 HB, 31 000 at 300, 34 000 at 400 HB. */
  @Test
  void drillingFactorOfSteelsFollowsTheReferenceHardness() {
    assertThat(MATERIALS.values())
        .filteredOn(m -> m.isoGroup() == IsoGroup.P && !Double.isNaN(m.drillConstant()))
        .hasSizeGreaterThan(20)
        .allSatisfy(
            material -> {
              double hb = material.hardnessHb();
              double kd = 24_000 + 70 * Math.max(0, Math.min(hb, 300) - 200);
              kd += 30 * Math.max(0, hb - 300);
              assertThat(material.drillConstant())
                  .as(material.id())
                  .isCloseTo(kd, within(0.02 * kd));
            });
  }

  /** ASTM E140, tungsten carbide ball: 45, 50, 55, 60 and 65 HRC. */
  @Test
  void hardenedSteelsJoinAtTheBrinellNumbersOfTheirRockwellHardness() {
    double[] brinell = {421, 481, 560, 654, 739};
    for (int i = 0; i < 4; i++) {
      int rockwell = 45 + 5 * i;
      Material row = get("hardened-steel-" + rockwell + "-" + (rockwell + 5) + "-hrc");
      assertThat(row.minHardnessHb()).isEqualTo(brinell[i]);
      assertThat(row.maxHardnessHb()).isEqualTo(brinell[i + 1]);
    }
    Material any = get("hardened-steel");
    assertThat(any.minHardnessHb()).isCloseTo(481, within(5.0));
    assertThat(any.maxHardnessHb()).isCloseTo(654, within(5.0));
  }

  @Test
  void startingSpeedFallsFromOneHardenedRowToTheNext() {
    for (ToolClass tool : ToolClass.values()) {
      for (Substrate substrate : List.of(Substrate.CARBIDE, Substrate.HSS)) {
        List<Double> speeds = new ArrayList<>();
        for (int rockwell = 60; rockwell >= 45; rockwell -= 5) {
          Material row = get("hardened-steel-" + rockwell + "-" + (rockwell + 5) + "-hrc");
          StartingValue start = DATA.startingValue(row.machinability(), tool, substrate);
          speeds.add(start.cuttingSpeedMPerS());
        }
        assertThat(speeds).as("%s %s", tool, substrate).isSorted().doesNotHaveDuplicates();
      }
    }
  }

  @Test
  void rowsComeFromEveryKindOfSourceThatTheHeaderNames() {
    String header =
        TableFolder.packaged()
            .read("materials.csv")
            .lines()
            .filter(line -> line.startsWith("# kind: "))
            .findFirst()
            .orElseThrow();
    Set<String> kinds =
        MATERIALS.values().stream()
            .map(m -> Objects.requireNonNull(DATA.sources().get(m.sourceKey())).kind().id())
            .collect(Collectors.toSet());
    assertThat(kinds).containsExactlyInAnyOrder(header.substring("# kind: ".length()).split(", "));
  }

  private static double specificForce(Material material) {
    return material.kc11Pa().median() / 1e6 * Math.pow(THICKNESS_MM, -material.mc());
  }

  private static Material get(String id) {
    return Objects.requireNonNull(MATERIALS.get(id), id);
  }
}
