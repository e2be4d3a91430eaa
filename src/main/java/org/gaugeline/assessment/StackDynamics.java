package org.gaugeline.assessment;

import java.util.List;
import org.gaugeline.assembly.Assembly;
import org.gaugeline.assembly.Damper;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.Joint;
import org.gaugeline.assembly.Seam;
import org.gaugeline.mechanics.beam.BeamChain;
import org.gaugeline.mechanics.beam.ElasticJoint;
import org.gaugeline.mechanics.beam.ReducedChain;
import org.gaugeline.mechanics.beam.ReducedModes;
import org.gaugeline.mechanics.damper.TuningHost;
import org.gaugeline.mechanics.receptance.ModalResponse;
import org.gaugeline.mechanics.receptance.TipResponse;
import org.gaugeline.mechanics.receptance.TunedMass;
import org.gaugeline.mechanics.receptance.TunedResponse;
import org.jspecify.annotations.Nullable;

/**
 * Frequency response of the tip of one held tool, for draws of what is least known of its joints.
 *
 * <p>The whole chain (spindle joint, body with its seams, tool joint, tool) is reduced once; a draw
 * changes its joints and gives the three lowest modes and a residual that keeps the static
 * compliance. A tuned mass is hung on these modes at its place.
 *
 * <p>Damping of a mode is weighted by strain energy, ζ = e·ζ_spindle + (1 − e)·ζ_tool with e the
 * share of its energy that the spindle joint holds (Ungar and Kerwin, J. Acoust. Soc. Am. 34 (1962)
 * 954; memory). A damping ratio that was measured of a part counts for all modes instead.
 *
 * <p>Not for use by two threads at once.
 */
final class StackDynamics {
  private static final double LEAST_DAMPING = 1e-4;
  private static final double MOST_DAMPING = 0.5;

  private final JobContext context;
  private final Body body;
  private final double stickOutM;
  private final List<Seam> seams;
  private final ReducedChain reduced;
  private final ReducedModes modes = new ReducedModes();
  private final double[] springs;
  private final @Nullable TunedMass tuned;
  private @Nullable ModalResponse median;

  StackDynamics(JobContext context, Body body, double stickOutM) {
    this.context = context;
    this.body = body;
    this.stickOutM = stickOutM;
    seams = BodyBeam.joints(body.holder());
    int joints = seams.size() + 2;
    springs = new double[2 * joints];
    Damper damper = body.holder().damper();
    BeamChain chain = chain(StackDraw.MEDIAN);
    reduced =
        damper == null
            ? ReducedChain.of(chain, joints)
            : ReducedChain.of(chain, joints, damper.atM());
    tuned = damper == null ? null : tuned(damper);
  }

  /** The dynamics of an assembly, of which a job keeps those whose stable depth was asked for. */
  static StackDynamics of(JobContext context, Body body, Assembly assembly) {
    StableDepth known = StableDepth.known(context, assembly);
    return known == null
        ? new StackDynamics(context, body, assembly.stickOutM())
        : known.dynamics.predicted();
  }

  /** Damping ratio of body and tool: practice, the family's share, a little for every joint. */
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

  /** Whether a tuned mass hangs in the body. */
  boolean isTuned() {
    return tuned != null;
  }

  /** Response of the tip, the same in both directions. */
  TipResponse response(StackDraw draw) {
    return tuned == null ? modal(draw) : damped(draw, tuned);
  }

  /** The response at the median as modes, solved once; a tuned mass is left out. */
  ModalResponse median() {
    ModalResponse known = median == null ? modal(StackDraw.MEDIAN) : median;
    median = known;
    return known;
  }

  /** Damping ratio of the lowest mode at the median; a tuned mass is left out. */
  double lowestDampingRatio() {
    return median().modes().get(0).dampingRatio();
  }

  /** The response as modes; a tuned mass is left out. */
  ModalResponse modal(StackDraw draw) {
    solve(draw);
    return ModalResponse.of(modes, damping(draw)::ratio);
  }

  /** The response with a tuned mass at the place of the body's. */
  TunedResponse damped(StackDraw draw, TunedMass mass) {
    solve(draw);
    return TunedResponse.of(modes, damping(draw)::ratio, mass);
  }

  /** What damps a draw: as measured of a part, else as usual. */
  Damping damping(StackDraw draw) {
    HolderBody holder = body.holder();
    double measured = holder.known().dampingRatio();
    return Double.isNaN(measured)
        ? new Damping(
            context.models.values().spindleDampingRatio.atStandardScore(draw.spindleDamping()),
            usualDampingRatio(context, holder, draw))
        : new Damping(measured, measured);
  }

  /**
   * Damping ratios of a mode that strains the spindle joint alone, and of one that does not.
   *
   * @param spindle ζ_spindle
   * @param tool ζ_tool
   */
  record Damping(double spindle, double tool) {
    /** ζ of a mode of which the spindle joint holds a share of the strain energy. */
    double ratio(double energyShare) {
      double weighted = energyShare * spindle + (1 - energyShare) * tool;
      return Math.min(MOST_DAMPING, Math.max(LEAST_DAMPING, weighted));
    }
  }

  private void solve(StackDraw draw) {
    int at = put(0, spindleJoint(draw));
    for (Seam seam : seams) {
      ElasticJoint joint = BodyBeam.joint(seam, context.models, draw.seams());
      at = joint == null ? at : put(at, joint);
    }
    put(at, toolJoint(draw));
    modes.solve(reduced, springs);
  }

  private int put(int at, ElasticJoint joint) {
    springs[at] = joint.translationNPerM();
    springs[at + 1] = joint.rotationNmPerRad();
    return at + 2;
  }

  /** The whole stack as one chain, without a tuned mass. */
  BeamChain chain(StackDraw draw) {
    return BeamChain.fromBase()
        .add(spindleJoint(draw))
        .add(
            BodyBeam.between(
                body.holder(), context.models, draw.seams(), 0, body.holder().projectionM()))
        .add(toolJoint(draw))
        .add(context.tool(stickOutM).free())
        .toTip();
  }

  ElasticJoint spindleJoint(StackDraw draw) {
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

  ElasticJoint toolJoint(StackDraw draw) {
    Values values = context.models.values();
    HolderBody holder = body.holder();
    Joint measured = holder.known().front();
    return new ElasticJoint(
        measured.radialOr(
            Stack.jointTranslation(context, holder) * values.lambdaFactor(draw.toolSlide())),
        measured.rotationalOr(
            Stack.jointRotation(context, holder) * values.kappaFactor(draw.toolTurn())));
  }

  /**
   * A tuned mass as told, and what is not told as it leaves a careful shop: tuned against chatter
   * for the lowest mode of the stack at the median of its joints. How much of it the tip feels
   * follows from the shape of that mode.
   */
  TunedMass tuned(Damper damper) {
    TunedMass usual = tuningHost(damper).chatterTuned();
    double told = 2 * Math.PI * damper.frequencyHz();
    return new TunedMass(
        damper.massKg(),
        Double.isNaN(told) ? usual.angularFrequencyRadPerS() : told,
        Double.isNaN(damper.dampingRatio()) ? usual.dampingRatio() : damper.dampingRatio());
  }

  /** The lowest mode as a mass meets it, at the median of the joints. */
  TuningHost tuningHost(Damper damper) {
    solve(StackDraw.MEDIAN);
    return TuningHost.of(modes, damper.massKg());
  }
}
