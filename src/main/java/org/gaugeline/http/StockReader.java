package org.gaugeline.http;

import static org.gaugeline.http.IntentReader.given;
import static org.gaugeline.http.IntentReader.orEmpty;
import static org.gaugeline.http.IntentReader.si;
import static org.gaugeline.quantity.UnitSuffix.GMM;
import static org.gaugeline.quantity.UnitSuffix.MM;
import static org.gaugeline.quantity.UnitSuffix.RPM;
import static org.gaugeline.quantity.UnitSuffix.UM;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.http.wire.WireIntent;
import org.gaugeline.job.StockEntry;
import org.gaugeline.quantity.UnitSuffix;

/** Stock entries of a checked body in SI. */
final class StockReader {
  private StockReader() {}

  static List<StockEntry> read(List<WireIntent.StockEntry> stock) {
    List<StockEntry> entries = new ArrayList<>(stock.size());
    for (int i = 0; i < stock.size(); i++) {
      WireIntent.StockEntry wire = stock.get(i);
      Integer count = wire.count();
      entries.add(
          new StockEntry(
              "/shop/stock/" + i,
              wire.ref(),
              count == null ? 1 : count,
              wire.ref() == null ? inline(wire) : null));
    }
    return entries;
  }

  static StockEntry.InlineHolder inline(WireIntent.StockEntry s) {
    return new StockEntry.InlineHolder(
        s.family(),
        s.interface_(),
        si(s.boreMm(), MM),
        si(s.projectionMm(), MM),
        orEmpty(s.profile()).stream().map(StockReader::section).toList(),
        s.material(),
        s.massKg(),
        s.faceContact(),
        s.throughCoolant(),
        si(s.maxSpindleSpeedRpm(), RPM),
        si(s.balanceGrade(), UnitSuffix.MM_PER_S),
        si(s.balanceSpeedRpm(), RPM),
        si(s.residualUnbalanceGmm(), GMM),
        si(s.runoutUm(), UM),
        si(s.interferenceUm(), UM),
        s.nutTorqueNm(),
        s.frictionCoefficient(),
        s.clampingTorqueNm(),
        s.axialHoldN(),
        s.price(),
        tested(s));
  }

  private static StockEntry.Tested tested(WireIntent.StockEntry s) {
    WireIntent.JointStiffness joint = s.jointStiffness();
    WireIntent.Damper damper = s.damper();
    return new StockEntry.Tested(
        si(s.faceRunoutUm(), UM),
        si(s.faceDiameterMm(), MM),
        joint == null ? null : joint.radialNPerM(),
        joint == null ? null : joint.rotationalNmPerRad(),
        s.dampingRatio(),
        damper == null
            ? null
            : new StockEntry.TunedMass(
                damper.massKg(), damper.frequencyHz(), damper.dampingRatio()));
  }

  private static StockEntry.Section section(WireIntent.ProfileSection p) {
    return new StockEntry.Section(
        given(p.lengthMm(), MM),
        given(p.diameterMm(), MM),
        si(p.endDiameterMm(), MM),
        si(p.boreMm(), MM));
  }
}
