package org.gaugeline.assessment;

import org.gaugeline.assembly.HolderBody;
import org.gaugeline.mechanics.beam.BeamChain;
import org.gaugeline.mechanics.receptance.ComplexJoint;
import org.gaugeline.mechanics.receptance.LossFactors;
import org.gaugeline.mechanics.receptance.ReceptanceGrid;
import org.gaugeline.mechanics.receptance.SampledResponse;
import org.gaugeline.mechanics.receptance.TunedMass;
import org.jspecify.annotations.Nullable;

/**
 * The second route to the tip of a stack: receptance coupling from the spindle outwards on a grid
 * of frequencies, on another mesh, without modes. Damping is hysteretic with η = 2ζ, of the spindle
 * joint its own, so that energy weighs it without being asked.
 */
final class StackCoupling {
  private static final double LOWEST_RAD_PER_S = 2 * Math.PI * 20;
  private static final double HIGHEST_RAD_PER_S = 2 * Math.PI * 10_000;
  private static final double GRID_STEP = 0.005;

  private StackCoupling() {}

  static SampledResponse of(
      JobContext context,
      HolderBody holder,
      double stickOutM,
      StackDraw draw,
      @Nullable TunedMass mass) {
    StackDynamics stack =
        new StackDynamics(context, Body.prepare(holder, context.models), stickOutM);
    StackDynamics.Damping damping = stack.damping(draw);
    LossFactors loss = LossFactors.uniform(2 * damping.tool());
    double projection = holder.projectionM();
    double place = holder.damper() == null ? projection : holder.damper().atM();
    ReceptanceGrid grid =
        ReceptanceGrid.wall(grid())
            .through(ComplexJoint.hysteretic(stack.spindleJoint(draw), 2 * damping.spindle()))
            .extend(BodyBeam.between(holder, context.models, draw.seams(), 0, place), loss);
    BeamChain.Builder rest = BeamChain.fromBase();
    if (mass != null) {
      grid = grid.attach(mass);
    }
    if (place < projection) {
      rest.add(BodyBeam.between(holder, context.models, draw.seams(), place, projection));
    }
    rest.add(stack.toolJoint(draw)).add(context.tool(stickOutM).free());
    return grid.extend(rest.toTip(), loss).toResponse();
  }

  private static double[] grid() {
    int count = (int) Math.ceil(Math.log(HIGHEST_RAD_PER_S / LOWEST_RAD_PER_S) / GRID_STEP);
    double[] omega = new double[count + 1];
    for (int i = 0; i <= count; i++) {
      omega[i] = LOWEST_RAD_PER_S * Math.exp(i * GRID_STEP);
    }
    return omega;
  }
}
