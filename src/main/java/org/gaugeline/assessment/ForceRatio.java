package org.gaugeline.assessment;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.job.Job;

/**
 * The tightest of everything that the cutting forces load: capacity over demand, and what it is.
 *
 * @param ratio capacity over demand at the asked confidence; below 1 is a fault; may be +∞
 * @param code pair or gate
 */
record ForceRatio(double ratio, String code) {
  /** No demand at all. */
  static final ForceRatio NOTHING = new ForceRatio(Double.POSITIVE_INFINITY, "");

  /** Size, gap, grip, interface bending, spindle torque and power together. */
  static ForceRatio least(JobContext context, Held held, CutForces forces, double omegaRadPerS) {
    List<Margin> margins = new ArrayList<>(6);
    ForceMargins.add(context, held, forces, margins);
    return leastOf(margins)
        .or(GapMargin.bendRatio(context, held, forces), Pair.GAP.id())
        .or(InterfaceBending.leastFullRatio(context, held, forces), "interface-bending")
        .or(ArborFace.fullRatio(context, held, forces), ArborFace.CODE)
        .or(drive(context, forces, omegaRadPerS));
  }

  /** Slip, pull-out and push-in alone. */
  static ForceRatio grip(JobContext context, Held held, CutForces forces) {
    List<Margin> margins = new ArrayList<>(3);
    ForceMargins.addGrip(context, held, forces, margins);
    return leastOf(margins);
  }

  /** Continuous torque and power of the spindle at a speed. */
  static ForceRatio drive(JobContext context, CutForces forces, double omegaRadPerS) {
    Job.Machine machine = context.job.machine();
    double available = Gates.availableTorqueNm(machine, omegaRadPerS);
    boolean byPower = forces.torqueNm() * omegaRadPerS > machine.powerW();
    return new ForceRatio(
        Margin.ratio(available, forces.torqueNm()), byPower ? "spindle-power" : "spindle-torque");
  }

  private static ForceRatio leastOf(List<Margin> margins) {
    ForceRatio least = NOTHING;
    for (Margin margin : margins) {
      least = least.or(margin.ratio(), margin.pair().id());
    }
    return least;
  }

  /** This or another, whichever is tighter. */
  ForceRatio or(ForceRatio other) {
    return other.ratio < ratio ? other : this;
  }

  /** This or another, whichever is tighter. */
  ForceRatio or(double otherRatio, String otherCode) {
    return otherRatio < ratio ? new ForceRatio(otherRatio, otherCode) : this;
  }

  boolean isMet() {
    return ratio >= 1;
  }
}
