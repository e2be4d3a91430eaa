package org.gaugeline.assessment;

import org.gaugeline.assembly.HolderBody;
import org.gaugeline.job.Job;
import org.gaugeline.mechanics.grip.AllowableStress;
import org.gaugeline.mechanics.grip.ClampingScrews;
import org.gaugeline.mechanics.grip.DriveKey;
import org.gaugeline.mechanics.grip.NutThread;
import org.gaugeline.mechanics.joint.FaceContact;
import org.gaugeline.mechanics.spread.Quantiles;
import org.gaugeline.reference.ArborSize;

/**
 * What holds a cutter with a bore: screws press it onto the face, friction there and tenons or a
 * key carry the torque. A pull must first undo what the screws press with; a push finds the face.
 */
final class ArborGrip {
  private static final int TENONS = 2;

  private ArborGrip() {}

  static GripCapacity of(
      JobContext context, HolderBody holder, double noseDiameterM, boolean disc) {
    ArborSize arbor = context.arbor;
    if (arbor == null) {
      throw new IllegalArgumentException("no arbor is known for a bore of " + holder.boreM());
    }
    Values values = context.models.values();
    Quantiles preload = preloadN(context, holder, arbor);
    double given = holder.ratings().frictionCoefficient();
    Quantiles friction =
        preload.times(Double.isNaN(given) ? values.arborFaceFriction : Quantiles.exact(given));
    double bore = arbor.boreM();
    // a disc is pressed between two faces, a mill onto one
    int faces = disc ? 2 : 1;
    double arm = new FaceContact(1, faceM(context, arbor, noseDiameterM), bore).frictionTorqueNm(1);
    Quantiles around = friction.scale(faces * arm);
    Quantiles shear = values.tenonShearStressPa;
    Quantiles bearing = values.tenonBearingStressPa;
    Job.Tool tool = context.job.tool();
    Quantiles torque =
        GripCapacity.beside(
            around,
            drive(arbor, tool, disc, shear.p05(), bearing.p05()).torqueNm(),
            drive(arbor, tool, disc, shear.median(), bearing.median()).torqueNm(),
            drive(arbor, tool, disc, shear.p95(), bearing.p95()).torqueNm());
    return new GripCapacity(around.scale(2 / bore), torque, preload, arbor.sourceKey(), true);
  }

  /** Face that touches: a narrower cutter or nose covers less than the standard's. */
  static double faceM(JobContext context, ArborSize arbor, double noseDiameterM) {
    double covered = Math.min(noseDiameterM, context.job.tool().diameterM());
    double least = context.models.values().leastArborFacePerBore * arbor.boreM();
    return Math.min(arbor.faceDiameterM(), Math.max(covered, least));
  }

  static Quantiles preloadN(JobContext context, HolderBody holder, ArborSize arbor) {
    Values values = context.models.values();
    double given = holder.ratings().nutTorqueNm();
    Quantiles torque =
        Double.isNaN(given) ? Models.quantiles(arbor.screwTorqueNm()) : Quantiles.exact(given);
    if (Double.isNaN(given) && !context.job.shop().torqueWrench()) {
      torque = torque.times(values.noWrenchTorqueFactor);
    }
    ClampingScrews screws =
        new ClampingScrews(
            NutThread.metric(
                arbor.screwDiameterM(),
                arbor.screwPitchM(),
                values.screwHeadBearingRatio * arbor.screwDiameterM()),
            arbor.screws());
    return torque.scale(screws.preloadN(1, values.screwThreadFriction));
  }

  private static DriveKey drive(
      ArborSize arbor, Job.Tool tool, boolean disc, double shearPa, double bearingPa) {
    AllowableStress allowable = new AllowableStress(shearPa, bearingPa);
    if (disc) {
      double length = Math.min(tool.overallLengthM(), arbor.pilotLengthM());
      return new DriveKey(
          new DriveKey.Key(arbor.keyWidthM(), arbor.keyDepthM(), length),
          1,
          arbor.boreM() / 2,
          allowable);
    }
    double length = (arbor.faceDiameterM() - arbor.boreM()) / 2;
    return new DriveKey(
        new DriveKey.Key(arbor.tenonWidthM(), arbor.tenonDepthM(), length),
        TENONS,
        (arbor.faceDiameterM() + arbor.boreM()) / 4,
        allowable);
  }
}
