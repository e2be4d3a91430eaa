package org.gaugeline.assessment;

import java.util.List;
import org.gaugeline.mechanics.runout.ToolLifeLoss;
import org.gaugeline.mechanics.spread.Quantiles;
import org.gaugeline.reference.Friction;
import org.gaugeline.reference.ReferenceData;

/** The practice values that every assessment reads, taken out of their table once. */
final class Values {
  final double calibratedFromM;
  final double thinChipSpreadFactor;
  final double flutedDiameterRatio;
  final double flutedAreaRatio;
  final double firstModeShare;
  final double boreSpeedReferenceM;
  final double jointTranslationLambda;
  final double headJointTirP95M;
  final double headJointFactor;
  final double leastArborFacePerBore;
  final double discSideTirP95M;
  final double stickOutStepM;
  final double runoutKnownAtPerDiameter;
  final double clampingTiltVarianceShare;
  final double seatTiltShare;
  final double gravityMPerS2;
  final double gripLossAtCeiling;
  final double roughnessSmoothingShare;
  final double boreRzM;
  final double shankRzM;
  final double balanceGradeCapMPerS;
  final double seatUnbalanceLeftShare;
  final double balanceGradeFineMPerS;
  final double balanceSpeedFineRadPerS;
  final double spindleNoseRadiusRatio;
  final double mouthPullInNoteM;
  final double colletBelowNominalShare;
  final double colletConeHalfAngleRad;
  final double screwCoreRatio;
  final double screwEndRatio;
  final double taperContactLengthRatio;
  final double taperSeatFriction;
  final double bendingWarningRatio;
  final double ballTrackZoneDistanceRatio;
  final double ballTrackHalfAngleRad;
  final double hollowTaperHalfAngleRad;
  final double polygonTaperHalfAngleRad;
  final Quantiles jointRotationKappa;
  private final Quantiles jointTranslation;
  final Quantiles dampingRatio;
  final Quantiles spindleDampingRatio;
  final double dampingPerJointFactor;
  final Quantiles shrinkInterferenceBaseM;
  final Quantiles shrinkInterferenceSlope;
  final Quantiles hssShrinkGripFactor;
  final Quantiles noWrenchTorqueFactor;
  final Quantiles usedColletGripFactor;
  final Quantiles precisionColletGripFactor;
  final Quantiles flatBearingStressPa;
  final Quantiles screwShearStressPa;
  final Quantiles screwPreloadStressPa;
  final Quantiles squareShearStressPa;
  final Quantiles squareBearingStressPa;
  final double squarePerShank;
  final double squareLengthPerWidth;
  final double floatingRunoutLeftShare;
  final double compensationRunoutLeftShare;
  final double boringSettingLeftShare;
  final double singlePointUnbalanceM;

  final double lockGrooveCoreRatio;
  final double lockGrooveLandRatio;
  final double lockGrooveEngagedShare;
  final double backStopScrewRatio;
  final Quantiles backStopStressPa;
  final double chamferContactShare;
  final double screwHeadBearingRatio;
  final double inclinedFlatSlopeRad;
  final Quantiles tenonShearStressPa;
  final Quantiles tenonBearingStressPa;
  final Quantiles arborFaceFriction;
  final double screwThreadFriction;

  final double nutFriction;
  final double coneFriction;
  final ToolLifeLoss toolLifeLoss;
  final double holeSideForceShare;
  final double reamerLeadAngleRad;
  final double reamerMarginFrictionFactor;
  final double genericProfileHalfWidthM;
  final double givenProfileHalfWidthM;
  final double holderBendingReserveM;
  final double presetHalfWidthM;
  final double ruleHalfWidthM;
  final List<String> genericProfileBasis;
  final List<String> givenProfileBasis;
  final List<String> deflectionBasis;
  final List<String> balanceBasis;
  final String shrinkBasis;
  final String stopBasis;
  final String squareBasis;

