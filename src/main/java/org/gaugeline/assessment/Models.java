package org.gaugeline.assessment;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.gaugeline.mechanics.beam.BeamMaterial;
import org.gaugeline.mechanics.grip.AllowableStress;
import org.gaugeline.mechanics.grip.ElasticMaterial;
import org.gaugeline.mechanics.grip.LockingGroove;
import org.gaugeline.mechanics.spread.Quantiles;
import org.gaugeline.reference.IsoGroup;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.ShankCondition;
import org.gaugeline.reference.ShankForm;
import org.gaugeline.reference.ShankSize;
import org.gaugeline.reference.Solid;
import org.gaugeline.reference.Spread;
import org.gaugeline.reference.Substrate;
import org.jspecify.annotations.Nullable;

/** Reference values in the form that the mechanics take, prepared once at the start. */
public final class Models {
  private final ReferenceData data;
  private final Values values;
  private final Solid steelRow;
  private final BeamMaterial steel;
  private final ElasticMaterial elasticSteel;
  private final Map<ShankCondition, Quantiles> shankFriction = new EnumMap<>(ShankCondition.class);
  private final Map<String, ElasticMaterial> elastic = new HashMap<>();
  private final Map<String, BeamMaterial> beams = new HashMap<>();

  public Models(ReferenceData data) {
    this.data = data;
    this.values = new Values(data);
    Solid body = solid("steel");
    this.steelRow = body;
    this.steel = beamMaterial(body);
    this.elasticSteel = elasticMaterial(body);
    for (ShankCondition condition : ShankCondition.values()) {
      shankFriction.put(condition, friction("shank-" + condition.id()));
    }
    data.solids()
        .forEach(
            (id, row) -> {
              elastic.put(id, elasticMaterial(row));
              beams.put(id, beamMaterial(row));
            });
  }

  public ReferenceData data() {
    return data;
  }

  /** The standard shank of a diameter; null where no standard has it. */
  @Nullable ShankSize shankSize(double diameterM) {
    for (ShankSize size : data.shankSizes()) {
      if (Math.abs(size.diameterM() - diameterM) < 5e-6) {
        return size;
      }
    }
    return null;
  }

  /** The plain steel shank of an extension. */
  GrippedShank extensionShank(double diameterM) {
    return new GrippedShank(
        diameterM, steelRow, Substrate.STEEL, ShankForm.CYLINDRICAL, shankSize(diameterM));
  }

  /** Axial force that the locking groove of a shank bears. */
  Quantiles lockingGrooveN(double shankDiameterM) {
    double core = values.lockGrooveCoreRatio * shankDiameterM;
    double land = values.lockGrooveLandRatio * shankDiameterM;
    double share = values.lockGrooveEngagedShare;
    Quantiles shear = values.screwShearStressPa;
    Quantiles bearing = values.flatBearingStressPa;
    return new Quantiles(
        groove(shankDiameterM, core, land, share, shear.p05(), bearing.p05()),
        groove(shankDiameterM, core, land, share, shear.median(), bearing.median()),
        groove(shankDiameterM, core, land, share, shear.p95(), bearing.p95()));
  }

  private static double groove(
      double d, double core, double land, double share, double shearPa, double bearingPa) {
    return new LockingGroove(d, core, land, share, new AllowableStress(shearPa, bearingPa))
        .axialForceN();
  }

  /** Axial force that a screw behind the tool bears. */
  Quantiles backStopN(double shankDiameterM) {
    double screw = values.backStopScrewRatio * shankDiameterM;
    return values.backStopStressPa.scale(Math.PI / 4 * screw * screw);
  }

  /** Lateral stiffness of a clamped shank: k_t = λ·E·d, times the family's factor. */
  double jointTranslationNPerM(double shankDiameterM, double familyFactor) {
    return values.jointTranslationLambda * steel.youngPa() * shankDiameterM * familyFactor;
  }

  /** Rotational stiffness of a clamped shank: k_θ = κ·E·d³, times the family's factor. */
  double jointRotationNmPerRad(double shankDiameterM, double familyFactor) {
    double d = shankDiameterM;
    return values.jointRotationKappa.median() * steel.youngPa() * d * d * d * familyFactor;
  }

  Values values() {
    return values;
  }

  /** What a body is made of, by the table of solids; steel where the table lacks it. */
  BeamMaterial beam(String solidId) {
    return beams.getOrDefault(solidId, steel);
  }

  ElasticMaterial elasticSteel() {
    return elasticSteel;
  }

  ElasticMaterial elastic(Solid solid) {
    ElasticMaterial known = elastic.get(solid.id());
    return known == null ? elasticMaterial(solid) : known;
  }

  Quantiles shankFriction(ShankCondition condition) {
    Quantiles known = shankFriction.get(condition);
    if (known == null) {
      throw new IllegalStateException("no friction for " + condition.id() + " in the tables");
    }
    return known;
  }

  double safety(IsoGroup group) {
    return data.practice(
        group == IsoGroup.S ? "gripSafetyFactorHeatResistant" : "gripSafetyFactor");
  }

  Quantiles friction(String id) {
    var row = data.frictions().get(id);
    if (row == null) {
      throw new IllegalStateException("no friction '" + id + "' in the tables");
    }
    return quantiles(row.coefficient());
  }

  private Solid solid(String id) {
    Solid row = data.solids().get(id);
    if (row == null) {
      throw new IllegalStateException("no solid '" + id + "' in the tables");
    }
    return row;
  }

  static Quantiles quantiles(Spread spread) {
    return new Quantiles(spread.p05(), spread.median(), spread.p95());
  }

  static BeamMaterial beamMaterial(Solid solid) {
    return new BeamMaterial(solid.youngPa().median(), solid.poisson(), solid.densityKgPerM3());
  }

  private static ElasticMaterial elasticMaterial(Solid solid) {
    return new ElasticMaterial(
        solid.youngPa().median(),
        solid.poisson(),
        solid.densityKgPerM3(),
        solid.thermalExpansionPerK());
  }
}
