package org.gaugeline.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Objects;
import org.gaugeline.reference.ContactMode;
import org.gaugeline.reference.InterfaceKind;
import org.gaugeline.reference.SpindleInterface;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class InterfaceTableTest {
  private static final Map<String, SpindleInterface> INTERFACES =
      ReferenceTables.load().interfaces();

  @ParameterizedTest
  @ValueSource(
      strings = {
        "BT30",
        "BT40",
        "BT50",
        "CAT30",
        "CAT40",
        "CAT50",
        "SK30",
        "SK40",
        "SK50",
        "HSK-A32",
        "HSK-A40",
        "HSK-A50",
        "HSK-A63",
        "HSK-A80",
        "HSK-A100",
        "HSK-E25",
        "HSK-E32",
        "HSK-E40",
        "HSK-E50",
        "HSK-E63",
        "HSK-F63",
        "PSC-C3",
        "PSC-C4",
        "PSC-C5",
        "PSC-C6",
        "PSC-C8",
        "TS-32",
        "TS-40",
        "TS-50",
        "TS-63",
        "TS-80",
        "TS-100"
      })
  void holdsEveryInterfaceOfTheContract(String id) {
    assertThat(INTERFACES).containsKey(id);
  }

  /** MAS 403-1982 / JIS B 6339, as reproduced; ASME B5.50 in Machinery's Handbook 27th p. 1313. */
  @ParameterizedTest
  @CsvSource({
    "BT30, 31.75, 48.4, 46",
    "BT40, 44.45, 65.4, 63",
    "BT50, 69.85, 101.8, 100",
    "CAT40, 44.45, 68.25, 63.5",
    "CAT50, 69.85, 101.6, 98.425"
  })
  void steepTaperDimensions(String id, double gaugeMm, double taperMm, double flangeMm) {
    SpindleInterface end = get(id);
    assertThat(end.gaugeDiameterM()).isCloseTo(gaugeMm * 1e-3, within(2e-8));
    assertThat(end.taperLengthM()).isCloseTo(taperMm * 1e-3, within(3e-6));
    assertThat(end.flangeDiameterM()).isCloseTo(flangeMm * 1e-3, within(2e-6));
  }

  /** ISO 1947 AT3, µrad by cone length, recalled; allowances on diameter derived from it. */
  @ParameterizedTest
  @CsvSource({"SK30, 50, 2.4", "SK40, 40, 2.7", "SK50, 31.5, 3.2"})
  void taperLengthsGiveTheAngleAllowanceOnDiameter(String id, double at3Urad, double allowanceUm) {
    assertThat(get(id).taperLengthM() * at3Urad).isCloseTo(allowanceUm, within(0.05));
  }

  /** ISO 1947 AT4, µrad; the allowances that JIS B 6339 prints follow from its cone lengths. */
  @ParameterizedTest
  @CsvSource({"BT30, 80, 3.9", "BT40, 63, 4.1", "BT50, 50, 5.1"})
  void taperLengthsGiveTheAllowanceAt4(String id, double at4Urad, double allowanceUm) {
    assertThat(get(id).taperLengthM() * at4Urad).isCloseTo(allowanceUm, within(0.05));
  }

  /**
   * Taper 7/24: half-angle 8.2971°. Shank mass against the frustum integrated in slices, less a
   * twentieth for the thread, plus the pull stud (0.03, 0.08, 0.25 kg).
   */
  @ParameterizedTest
  @CsvSource({"BT30, 0.03", "BT40, 0.08", "BT50, 0.25"})
  void steepTaperMassFollowsFromGeometry(String id, double studKg) {
    SpindleInterface end = get(id);
    double halfAngle = Math.toRadians(8.2971);
    double mass = 0;
    int slices = 2000;
    for (int i = 0; i < slices; i++) {
      double z = (i + 0.5) * end.taperLengthM() / slices;
      double diameter = end.gaugeDiameterM() - 2 * z * Math.tan(halfAngle);
      mass += 7850 * Math.PI / 4 * diameter * diameter * end.taperLengthM() / slices;
    }
    assertThat(end.shankMassKg()).isCloseTo(0.95 * mass + studKg, within(0.002));
    assertThat(end.shankCentroidM()).isBetween(0.3 * end.taperLengthM(), 0.6 * end.taperLengthM());
  }

  /** DIN 69893: size is the flange; F carries the taper of the next smaller size. */
  @ParameterizedTest
  @CsvSource({
    "HSK-A32, 32, 24",
    "HSK-A40, 40, 30",
    "HSK-A50, 50, 38",
    "HSK-A63, 63, 48",
    "HSK-A80, 80, 60",
    "HSK-A100, 100, 75",
    "HSK-E63, 63, 48",
    "HSK-F63, 63, 38"
  })
  void hollowTaperSizes(String id, double flangeMm, double taperMm) {
    SpindleInterface end = get(id);
    assertThat(end.flangeDiameterM()).isCloseTo(flangeMm * 1e-3, within(1e-9));
    assertThat(end.gaugeDiameterM()).isCloseTo(taperMm * 1e-3, within(1e-9));
    assertThat(end.nativeContact()).isEqualTo(ContactMode.TAPER_AND_FACE);
    if (id.startsWith("HSK-E") || id.startsWith("HSK-F")) {
      assertThat(end.seatUnbalanceKgM()).isZero();
    }
  }

  /** ISO 26623-1: flanges; mean polygon diameter of C6 is 44 mm. */
  @ParameterizedTest
  @CsvSource({"PSC-C3, 32", "PSC-C4, 40", "PSC-C5, 50", "PSC-C6, 63", "PSC-C8, 80"})
  void polygonFlanges(String id, double flangeMm) {
    assertThat(get(id).flangeDiameterM()).isCloseTo(flangeMm * 1e-3, within(1e-9));
    assertThat(get("PSC-C6").gaugeDiameterM()).isCloseTo(0.044, within(1e-9));
  }

  /** DIN 69893 guide value: size 63 clamps with 18 kN. */
  @Test
  void guideClampingForce() {
    assertThat(get("HSK-A63").clampingForceN().median()).isEqualTo(18_000);
  }

  @Test
  void everyEndIsConsistent() {
    assertThat(INTERFACES.values())
        .allSatisfy(
            end -> {
              assertThat(end.faceOuterDiameterM()).isLessThanOrEqualTo(end.flangeDiameterM());
              assertThat(end.faceInnerDiameterM())
                  .isBetween(end.gaugeDiameterM(), end.faceOuterDiameterM());
              assertThat(end.faceShare()).isBetween(0.1, 1.0);
              assertThat(end.kind() == InterfaceKind.STEEP_TAPER)
                  .isEqualTo(end.nativeContact() == ContactMode.TAPER_ONLY);
              assertThat(end.faceRotationNmPerRad().median())
                  .isGreaterThanOrEqualTo(end.nativeRotationNmPerRad().median());
              assertThat(end.faceSeatTirM().median())
                  .isLessThanOrEqualTo(end.nativeSeatTirM().median());
            });
  }

  private static SpindleInterface get(String id) {
    return Objects.requireNonNull(INTERFACES.get(id), id);
  }
}
