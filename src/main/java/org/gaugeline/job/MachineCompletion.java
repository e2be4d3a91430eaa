package org.gaugeline.job;

import java.util.List;
import org.gaugeline.reference.ContactMode;
import org.gaugeline.reference.MachineClass;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.SpindleInterface;
import org.gaugeline.reference.Spread;

/** Completes the machine from what machines with that spindle end usually have. */
final class MachineCompletion {
  private static final String USUAL = "usual-for-interface";

  private final ReferenceData data;

  MachineCompletion(ReferenceData data) {
    this.data = data;
  }

  Job.Machine complete(
      Intent.Machine asked, SpindleInterface spindle, boolean tilted, Assumptions assumptions) {
    MachineClass usual = usual(spindle);
    String source = usual.sourceKey();
    boolean faceContact =
        assumptions.given(
            asked.faceContact(),
            "/machine/faceContact",
            spindle.nativeContact() != ContactMode.TAPER_ONLY,
            "plain-form-of-interface",
            spindle.sourceKey());
    double torque =
        asked.torqueNm() != null
            ? asked.torqueNm()
            : asked.torqueCurve().isEmpty()
                ? assumptions.assume("/machine/torqueNm", usual.torqueNm(), USUAL, source)
                : asked.torqueCurve().stream()
                    .mapToDouble(Intent.CurvePoint::torqueNm)
                    .max()
                    .orElseThrow();
    Double clamping = asked.clampingForceN();
    if (clamping == null) {
      assumptions.assume(
          "/machine/clampingForceKn",
          spindle.clampingForceN().median(),
          "guide-value-of-interface",
          spindle.limitsSourceKey());
    }
    return new Job.Machine(
        spindle,
        faceContact,
        assumptions.given(
            asked.maxSpindleSpeedRadPerS(),
            "/machine/maxSpindleSpeedRpm",
            usual.maxSpindleSpeedRadPerS(),
            USUAL,
            source),
        asked.maxSpindleSpeedRadPerS() != null,
        assumptions.given(asked.powerW(), "/machine/powerKw", usual.powerW(), USUAL, source),
        torque,
        List.copyOf(asked.torqueCurve()),
        clamping == null ? spindle.clampingForceN() : Spread.exact(clamping),
        assumptions.given(
            asked.axes(),
            "/machine/axes",
            (int) data.practice(tilted ? "tiltingAxes" : "usualAxes"),
            tilted ? "tilted-axis" : "usual-for-machines",
            "changer-practice"),
        assumptions.given(
            asked.throughCoolant(),
            "/machine/throughCoolant",
            false,
            "not-stated",
            "changer-practice"),
        asked.coolantPressurePa() == null ? Double.NaN : asked.coolantPressurePa(),
        changer(asked, usual, assumptions));
  }

  private Job.ToolChanger changer(
      Intent.Machine asked, MachineClass usual, Assumptions assumptions) {
    String at = "/machine/toolChanger/";
    String source = usual.sourceKey();
    return new Job.ToolChanger(
        assumptions.given(
            asked.changerMaxMassKg(), at + "maxMassKg", usual.changerMaxMassKg(), USUAL, source),
        assumptions.given(
            asked.changerMaxLengthM(),
            at + "maxLengthMm",
            usual.changerMaxLengthM(),
            USUAL,
            source),
        assumptions.given(
            asked.changerMaxDiameterM(),
            at + "maxDiameterMm",
            usual.changerMaxDiameterM(),
            USUAL,
            source),
        assumptions.given(
            asked.changerMaxDiameterNeighboursEmptyM(),
            at + "maxDiameterNeighboursEmptyMm",
            Math.max(
                usual.changerMaxDiameterNeighboursEmptyM(),
                asked.changerMaxDiameterM() == null ? 0 : asked.changerMaxDiameterM()),
            USUAL,
            source),
        assumptions.given(
            asked.changerMaxMomentNm(),
            at + "maxMomentNm",
            usual.changerMaxMomentNm(),
            USUAL,
            source));
  }

  private MachineClass usual(SpindleInterface spindle) {
    return data.machineClasses().stream()
        .filter(row -> row.interfaceIds().contains(spindle.id()))
        .findFirst()
        .orElseThrow(
            () -> new IllegalStateException("no machine class for interface " + spindle.id()));
  }
}
