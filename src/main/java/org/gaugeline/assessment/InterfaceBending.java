package org.gaugeline.assessment;

import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.Seam;
import org.gaugeline.mechanics.balance.TaperSeat;
import org.gaugeline.mechanics.joint.FaceContact;
import org.gaugeline.mechanics.joint.TaperContact;
import org.gaugeline.mechanics.joint.ThreeSurfaceContact;
import org.gaugeline.reference.ContactMode;
import org.gaugeline.reference.InterfaceKind;
import org.gaugeline.reference.SpindleInterface;
import org.jspecify.annotations.Nullable;

/**
 * Bending that the spindle joint carries.
 *
 * @param onsetNm moment at which the contact begins to open
 * @param fullNm moment at which it has opened fully
 * @param warningRatio multiple of the onset above which a warning is given
 */
record InterfaceBending(double onsetNm, double fullNm, double warningRatio) {
  static InterfaceBending of(JobContext context, HolderBody holder) {
    Values values = context.models.values();
    SpindleInterface spindle = holder.spindleInterface();
    double force = context.job.machine().clampingForceN().median();
    ContactMode mode = context.job.machine().contact(holder.faceContact());
    if (mode == ContactMode.TAPER_ONLY) {
      TaperContact taper = taper(force, spindle, values);
      return new InterfaceBending(
          taper.openingMomentNm(), taper.endContactMomentNm(), values.bendingWarningRatio);
    }
    FaceContact face = face(force, spindle);
    TaperContact taper = taper(force * (1 - spindle.faceShare()), spindle, values);
    double onset =
        switch (mode) {
          case TAPER_AND_FACE ->
              // a hollow taper's own share is left out, which errs on the safe side
              spindle.kind() == InterfaceKind.STEEP_TAPER
                  ? face.openingMomentNm() + taper.openingMomentNm()
                  : face.openingMomentNm();
          case THREE_SURFACE -> threeSurface(force, face, spindle, values).openingMomentNm();
          case TAPER_ONLY -> taper.openingMomentNm();
        };
    return new InterfaceBending(
        onset, face.liftOffMomentNm() + taper.endContactMomentNm(), values.bendingWarningRatio);
  }

  /** Bending that a modular coupling carries, at its usual clamping force. */
  static InterfaceBending of(JobContext context, SpindleInterface coupling) {
    Values values = context.models.values();
    double force = coupling.clampingForceN().median();
    FaceContact face = face(force, coupling);
    TaperContact taper = taper(force * (1 - coupling.faceShare()), coupling, values);
    return new InterfaceBending(
        face.openingMomentNm(),
        face.liftOffMomentNm() + taper.endContactMomentNm(),
        values.bendingWarningRatio);
  }

  /** Full opening over moment of the tightest joint, spindle and couplings. */
  static double leastFullRatio(JobContext context, Held held, CutForces forces) {
    double gaugeLength = held.assembly().gaugeLengthM();
    HolderBody holder = held.body().holder();
    double least = Margin.ratio(of(context, holder).fullNm(), momentNm(forces, gaugeLength));
    for (Seam seam : holder.seams()) {
      if (seam instanceof Seam.Coupled coupled) {
        double moment = momentNm(forces, gaugeLength - coupled.atM());
        least = Math.min(least, Margin.ratio(of(context, coupled.coupling()).fullNm(), moment));
      }
    }
    return least;
  }

  /** Moment at the gauge plane: the lateral force acts in the middle of the cut. */
  static double momentNm(CutForces forces, double gaugeLengthM) {
    return forces.peakRadialForceN() * (gaugeLengthM - forces.axialDepthM() / 2);
  }

  private static FaceContact face(double force, SpindleInterface spindle) {
    return new FaceContact(
        force * spindle.faceShare(), spindle.faceOuterDiameterM(), spindle.faceInnerDiameterM());
  }

  private static TaperContact taper(double forceN, SpindleInterface spindle, Values values) {
    double halfAngle =
        switch (spindle.kind()) {
          case STEEP_TAPER -> TaperSeat.STEEP_HALF_ANGLE_RAD;
          case HOLLOW_TAPER -> values.hollowTaperHalfAngleRad;
          case POLYGON_TAPER -> values.polygonTaperHalfAngleRad;
          case BALL_TRACK_TAPER -> values.ballTrackHalfAngleRad;
        };
    return new TaperContact(
        forceN,
        spindle.taperLengthM(),
        values.taperContactLengthRatio,
        halfAngle,
        values.taperSeatFriction);
  }

  private static ThreeSurfaceContact threeSurface(
      double forceN, FaceContact face, SpindleInterface spindle, Values values) {
    return new ThreeSurfaceContact(
        face,
        forceN * (1 - spindle.faceShare()),
        spindle.taperLengthM() * values.ballTrackZoneDistanceRatio,
        values.ballTrackHalfAngleRad,
        values.taperSeatFriction);
  }

  /** Note above the onset of opening, warning above a multiple of it, error above full lift-off. */
  @Nullable Severity severity(double momentNm) {
    if (momentNm > fullNm) {
      return Severity.ERROR;
    }
    if (momentNm > warningRatio * onsetNm) {
      return Severity.WARNING;
    }
    return momentNm > onsetNm ? Severity.NOTE : null;
  }
}
