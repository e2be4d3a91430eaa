package org.gaugeline.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.gaugeline.assembly.Adapter;
import org.gaugeline.assembly.Attachments;
import org.gaugeline.assembly.Damper;
import org.gaugeline.assembly.Extension;
import org.gaugeline.assembly.ProfileSection;
import org.gaugeline.assembly.Sleeve;
import org.gaugeline.reference.ColletSize;
import org.gaugeline.reference.InterfaceKind;
import org.gaugeline.reference.ReferenceData;
import org.junit.jupiter.api.Test;

/** Extensions, sleeves, adapters and damped bodies: generic, so every size must be buildable. */
class AttachmentTablesTest {
  private static final ReferenceData DATA = ReferenceTables.load();
  private static final Attachments ATTACHMENTS = CatalogueTables.load(DATA, null).attachments();

  @Test
  void everyIdIsItsOwn() {
    int all =
        ATTACHMENTS.extensions().size()
            + ATTACHMENTS.sleeves().size()
            + ATTACHMENTS.adapters().size();
    assertThat(ATTACHMENTS.refs()).hasSize(all);
    assertThat(all).isGreaterThan(200);
  }

  @Test
  void anExtensionHasAStandardShankAndAWallAroundItsBore() {
    for (Extension extension : ATTACHMENTS.extensions()) {
      assertThat(DATA.shankSizes())
          .as("shank of %s (DIN 6535)", extension.ref())
          .anyMatch(size -> Math.abs(size.diameterM() - extension.shankDiameterM()) < 1e-6);
      ProfileSection nose = last(extension.sections());
      assertThat(nose.endDiameterM()).as(extension.ref()).isGreaterThan(extension.boreM() + 2e-3);
      assertThat(length(extension.sections()))
          .as(extension.ref())
          .isCloseTo(extension.lengthM(), within(1e-9));
      ColletSize collet = extension.collet();
      if (collet != null) {
        assertThat(extension.boreM()).as(extension.ref()).isLessThanOrEqualTo(collet.maxBoreM());
      }
    }
  }

  @Test
  void aSleeveLeavesAWallAndLosesPressure() {
    for (Sleeve sleeve : ATTACHMENTS.sleeves()) {
      assertThat(sleeve.outerDiameterM() - sleeve.boreM())
          .as(sleeve.ref())
          .isGreaterThanOrEqualTo(1.9e-3);
      assertThat(sleeve.gripShare().p95()).as(sleeve.ref()).isLessThan(1);
      assertThat(sleeve.tirM().median()).as(sleeve.ref()).isPositive();
    }
  }

  @Test
  void anAdapterEndsInAPolygonCouplingNoLargerThanItsSpindleCarries() {
    for (Adapter adapter : ATTACHMENTS.adapters()) {
      assertThat(adapter.coupling().kind())
          .as(adapter.ref())
          .isEqualTo(InterfaceKind.POLYGON_TAPER);
      assertThat(adapter.coupling().flangeDiameterM())
          .as(adapter.ref())
          .isLessThanOrEqualTo(1.1 * adapter.spindleInterface().flangeDiameterM());
      assertThat(length(adapter.sections()))
          .as(adapter.ref())
          .isCloseTo(adapter.projectionM(), within(1e-9));
    }
  }

  @Test
  void aDampedBodyHasRoomForItsMass() {
    List<Adapter> damped = ATTACHMENTS.adapters().stream().filter(Adapter::isDamped).toList();
    assertThat(damped).isNotEmpty();
    double densest = 18_500; // tungsten heavy metal, kg/m³, memory
    for (Adapter adapter : damped) {
      ProfileSection hollow = last(adapter.sections());
      double room = Math.PI / 4 * hollow.boreM() * hollow.boreM() * hollow.lengthM();
      Damper damper = Objects.requireNonNull(adapter.damper(), adapter.ref());
      assertThat(damper.massKg()).as(adapter.ref()).isLessThan(room * densest);
      assertThat(damper.atM())
          .as(adapter.ref())
          .isBetween(adapter.projectionM() - hollow.lengthM(), adapter.projectionM());
    }
  }

  private static ProfileSection last(List<ProfileSection> sections) {
    return sections.get(sections.size() - 1);
  }

  private static double length(List<ProfileSection> sections) {
    return sections.stream().mapToDouble(ProfileSection::lengthM).sum();
  }
}
