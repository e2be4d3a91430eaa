package org.gaugeline.assessment;

import org.gaugeline.assembly.Damper;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.Joint;
import org.gaugeline.assembly.Seam;
import org.gaugeline.mechanics.beam.BeamChain;
import org.gaugeline.mechanics.beam.ElasticJoint;
import org.gaugeline.mechanics.damper.TuningHost;
import org.gaugeline.mechanics.receptance.LossFactors;
import org.gaugeline.mechanics.receptance.ModalResponse;
import org.gaugeline.mechanics.receptance.ReceptanceGrid;
import org.gaugeline.mechanics.receptance.TipResponse;
import org.gaugeline.mechanics.receptance.TunedMass;
import org.jspecify.annotations.Nullable;

/**
 * Frequency response of the tip of one held tool, for draws of what is least known of its joints.
 *
 * <p>Without a tuned mass: the three lowest modes of the whole chain (spindle joint, body with its
 * seams, tool joint, tool), each with the damping ratio of the tip, and a residual that keeps the
 * static compliance. With one: receptance coupling from the spindle outwards with the mass hung on
 * at its place, hysteretic damping η = 2ζ everywhere.
 */
final class StackDynamics {
  static final int MODES = 3;

  private static final double LOWEST_RAD_PER_S = 2 * Math.PI * 20;
  private static final double HIGHEST_RAD_PER_S = 2 * Math.PI * 10_000;
  private static final double LEAST_DAMPING = 1e-4;
  private static final double MOST_DAMPING = 0.5;
  private static final double GRID_STEP = 0.005;

  private final JobContext context;
  private final Body body;
  private final double stickOutM;
  private @Nullable TunedMass tuned;

  StackDynamics(JobContext context, Body body, double stickOutM) {
    this.context = context;
    this.body = body;
    this.stickOutM = stickOutM;
  }

  /** Damping ratio of the tip: what was measured of a part, else what is usual. */
  static double dampingRatio(JobContext context, HolderBody holder, StackDraw draw) {
    double measured = holder.known().dampingRatio();
    return Double.isNaN(measured)
        ? usualDampingRatio(context, holder, draw)
        : Math.min(MOST_DAMPING, Math.max(LEAST_DAMPING, measured));
  }

  /** Practice, the family's share, and a little for every joint. */
  static double usualDampingRatio(JobContext context, HolderBody holder, StackDraw draw) {
    int joints = 0;
    for (Seam seam : holder.seams()) {
      joints += seam instanceof Seam.Sleeved ? 0 : 1;
    }
    Values values = context.models.values();
    return values.dampingRatio.atStandardScore(draw.damping())
        * holder.family().dampingFactor()
        * Math.pow(values.dampingPerJointFactor, joints);
  }

  /** Response of the tip, the same in both directions. */
  TipResponse response(StackDraw draw) {
    Damper damper = body.holder().damper();
    if (damper == null) {
      return modal(draw);
    }
    TunedMass mass = tuned == null ? tuned(damper) : tuned;
    tuned = mass;
    return damped(draw, mass);
  }

  /** The response as modes; a tuned mass is left out. */
  ModalResponse modal(StackDraw draw) {
    return ModalResponse.of(chain(draw), MODES, dampingRatio(context, body.holder(), draw));
  }

  /** The response by receptance coupling, without a tuned mass. */
  TipResponse coupled(StackDraw draw) {
    return damped(draw, null);
  }

  /** The whole stack as one chain, without a tuned mass. */
  BeamChain chain(StackDraw draw) {
    BeamChain.Builder builder = BeamChain.fromBase();
    builder.add(spindleJoint(draw));
    builder.add(
        BodyBeam.between(
            body.holder(), context.models, draw.seams(), 0, body.holder().projectionM()));
    addTool(builder, draw);
    return builder.toTip();
  }

  private ElasticJoint spindleJoint(StackDraw draw) {
    HolderBody holder = body.holder();
    return new ElasticJoint(
        holder
            .known()
            .rear()
            .radialOr(
                Models.quantiles(holder.spindleInterface().translationNPerM())
                    .atStandardScore(draw.spindleSlide())),
        Models.quantiles(Stack.rotation(context, holder)).atStandardScore(draw.spindleTurn()));
  }

  private void addTool(BeamChain.Builder builder, StackDraw draw) {
    Values values = context.models.values();
    HolderBody holder = body.holder();
    Joint measured = holder.known().front();
    builder.add(
        new ElasticJoint(
            measured.radialOr(
                Stack.jointTranslation(context, holder) * values.lambdaFactor(draw.toolSlide())),
            measured.rotationalOr(
                Stack.jointRotation(context, holder) * values.kappaFactor(draw.toolTurn()))));
    builder.add(context.tool(stickOutM).free());
  }

  /** The stack up to a place in the body. */
  private BeamChain root(StackDraw draw, double toM) {
    return BeamChain.fromBase()
        .add(spindleJoint(draw))
        .add(BodyBeam.between(body.holder(), context.models, draw.seams(), 0, toM))
        .toTip();
  }

  /**
   * A tuned mass as told, and what is not told as it leaves a careful shop: tuned against chatter
   * for the lowest mode of the stack at the median of its joints. How much of it the tip feels
   * follows from the shape of that mode.
   */
  TunedMass tuned(Damper damper) {
    TunedMass usual =
        TuningHost.of(chain(StackDraw.MEDIAN), damper.atM(), damper.massKg()).chatterTuned();
    double told = 2 * Math.PI * damper.frequencyHz();
    return new TunedMass(
        damper.massKg(),
        Double.isNaN(told) ? usual.angularFrequencyRadPerS() : told,
        Double.isNaN(damper.dampingRatio()) ? usual.dampingRatio() : damper.dampingRatio());
  }

  TipResponse damped(StackDraw draw, @Nullable TunedMass mass) {
    HolderBody holder = body.holder();
    Damper damper = holder.damper();
    LossFactors loss = LossFactors.uniform(2 * dampingRatio(context, holder, draw));
    double place = mass == null || damper == null ? holder.projectionM() : damper.atM();
    ReceptanceGrid grid = ReceptanceGrid.wall(grid()).extend(root(draw, place), loss);
    BeamChain.Builder rest = BeamChain.fromBase();
    if (mass != null) {
      grid = grid.attach(mass);
      rest.add(BodyBeam.between(holder, context.models, draw.seams(), place, holder.projectionM()));
    }
    addTool(rest, draw);
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