  Values(ReferenceData data) {
    this.calibratedFromM = data.practice("calibratedFromM");
    this.thinChipSpreadFactor = data.practice("thinChipSpreadFactor");
    this.flutedDiameterRatio = data.practice("flutedDiameterRatio");
    this.flutedAreaRatio = data.practice("flutedAreaRatio");
    this.firstModeShare = data.practice("firstModeShareOfToothPassing");
    this.boreSpeedReferenceM = data.practice("boreSpeedReferenceM");
    this.jointTranslationLambda = data.practice("jointTranslationLambda");
    this.headJointTirP95M = data.practiceRow("headJointTirM").value().p95();
    this.headJointFactor = data.practice("headJointFactor");
    this.leastArborFacePerBore = data.practice("leastArborFacePerBore");
    this.discSideTirP95M = data.practiceRow("discSideTirM").value().p95();
    this.runoutKnownAtPerDiameter = data.practice("runoutKnownAtPerDiameter");
    this.clampingTiltVarianceShare = data.practice("clampingTiltVarianceShare");
    this.stickOutStepM = data.practice("stickOutStepM");
    this.seatTiltShare = data.practice("seatTiltShare");
    this.gravityMPerS2 = data.practice("gravityMPerS2");
    this.gripLossAtCeiling = data.practice("gripLossAtCeiling");
    this.roughnessSmoothingShare = data.practice("roughnessSmoothingShare");
    this.boreRzM = data.practice("boreRzM");
    this.shankRzM = data.practice("shankRzM");
    this.balanceGradeCapMPerS = data.practice("balanceGradeCapMPerS");
    this.seatUnbalanceLeftShare = data.practice("seatUnbalanceLeftShare");
    this.balanceGradeFineMPerS = data.practice("balanceGradeFineMPerS");
    this.balanceSpeedFineRadPerS = data.practice("balanceSpeedFineRadPerS");
    this.spindleNoseRadiusRatio = data.practice("spindleNoseRadiusRatio");
    this.mouthPullInNoteM = data.practice("mouthPullInNoteM");
    this.colletBelowNominalShare = data.practice("colletBelowNominalShare");
    this.colletConeHalfAngleRad = data.practice("colletConeHalfAngleRad");
    this.screwCoreRatio = data.practice("screwCoreRatio");
    this.screwEndRatio = data.practice("screwEndRatio");
    this.taperContactLengthRatio = data.practice("taperContactLengthRatio");
    this.taperSeatFriction = data.practice("taperSeatFriction");
    this.bendingWarningRatio = data.practice("bendingWarningRatio");
    this.ballTrackZoneDistanceRatio = data.practice("ballTrackZoneDistanceRatio");
    this.ballTrackHalfAngleRad = data.practice("ballTrackHalfAngleRad");
    this.hollowTaperHalfAngleRad = data.practice("hollowTaperHalfAngleRad");
    this.polygonTaperHalfAngleRad = data.practice("polygonTaperHalfAngleRad");
    this.jointRotationKappa = Models.quantiles(data.practiceRow("jointRotationKappa").value());
    this.jointTranslation = Models.quantiles(data.practiceRow("jointTranslationLambda").value());
    this.dampingRatio = Models.quantiles(data.practiceRow("dampingRatio").value());
    this.spindleDampingRatio = Models.quantiles(data.practiceRow("spindleDampingRatio").value());
    this.dampingPerJointFactor = data.practice("dampingPerJointFactor");
    this.shrinkInterferenceBaseM =
        Models.quantiles(data.practiceRow("shrinkInterferenceBaseM").value());
    this.shrinkInterferenceSlope =
        Models.quantiles(data.practiceRow("shrinkInterferenceSlope").value());
    this.hssShrinkGripFactor = Models.quantiles(data.practiceRow("hssShrinkGripFactor").value());
    this.noWrenchTorqueFactor = Models.quantiles(data.practiceRow("noWrenchTorqueFactor").value());
    this.usedColletGripFactor = Models.quantiles(data.practiceRow("usedColletGripFactor").value());
    this.precisionColletGripFactor =
        Models.quantiles(data.practiceRow("precisionColletGripFactor").value());
    this.flatBearingStressPa = Models.quantiles(data.practiceRow("flatBearingStressPa").value());
    this.screwShearStressPa =
        Models.quantiles(data.practiceRow("screwShearStressGrade129Pa").value());
    this.screwPreloadStressPa = Models.quantiles(data.practiceRow("screwPreloadStressPa").value());
    this.lockGrooveCoreRatio = data.practice("lockGrooveCoreRatio");
    this.lockGrooveLandRatio = data.practice("lockGrooveLandRatio");
    this.lockGrooveEngagedShare = data.practice("lockGrooveEngagedShare");
    this.backStopScrewRatio = data.practice("backStopScrewRatio");
    this.backStopStressPa = Models.quantiles(data.practiceRow("backStopStressPa").value());
    this.squareShearStressPa = Models.quantiles(data.practiceRow("squareShearStressPa").value());
    this.squareBearingStressPa =
        Models.quantiles(data.practiceRow("squareBearingStressPa").value());
    this.squarePerShank = data.practice("squarePerShank");
    this.squareLengthPerWidth = data.practice("squareLengthPerWidth");
    this.floatingRunoutLeftShare = data.practice("floatingRunoutLeftShare");
    this.compensationRunoutLeftShare = data.practice("compensationRunoutLeftShare");
    this.boringSettingLeftShare = data.practice("boringSettingLeftShare");
    this.singlePointUnbalanceM = data.practice("singlePointUnbalanceM");
    this.chamferContactShare = data.practice("chamferContactShare");
    this.screwHeadBearingRatio = data.practice("screwHeadBearingRatio");
    this.inclinedFlatSlopeRad = data.practice("inclinedFlatSlopeRad");
    this.tenonShearStressPa = Models.quantiles(data.practiceRow("tenonShearStressPa").value());
    this.tenonBearingStressPa = Models.quantiles(data.practiceRow("tenonBearingStressPa").value());
    this.arborFaceFriction = frictionSpread(data, "arbor-face");
    this.screwThreadFriction = friction(data, "screw-thread");
    this.nutFriction = friction(data, "nut-thread");
    this.coneFriction = friction(data, "collet-cone-new");
    this.toolLifeLoss =
        new ToolLifeLoss(
            data.practice("lifeLossPerRunoutPerM"),
            data.practice("lifeFactorFloor"),
            data.practice("lifeLossDiameterLimitM"));
    this.holeSideForceShare = data.practice("holeSideForceShare");
    this.reamerLeadAngleRad = data.practice("reamerLeadAngleRad");
    this.reamerMarginFrictionFactor = data.practice("reamerMarginFrictionFactor");
    this.genericProfileHalfWidthM = data.practice("genericProfileHalfWidthM");
    this.givenProfileHalfWidthM = data.practice("givenProfileHalfWidthM");
    this.holderBendingReserveM = data.practice("holderBendingReserveM");
    this.presetHalfWidthM = data.practice("stickOutPresetHalfWidthM");
    this.ruleHalfWidthM = data.practice("stickOutByRuleHalfWidthM");
    this.genericProfileBasis =
        List.of("plane-geometry", data.practiceRow("genericProfileHalfWidthM").sourceKey());
    this.givenProfileBasis = List.of("plane-geometry", "given");
    this.deflectionBasis =
        List.of("timoshenko-beam", data.practiceRow("jointRotationKappa").sourceKey());
    this.balanceBasis = List.of(data.practiceRow("balanceGradeCapMPerS").sourceKey());
    this.shrinkBasis = data.practiceRow("shrinkInterferenceBaseM").sourceKey();
    this.squareBasis = data.practiceRow("squareShearStressPa").sourceKey();
    this.stopBasis = data.practiceRow("flatBearingStressPa").sourceKey();
  }

  /** Rotational stiffness of a clamped shank over its median. */
  double kappaFactor(double standardScore) {
    return jointRotationKappa.atStandardScore(standardScore) / jointRotationKappa.median();
  }

  /** Lateral stiffness of a clamped shank over its median. */
  double lambdaFactor(double standardScore) {
    return jointTranslation.atStandardScore(standardScore) / jointTranslation.median();
  }

  private static double friction(ReferenceData data, String id) {
    return frictionSpread(data, id).median();
  }

  private static Quantiles frictionSpread(ReferenceData data, String id) {
    Friction row = data.frictions().get(id);
    if (row == null) {
      throw new IllegalStateException("no friction '" + id + "' in the tables");
    }
    return Models.quantiles(row.coefficient());
  }
}
