package org.gaugeline.assessment;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.Seam;

/**
 * An extension's shank in its host: it must carry the same torque and pull as the tool's.
 *
 * @param diameterM the shank
 * @param grip what holds it, at speed
 */
record SeamGrip(double diameterM, GripCapacity grip) {

  static List<SeamGrip> all(JobContext context, HolderBody holder, double omegaRadPerS) {
    if (holder.seams().isEmpty()) {
      return List.of();
    }
    List<SeamGrip> grips = new ArrayList<>(1);
    for (Seam seam : holder.seams()) {
      if (seam instanceof Seam.Clamped clamped) {
        grips.add(
            new SeamGrip(
                clamped.shankDiameterM(), GripCapacity.of(context, clamped, omegaRadPerS)));
      }
    }
    return grips;
  }

  /** Friction asked of the shank's surface: √((2M/d)² + F²) at the peaks of both. */
  double slipForceN(CutForces forces) {
    return Math.hypot(2 * forces.peakTorqueNm() / diameterM, forces.pullN());
  }
}
