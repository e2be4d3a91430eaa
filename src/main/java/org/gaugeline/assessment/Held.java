package org.gaugeline.assessment;

import java.util.List;
import org.gaugeline.assembly.Assembly;
import org.gaugeline.mechanics.spread.Quantiles;

/**
 * An assembly with the quantities that its margins are made of, for one job.
 *
 * @param runout runout at the tip
 * @param grip what holds the shank, at speed
 * @param seams what holds each extension, at speed
 * @param complianceMPerN compliance in the middle of the cut as asked, with the joints' spread
 * @param gapM smallest gap of the holder to what stands around; negative = collision
 */
record Held(
    Body body,
    Assembly assembly,
    RunoutModel runout,
    GripCapacity grip,
    List<SeamGrip> seams,
    Quantiles complianceMPerN,
    double gapM) {

  static Held of(JobContext context, Body body, Assembly assembly) {
    double omega = context.job.operation().spindleSpeedRadPerS();
    return new Held(
        body,
        assembly,
        RunoutModel.of(context, assembly),
        GripCapacity.of(context, body, assembly.insertionM(), omega),
        SeamGrip.all(context, body.holder(), omega),
        Stack.compliance(context, body, assembly.stickOutM(), context.forces.axialDepthM()),
        context.reach.holderGapM(body, assembly.stickOutM()));
  }

  /** The same at another speed, which only loosens the grip. */
  Held at(JobContext context, double omegaRadPerS) {
    return new Held(
        body,
        assembly,
        runout,
        GripCapacity.of(context, body, assembly.insertionM(), omegaRadPerS),
        SeamGrip.all(context, body.holder(), omegaRadPerS),
        complianceMPerN,
        gapM);
  }
}
