package org.gaugeline.job;

import java.util.Objects;
import java.util.Set;
import org.gaugeline.reference.ColletCondition;
import org.gaugeline.reference.Material;
import org.gaugeline.reference.MaterialIndex;
import org.gaugeline.reference.Practice;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.ShankCondition;
import org.gaugeline.reference.SpindleInterface;
import org.gaugeline.reference.Spread;
import org.gaugeline.reference.Stage;
import org.jspecify.annotations.Nullable;

/**
 * Turns what was asked into a complete job: every absent member is taken from reference data or
 * geometry and listed with its reason. What was given is never changed.
 */
public final class Completion {
  private static final String PRACTICE = "grip-practice";

  private final ReferenceData data;
  private final MaterialIndex materials;
  private final ToolCompletion tools;
  private final OperationCompletion operations;
  private final MachineCompletion machines;

  public Completion(ReferenceData data, MaterialIndex materials) {
    this.data = data;
    this.materials = materials;
    this.tools = new ToolCompletion(data);
    this.operations = new OperationCompletion(data);
    this.machines = new MachineCompletion(data);
  }

  /**
   * Completes an intent, of which the edge has checked the names.
   *
   * @throws IllegalArgumentException for a name that the tables lack
   */
  public Job complete(Intent intent) {
    SpindleInterface spindle = data.interfaces().get(intent.machine().interfaceId());
    if (spindle == null) {
      throw new IllegalArgumentException("no interface " + intent.machine().interfaceId());
    }
    return complete(intent, materials.find(intent.workpiece().material()), spindle);
  }

  private Job complete(Intent intent, @Nullable Material material, SpindleInterface spindle) {
    Assumptions assumptions = new Assumptions();
    Job.Workpiece workpiece = workpiece(intent, material, assumptions);
    Double tilt = intent.feature().tiltRad();
    boolean tilted = tilt != null && tilt != 0;
    Job.Machine machine = machines.complete(intent.machine(), spindle, tilted, assumptions);
    Job.Tool tool = tools.complete(intent, assumptions);
    Job.Operation operation = operations.operation(intent, workpiece, tool, machine, assumptions);
    Job.Feature feature = operations.feature(intent, operation, tool, assumptions);
    return new Job(
        intent.label() == null ? "" : intent.label(),
        intent.textUnits(),
        workpiece,
        operation,
        feature,
        tool,
        machine,
        shop(intent, assumptions),
        preferences(intent, operation.stage(), assumptions),
        assumptions.list());
  }

  private Job.Workpiece workpiece(
      Intent intent, @Nullable Material material, Assumptions assumptions) {
    Intent.Workpiece asked = intent.workpiece();
    Double kc11 = asked.kc11Pa();
    Double mc = asked.mc();
    boolean own = kc11 != null && mc != null;
    double compliance = asked.complianceMPerN() == null ? 0 : asked.complianceMPerN();
    if (material == null) {
      return new Job.Workpiece(
          asked.material(),
          null,
          Objects.requireNonNull(asked.isoGroup()),
          asked.hardnessHb() == null ? Double.NaN : asked.hardnessHb(),
          ownSpread(Objects.requireNonNull(kc11)),
          Objects.requireNonNull(mc),
          true,
          Double.NaN,
          data.practiceRow("radialForceRatio").value(),
          orNaN(asked.ktPa()),
          orNaN(asked.krRatio()),
          compliance,
          "given");
    }
    double hardness =
        assumptions.given(
            asked.hardnessHb(),
            "/workpiece/hardnessHb",
            material.hardnessHb(),
            "material-reference-state",
            material.sourceKey());
    double hardnessFactor = Math.pow(hardness / material.hardnessHb(), material.hardnessExponent());
    Spread kc11Pa =
        own && kc11 != null ? ownSpread(kc11) : material.kc11Pa().scaled(hardnessFactor);
    if (!own) {
      assumptions.assume(
          "/workpiece/kc11NPerMm2", kc11Pa.median(), "material-table", material.sourceKey());
      assumptions.assume("/workpiece/mc", material.mc(), "material-table", material.sourceKey());
    }
    return new Job.Workpiece(
        material.name(),
        material,
        asked.isoGroup() == null ? material.isoGroup() : asked.isoGroup(),
        hardness,
        kc11Pa,
        own && mc != null ? mc : material.mc(),
        own,
        material.handbookPowerPa() * hardnessFactor,
        material.radialRatio(),
        orNaN(asked.ktPa()),
        orNaN(asked.krRatio()),
        compliance,
        own ? "given" : material.sourceKey());
  }

