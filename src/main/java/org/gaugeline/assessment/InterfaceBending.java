package org.gaugeline.assessment;

import org.gaugeline.assembly.HolderBody;
import org.gaugeline.job.Job;
import org.gaugeline.mechanics.balance.TaperSeat;
import org.gaugeline.mechanics.joint.FaceContact;
import org.gaugeline.mechanics.joint.SpindleContact;
import org.gaugeline.mechanics.joint.TaperContact;
import org.gaugeline.mechanics.joint.ThreeSurfaceContact;
import org.gaugeline.reference.ContactMode;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.SpindleInterface;
import org.jspecify.annotations.Nullable;

/**
 * Bending that the spindle joint carries.
 *
 * @param onsetNm moment at which the contact begins to open
 * @param fullNm moment at which it has opened fully
 */
record InterfaceBending(double onsetNm, double fullNm) {
  private static final double WARNING_RATIO = 1.5;

  static InterfaceBending of(JobContext context, HolderBody holder) {
    Job.Machine machine = context.job.machine();
    ReferenceData data = context.models.data();
    SpindleInterface spindle = holder.spindleInterface();
    double force = machine.clampingForceN().median();
    ContactMode mode = machine.contact(holder.faceContact());
    SpindleContact contact =
        switch (mode) {
          case TAPER_ONLY -> taper(force, spindle, data);
          case TAPER_AND_FACE -> face(force, spindle);
          case THREE_SURFACE -> threeSurface(force, spindle, data);
        };
    double onset = contact.openingMomentNm();
    // full lift-off is known for a face; elsewhere the same ratio to the onset is taken
    FaceContact face = mode == ContactMode.TAPER_ONLY ? null : face(force, spindle);
    double ratio =
        face == null
            ? data.practice("taperFullOverOnset")
            : face.liftOffMomentNm() / face.openingMomentNm();
    return new InterfaceBending(onset, onset * ratio);
  }

  private static FaceContact face(double force, SpindleInterface spindle) {
    return new FaceContact(
        force * spindle.faceShare(), spindle.faceOuterDiameterM(), spindle.faceInnerDiameterM());
  }

  private static TaperContact taper(double force, SpindleInterface spindle, ReferenceData data) {
    return new TaperContact(
        force,
        spindle.taperLengthM(),
        data.practice("taperContactLengthRatio"),
        TaperSeat.STEEP_HALF_ANGLE_RAD,
        data.practice("taperSeatFriction"));
  }

  private static ThreeSurfaceContact threeSurface(
      double force, SpindleInterface spindle, ReferenceData data) {
    return new ThreeSurfaceContact(
        face(force, spindle),
        force * (1 - spindle.faceShare()),
        spindle.taperLengthM() * data.practice("ballTrackZoneDistanceRatio"),
        data.practice("ballTrackHalfAngleRad"),
        data.practice("taperSeatFriction"));
  }

  /** Note above the onset of opening, warning above 1.5 times it, error above full lift-off. */
  @Nullable Severity severity(double momentNm) {
    if (momentNm > fullNm) {
      return Severity.ERROR;
    }
    if (momentNm > WARNING_RATIO * onsetNm) {
      return Severity.WARNING;
    }
    return momentNm > onsetNm ? Severity.NOTE : null;
  }
}
