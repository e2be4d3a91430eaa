package org.gaugeline.tables;

import java.util.List;
import java.util.Map;
import org.gaugeline.reference.ArborSize;
import org.gaugeline.reference.ClampingFamily;
import org.gaugeline.reference.ColletSize;
import org.gaugeline.reference.ContactMode;
import org.gaugeline.reference.GripModel;
import org.gaugeline.reference.InterfaceKind;
import org.gaugeline.reference.ShankForm;
import org.gaugeline.reference.ShankSize;
import org.gaugeline.reference.Source;
import org.gaugeline.reference.SpindleInterface;
import org.gaugeline.reference.TapSize;

/** Reads the rows of interfaces, clamping families, collets and shanks. */
final class HoldingTables {
  static final List<String> INTERFACES =
      List.of(
          "id",
          "name",
          "kind",
          "standard",
          "nominalSize",
          "gaugeDiameterMm",
          "taperLengthMm",
          "flangeDiameterMm",
          "flangeFrontMm",
          "nativeContact",
          "faceContactOffered",
          "faceOuterDiameterMm",
          "faceInnerDiameterMm",
          "clampingForceP05Kn",
          "clampingForceKn",
          "clampingForceP95Kn",
          "faceShare",
          "nativeSeatTirP05Um",
          "nativeSeatTirUm",
          "nativeSeatTirP95Um",
          "faceSeatTirP05Um",
          "faceSeatTirUm",
          "faceSeatTirP95Um",
          "nativeRatedSpeedP05Rpm",
          "nativeRatedSpeedRpm",
          "nativeRatedSpeedP95Rpm",
          "faceRatedSpeedP05Rpm",
          "faceRatedSpeedRpm",
          "faceRatedSpeedP95Rpm",
          "nativeRotationP05NmPerRad",
          "nativeRotationNmPerRad",
          "nativeRotationP95NmPerRad",
          "faceRotationP05NmPerRad",
          "faceRotationNmPerRad",
          "faceRotationP95NmPerRad",
          "translationP05NPerM",
          "translationNPerM",
          "translationP95NPerM",
          "shankMassKg",
          "shankCentroidMm",
          "seatUnbalanceGmm",
          "limitsSourceKey",
          "sourceKey");
  static final List<String> FAMILIES =
      List.of(
          "id",
          "name",
          "gripModel",
          "summary",
          "goodAt",
          "badAt",
          "needs",
          "shankForms",
          "contactPressureP05Mpa",
          "contactPressureMpa",
          "contactPressureP95Mpa",
          "tipTirP05Um",
          "tipTirUm",
          "tipTirP95Um",
          "dirtyTirFactor",
          "speedCeilingP05Rpm",
          "speedCeilingRpm",
          "speedCeilingP95Rpm",
          "jointFactor",
          "dampingFactor",
          "warmGripFactor",
          "sideLoad",
          "needsShrinkUnit",
          "needsTorqueWrench",
          "residualUnbalanceUm",
          "changeMinutes",
          "sourceKey");
  static final List<String> COLLETS =
      List.of(
          "id",
          "minBoreMm",
          "maxBoreMm",
          "collapseMm",
          "nutThreadDiameterMm",
          "nutThreadPitchMm",
          "nutDiameterMm",
          "nutLengthMm",
          "colletLengthMm",
          "nutTorqueP05Nm",
          "nutTorqueNm",
          "nutTorqueP95Nm",
          "nutFaceDiameterMm",
          "maxSpeedP05Rpm",
          "maxSpeedRpm",
          "maxSpeedP95Rpm",
          "threadSourceKey",
          "sourceKey");
  static final List<String> SHANKS =
      List.of(
          "id",
          "diameterMm",
          "lengthMm",
          "minInsertionMm",
          "flatWidthMm",
          "flatPositionMm",
          "flatHeightMm",
          "flats",
          "screwDiameterMm",
          "sourceKey");

  static final List<String> TAPS =
      List.of(
          "id",
          "diameterMm",
          "pitchMm",
          "shankDiameterMm",
          "squareMm",
          "squareLengthMm",
          "overallLengthMm",
          "pitchSourceKey",
          "sourceKey");
  static final List<String> ARBORS =
      List.of(
          "id",
          "boreMm",
          "faceDiameterMm",
          "pilotLengthMm",
          "tenonWidthMm",
          "tenonDepthMm",
          "keyWidthMm",
          "keyDepthMm",
          "screwDiameterMm",
          "screwPitchMm",
          "screws",
          "boltCircleMm",
          "screwTorqueP05Nm",
          "screwTorqueNm",
          "screwTorqueP95Nm",
          "maxCutterMm",
          "bodyLengthMm",
          "sourceKey");

  private HoldingTables() {}

