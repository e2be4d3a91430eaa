package org.gaugeline.assessment;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.gaugeline.mechanics.beam.BeamMaterial;
import org.gaugeline.mechanics.grip.ElasticMaterial;
import org.gaugeline.mechanics.spread.Quantiles;
import org.gaugeline.reference.IsoGroup;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.ShankCondition;
import org.gaugeline.reference.Solid;
import org.gaugeline.reference.Spread;

/** Reference values in the form that the mechanics take, prepared once at the start. */
public final class Models {
  private final ReferenceData data;
  private final Values values;
  private final BeamMaterial steel;
  private final ElasticMaterial elasticSteel;
  private final Map<ShankCondition, Quantiles> shankFriction = new EnumMap<>(ShankCondition.class);
  private final Map<String, ElasticMaterial> elastic = new HashMap<>();

  public Models(ReferenceData data) {
    this.data = data;
    this.values = new Values(data);
    Solid body = solid("steel");
    this.steel = beamMaterial(body);
    this.elasticSteel = elasticMaterial(body);
    for (ShankCondition condition : ShankCondition.values()) {
      shankFriction.put(condition, friction("shank-" + condition.id()));
    }
    data.solids().forEach((id, row) -> elastic.put(id, elasticMaterial(row)));
  }

  public ReferenceData data() {
    return data;
  }

  Values values() {
    return values;
  }

  /** Steel of holder bodies. */
  public BeamMaterial steel() {
    return steel;
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