  private Spread ownSpread(double kc11Pa) {
    return Spread.around(kc11Pa, data.practice("ownConstantsSpreadFactor"));
  }

  private Job.Shop shop(Intent intent, Assumptions assumptions) {
    Intent.Shop asked = intent.shop();
    return new Job.Shop(
        assumptions.given(
            asked.shrinkUnit(), "/shop/shrinkUnit", true, "equipment-assumed-present", PRACTICE),
        assumptions.given(
            asked.balancer(), "/shop/balancer", false, "equipment-assumed-absent", PRACTICE),
        assumptions.given(
            asked.torqueWrench(),
            "/shop/torqueWrench",
            false,
            "equipment-assumed-absent",
            PRACTICE),
        assumptions.given(
            asked.presetter(), "/shop/presetter", false, "equipment-assumed-absent", PRACTICE),
        Set.copyOf(asked.excludedFamilies()),
        asked.stock(),
        asked.stockOnly() != null && asked.stockOnly(),
        assumptions.given(
            asked.hourlyRate(),
            "/shop/hourlyRate",
            data.practice("hourlyRate"),
            "practice-value",
            data.practiceRow("hourlyRate").sourceKey()),
        assumptions.given(asked.currency(), "/shop/currency", "EUR", "default-currency", ""),
        assumptions.given(
            asked.shankCondition(),
            "/shop/shankCondition",
            ShankCondition.UNKNOWN,
            "condition-not-stated",
            PRACTICE),
        assumptions.given(
            asked.colletCondition(),
            "/shop/colletCondition",
            ColletCondition.USED,
            "condition-not-stated",
            PRACTICE));
  }

  private Job.Preferences preferences(Intent intent, Stage stage, Assumptions assumptions) {
    Intent.Preferences asked = intent.preferences();
    return new Job.Preferences(
        asked.rankBy() == null ? RankBy.FIT : asked.rankBy(),
        weight(intent, asked.accuracyWeight(), "accuracy", stage, assumptions),
        weight(intent, asked.gripWeight(), "grip", stage, assumptions),
        weight(intent, asked.reachWeight(), "reach", stage, assumptions),
        weight(intent, asked.speedWeight(), "speed", stage, assumptions),
        asked.confidence() == null ? 0.95 : asked.confidence(),
        asked.limit() == null ? 5 : asked.limit(),
        asked.stability() == null || asked.stability());
  }

  private static double orNaN(@Nullable Double given) {
    return given == null ? Double.NaN : given;
  }

  /**
   * What matters to the operation, where the asker named no weight at all; 1 where the tables name
   * none either.
   */
  private double weight(
      Intent intent,
      @Nullable Double given,
      String criterion,
      Stage stage,
      Assumptions assumptions) {
    if (given != null) {
      return given;
    }
    Intent.Preferences asked = intent.preferences();
    boolean weighed =
        asked.accuracyWeight() != null
            || asked.gripWeight() != null
            || asked.reachWeight() != null
            || asked.speedWeight() != null;
    Practice usual =
        UsualWeights.row(data, criterion, intent.operation().kind(), intent.tool().kind(), stage);
    return weighed || usual == null
        ? 1
        : assumptions.assume(
            "/preferences/weights/" + criterion,
            usual.value().median(),
            "usual-for-operation",
            usual.sourceKey());
  }
}
