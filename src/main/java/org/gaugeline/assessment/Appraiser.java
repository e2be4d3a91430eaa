package org.gaugeline.assessment;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.assembly.Assembly;
import org.gaugeline.assembly.HolderBody;

/**
 * Weighs one assembly against one job: every pair of the contract's table that applies, each a
 * margin with its probability, and every gate.
 */
public final class Appraiser {
  private final JobContext context;
  private final double confidence;

  public Appraiser(JobContext context) {
    this.context = context;
    this.confidence = context.job.preferences().confidence();
  }

  /** Weighs a body at the stick-out that suits the job best. */
  public Appraisal appraise(Body body) {
    return appraise(body, StickOut.choose(context, body));
  }

  /** The assembly at a given stick-out. */
  public static Assembly standing(JobContext context, Body body, double stickOutM) {
    return StickOut.given(context, body, stickOutM);
  }

  /** What was weighed, with its stable depth also where that is predicted: it takes long. */
  public static Appraisal withStableDepth(JobContext context, Appraisal appraisal) {
    if (appraisal.margin(Pair.STABLE_DEPTH) != null) {
      return appraisal;
    }
    Margin stable = StableDepth.margin(context, appraisal.body(), appraisal.assembly());
    return stable == null ? appraisal : appraisal.with(stable);
  }

  /** The same with a stable depth that the true one does not exceed: one draw tells it. */
  public static Appraisal withStableDepthAtMost(JobContext context, Appraisal appraisal) {
    Margin most = StableDepth.optimisticMargin(context, appraisal.body(), appraisal.assembly());
    return most == null ? appraisal : appraisal.with(most);
  }

  /** Weighs an assembly as it stands. */
  public Appraisal appraise(Body body, Assembly assembly) {
    Held held = Held.of(context, body, assembly);
    SpeedLimits speed = SpeedLimits.of(context, body, assembly);
    Geometry geometry = geometry(body, assembly);
    List<Margin> margins = new ArrayList<>(10);
    runout(held.runout(), body, margins);
    Roughness.add(context, held.runout(), body.holder().family(), margins);
    ForceMargins.add(context, held, context.forces, margins);
    GapMargin.add(context, held, margins.get(0), margins);
    insertion(body.holder(), assembly.insertionM(), margins);
    SpeedMargins.add(context, body, geometry, speed, margins);
    if (assembly.measured().hasDynamics()) {
      Margin stable = StableDepth.margin(context, body, assembly);
      if (stable != null) {
        margins.add(stable);
      }
    }
    return new Appraisal(held, geometry, margins, Gates.of(context, body, geometry), speed);
  }

  private Geometry geometry(Body body, Assembly assembly) {
    ToolFlexibility tool = context.tool(assembly.stickOutM());
    double gaugeLength = assembly.gaugeLengthM();
    double weighed = assembly.measured().massKg();
    double mass = Double.isNaN(weighed) ? body.massKg() + tool.massKg() : weighed;
    double g = context.models.values().gravityMPerS2;
    double moment =
        g
            * (body.massKg() * body.centroidM()
                + tool.massKg() * (gaugeLength - tool.centroidFromTipM()));
    return new Geometry(
        gaugeLength,
        assembly.stickOutM(),
        assembly.insertionM(),
        body.noseDiameterM(),
        mass,
        Math.abs(moment));
  }

  private void runout(RunoutModel runout, Body body, List<Margin> margins) {
    double allowed = context.allowedRunoutM;
    margins.add(
        new Margin(
            Pair.RUNOUT,
            runout.medianTirM(),
            runout.quantileTirM(confidence),
            allowed,
            allowed,
            () -> runout.probabilityAtMost(allowed),
            List.of(
                runout.isMeasured()
                    ? "measured"
                    : Double.isNaN(body.holder().ratings().runoutTirM())
                        ? body.holder().family().sourceKey()
                        : "given")));
  }

  private void insertion(HolderBody holder, double insertionM, List<Margin> margins) {
    boolean setByFlat = holder.minInsertionM() == holder.maxInsertionM();
    if (setByFlat && insertionM >= holder.minInsertionM() - 1e-9) {
      return; // the screw must land on the flat: there is no other insertion, and it is there
    }
    certain(Pair.INSERTION, holder.minInsertionM(), insertionM, holder.sourceKey(), margins);
  }

  private void certain(
      Pair pair, double demand, double capacity, String basis, List<Margin> margins) {
    boolean met = Margin.ratio(capacity, demand) >= 1;
    margins.add(
        new Margin(pair, demand, demand, capacity, capacity, () -> met ? 1 : 0, List.of(basis)));
  }
}