  static SpindleInterface spindleInterface(Row row, Map<String, Source> sources) {
    return new SpindleInterface(
        row.text("id"),
        row.text("name"),
        row.word("kind", InterfaceKind.values()),
        row.text("standard"),
        row.integer("nominalSize"),
        row.positiveSi("gaugeDiameterMm"),
        row.positiveSi("taperLengthMm"),
        row.positiveSi("flangeDiameterMm"),
        row.positiveSi("flangeFrontMm"),
        row.word("nativeContact", ContactMode.values()),
        row.flag("faceContactOffered"),
        row.positiveSi("faceOuterDiameterMm"),
        row.positiveSi("faceInnerDiameterMm"),
        row.spread("clampingForce", "Kn"),
        row.si("faceShare"),
        row.spread("nativeSeatTir", "Um"),
        row.spread("faceSeatTir", "Um"),
        row.spread("nativeRatedSpeed", "Rpm"),
        row.spread("faceRatedSpeed", "Rpm"),
        row.spread("nativeRotation", "NmPerRad"),
        row.spread("faceRotation", "NmPerRad"),
        row.spread("translation", "NPerM"),
        row.positiveSi("shankMassKg"),
        row.positiveSi("shankCentroidMm"),
        row.si("seatUnbalanceGmm"),
        row.source(sources),
        row.source("limitsSourceKey", sources));
  }

  static ClampingFamily family(Row row, Map<String, Source> sources) {
    return new ClampingFamily(
        row.text("id"),
        row.text("name"),
        row.word("gripModel", GripModel.values()),
        row.text("summary"),
        row.text("goodAt"),
        row.text("badAt"),
        row.text("needs"),
        row.words("shankForms", ShankForm.values()),
        row.spread("contactPressure", "Mpa"),
        row.spread("tipTir", "Um"),
        row.positiveSi("dirtyTirFactor"),
        row.spread("speedCeiling", "Rpm"),
        row.positiveSi("jointFactor"),
        row.positiveSi("dampingFactor"),
        row.positiveSi("warmGripFactor"),
        row.flag("sideLoad"),
        row.flag("needsShrinkUnit"),
        row.flag("needsTorqueWrench"),
        row.si("residualUnbalanceUm"),
        row.number("changeMinutes"),
        row.source(sources));
  }

  static ColletSize collet(Row row, Map<String, Source> sources) {
    row.source("threadSourceKey", sources);
    return new ColletSize(
        row.text("id"),
        row.positiveSi("minBoreMm"),
        row.positiveSi("maxBoreMm"),
        row.positiveSi("collapseMm"),
        row.positiveSi("nutThreadDiameterMm"),
        row.positiveSi("nutThreadPitchMm"),
        row.positiveSi("nutDiameterMm"),
        row.positiveSi("nutLengthMm"),
        row.positiveSi("colletLengthMm"),
        row.spread("nutTorque", "Nm"),
        row.positiveSi("nutFaceDiameterMm"),
        row.spread("maxSpeed", "Rpm"),
        row.source(sources));
  }

  static ShankSize shank(Row row, Map<String, Source> sources) {
    return new ShankSize(
        row.text("id"),
        row.positiveSi("diameterMm"),
        row.positiveSi("lengthMm"),
        row.positiveSi("minInsertionMm"),
        row.si("flatWidthMm"),
        row.si("flatPositionMm"),
        row.si("flatHeightMm"),
        row.integer("flats"),
        row.si("screwDiameterMm"),
        row.source(sources));
  }

  static TapSize tap(Row row, Map<String, Source> sources) {
    return new TapSize(
        row.text("id"),
        row.positiveSi("diameterMm"),
        row.positiveSi("pitchMm"),
        row.positiveSi("shankDiameterMm"),
        row.positiveSi("squareMm"),
        row.positiveSi("squareLengthMm"),
        row.positiveSi("overallLengthMm"),
        row.source("pitchSourceKey", sources),
        row.source(sources));
  }

  static ArborSize arbor(Row row, Map<String, Source> sources) {
    return new ArborSize(
        row.text("id"),
        row.positiveSi("boreMm"),
        row.positiveSi("faceDiameterMm"),
        row.positiveSi("pilotLengthMm"),
        row.positiveSi("tenonWidthMm"),
        row.positiveSi("tenonDepthMm"),
        row.positiveSi("keyWidthMm"),
        row.positiveSi("keyDepthMm"),
        row.positiveSi("screwDiameterMm"),
        row.positiveSi("screwPitchMm"),
        row.integer("screws"),
        row.si("boltCircleMm"),
        row.spread("screwTorque", "Nm"),
        row.positiveSi("maxCutterMm"),
        row.positiveSi("bodyLengthMm"),
        row.source(sources));
  }
}
