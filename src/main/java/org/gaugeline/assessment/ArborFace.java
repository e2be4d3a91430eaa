package org.gaugeline.assessment;

import org.gaugeline.assembly.HolderBody;
import org.gaugeline.mechanics.joint.FaceContact;
import org.gaugeline.reference.ArborSize;
import org.gaugeline.reference.GripModel;
import org.jspecify.annotations.Nullable;

/**
 * The face of an arbor, on which a cutter is pressed by its screws, under a side load.
 *
 * <p>The force in the middle of the cut tilts the cutter over its face: M = F·(L − ap/2), with L
 * from the face to the lowest edge. The face begins to open at M₀ = F_f·(D_o² + D_i²)/(8·D_o), the
 * kern of the annulus, and has opened fully at M_t = F_f·D_o/2 (derived, see {@link FaceContact}).
 * F_f is what the screws press with, less the pull of the cut, which errs on the safe side: a
 * bolted joint takes part of a pull by bending less than by pressing less. What the pilot carries
 * is left out; it has play.
 */
final class ArborFace {
  static final String CODE = "arbor-face-bending";

  /** Least force on a face, so that one that is pulled off is a number and not a fault. */
  private static final double NOTHING_N = 1e-3;

  private ArborFace() {}

  /** Bending that the face carries; null where the holder is no arbor or carries another cutter. */
  static @Nullable InterfaceBending bending(JobContext context, Body body, CutForces forces) {
    HolderBody holder = body.holder();
    GripModel model = holder.family().gripModel();
    ArborSize arbor = context.arbor;
    boolean carries = model == GripModel.ARBOR || model == GripModel.DISC_ARBOR;
    if (arbor == null || !carries || !holder.takes(arbor.boreM())) {
      return null;
    }
    double pressed = ArborGrip.preloadN(context, holder, arbor).median() - forces.pullN();
    double outer = ArborGrip.faceM(context, arbor, body.noseDiameterM());
    FaceContact face = new FaceContact(Math.max(pressed, NOTHING_N), outer, arbor.boreM());
    return new InterfaceBending(
        face.openingMomentNm(),
        face.liftOffMomentNm(),
        context.models.values().bendingWarningRatio);
  }

  /** Moment over the face, N·m: the lateral force acts in the middle of the cut. */
  static double momentNm(CutForces forces, double standingOutM) {
    return forces.peakRadialForceN() * (standingOutM - forces.axialDepthM() / 2);
  }

  /** Full opening over moment; +∞ where there is no such face. */
  static double fullRatio(JobContext context, Held held, CutForces forces) {
    InterfaceBending bending = bending(context, held.body(), forces);
    return bending == null
        ? Double.POSITIVE_INFINITY
        : Margin.ratio(bending.fullNm(), momentNm(forces, held.assembly().stickOutM()));
  }
}
