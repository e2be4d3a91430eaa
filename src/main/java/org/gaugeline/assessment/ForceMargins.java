package org.gaugeline.assessment;

import java.util.List;
import org.gaugeline.mechanics.runout.RunoutStack;
import org.gaugeline.mechanics.spread.Quantiles;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.Stage;

/** The margins that the cutting forces drive: error of size, slip, pull-out, push-in. */
final class ForceMargins {
  private ForceMargins() {}

  static void add(JobContext context, Held held, CutForces forces, List<Margin> margins) {
    sizeError(context, held, forces, margins);
    addGrip(context, held, forces, margins);
  }

  /** Runout moves a milled wall by half of itself and widens a hole by all of it. */
  private static double sizeShare(JobContext context) {
    return switch (context.job.operation().kind()) {
      case DRILLING, REAMING, BORING, TAPPING, SLOTTING -> 1;
      case FACE_MILLING -> 0;
      case SIDE_MILLING,
          HIGH_EFFICIENCY_MILLING,
          PROFILING,
          PLUNGE_MILLING,
          RAMPING,
          CHAMFERING,
          THREAD_MILLING ->
          0.5;
    };
  }

  /** A finishing edge of a bore is set by a trial bore, which leaves only what then varies. */
  private static double leftAfterSetting(JobContext context) {
    return context.job.operation().kind() == OperationKind.BORING
            && context.job.operation().stage() == Stage.FINISHING
            && context.job.tool().teeth() == 1
        ? context.models.values().boringSettingLeftShare
        : 1;
  }

  private static void sizeError(
      JobContext context, Held held, CutForces forces, List<Margin> margins) {
    OperationKind kind = context.job.operation().kind();
    if (kind == OperationKind.FACE_MILLING || kind == OperationKind.TAPPING) {
      return; // a tap follows its hole, a face has no side
    }
    if (SideRunout.makesTheWidth(context)) {
      widthError(context, held, margins);
      return;
    }
    RunoutModel runout = held.runout();
    Quantiles deflection = deflection(context, held, forces);
    double left = leftAfterSetting(context);
    double share = left * sizeShare(context);
    // an edge that is pushed off a bore takes its deflection from both sides of the diameter
    double bending = kind == OperationKind.BORING ? 2 * left : 1;
    double median = share * runout.medianTirM() + bending * deflection.median();
    double upper =
        median
            + Math.hypot(
                share * (runout.quantileTirM(0.95) - runout.medianTirM()),
                bending * (deflection.p95() - deflection.median()));
    Quantiles error = new Quantiles(median * median / upper, median, upper);
    margins.add(
        new Margin(
            Pair.SIZE_ERROR,
            median,
            error.atStandardScore(context.standardScore),
            context.allowedSizeErrorM,
            context.allowedSizeErrorM,
            () -> error.probabilityAtMost(context.allowedSizeErrorM),
            context.models.values().deflectionBasis));
  }

  /** The sides of a disc make the slot: bending and runout of its rim only change the depth. */
  private static void widthError(JobContext context, Held held, List<Margin> margins) {
    RunoutStack sides = SideRunout.of(context, held.assembly());
    if (sides == null) {
      return;
    }
    margins.add(
        new Margin(
            Pair.SIZE_ERROR,
            sides.medianTirM(),
            sides.quantileTirM(context.job.preferences().confidence()),
            context.allowedSizeErrorM,
            context.allowedSizeErrorM,
            () -> sides.probabilityAtMost(context.allowedSizeErrorM),
            List.of("disc-practice")));
  }

  /** Deflection of the tip under the force normal to the wall, workpiece included. */
  static Quantiles deflection(JobContext context, Held held, CutForces forces) {
    boolean asAsked = forces.axialDepthM() == context.forces.axialDepthM();
    Quantiles compliance =
        asAsked
            ? held.complianceMPerN()
            : Stack.compliance(
                context, held.body(), held.assembly().stickOutM(), forces.axialDepthM());
    double workpiece = context.job.workpiece().complianceMPerN();
    Quantiles both =
        new Quantiles(
            compliance.p05() + workpiece,
            compliance.median() + workpiece,
            compliance.p95() + workpiece);
    double force = Math.max(forces.wallNormalForceN(), 1e-9);
    return both.scale(force).times(Models.quantiles(forces.spread()));
  }

  /** Slip, pull-out and push-in alone. */
  static void addGrip(JobContext context, Held held, CutForces forces, List<Margin> margins) {
    double safety = context.safety;
    GripCapacity grip = held.grip();
    List<String> basis = List.of(grip.basis());
    Quantiles stopTorque = grip.stopTorqueNm();
    Quantiles stopAxial = grip.stopAxialN();
    if (stopTorque != null) {
      against(
          context, Pair.STOP_TORQUE, safety * forces.peakTorqueNm(), stopTorque, basis, margins);
    } else {
      double around = 2 * forces.peakTorqueNm() / context.gripped.diameterM();
      double slip = stopAxial == null ? forces.slipForceN() : around;
      against(context, Pair.SLIP, safety * slip, grip.frictionForceN(), basis, margins);
    }
    for (SeamGrip seam : held.seams()) {
      slipAtSeam(context, seam, forces, margins);
    }
    if (stopAxial != null && forces.pullN() > 0) {
      against(context, Pair.PULL_OUT, safety * forces.pullN(), stopAxial, basis, margins);
    }
    if (forces.pushN() > forces.pullN() && !grip.seated()) {
      double torque = stopTorque == null ? forces.peakTorqueNm() : 0;
      against(
          context, Pair.PUSH_IN, forces.pushN(), axialLeft(context, grip, torque), basis, margins);
    }
  }

  /** The weaker of two clamped shanks decides, so only that one is told. */
  private static void slipAtSeam(
      JobContext context, SeamGrip seam, CutForces forces, List<Margin> margins) {
    double demand = context.safety * seam.slipForceN(forces);
    Quantiles capacity = seam.grip().frictionForceN();
    double ratio = Margin.ratio(capacity.atStandardScore(-context.standardScore), demand);
    for (int i = margins.size() - 1; i >= 0; i--) {
      if (margins.get(i).pair() == Pair.SLIP) {
        if (margins.get(i).ratio() <= ratio) {
          return;
        }
        margins.remove(i);
      }
    }
    against(context, Pair.SLIP, demand, capacity, List.of(seam.grip().basis()), margins);
  }

  /**
   * Axial hold against being pushed in, beside a torque: friction √(F² − (2M/d)²), the flat, or a
   * screw behind the tool. A stop bears once the shank has moved onto it: the stronger holds.
   */
  private static Quantiles axialLeft(JobContext context, GripCapacity grip, double torqueNm) {
    Quantiles friction = frictionLeft(context, grip, torqueNm);
    Quantiles stop = grip.stopAxialN() == null ? context.backStopN : grip.stopAxialN();
    return safe(context, friction) >= safe(context, stop) ? friction : stop;
  }

  private static Quantiles frictionLeft(JobContext context, GripCapacity grip, double torqueNm) {
    double used = 2 * torqueNm / context.gripped.diameterM();
    Quantiles force = grip.frictionForceN();
    return new Quantiles(
        left(force.p05(), used), left(force.median(), used), left(force.p95(), used));
  }

  /** Whether only a screw behind the tool keeps it from being pushed in. */
  static boolean restsOnBackStop(JobContext context, Held held) {
    GripCapacity grip = held.grip();
    return grip.stopAxialN() == null
        && safe(context, frictionLeft(context, grip, context.forces.peakTorqueNm()))
            < context.forces.pushN();
  }

  private static double safe(JobContext context, Quantiles capacity) {
    return capacity.atStandardScore(-context.standardScore);
  }

  private static double left(double forceN, double usedN) {
    return forceN > usedN ? Math.sqrt(forceN * forceN - usedN * usedN) + 1e-3 : 1e-3;
  }

  private static void against(
      JobContext context,
      Pair pair,
      double demand,
      Quantiles capacity,
      List<String> basis,
      List<Margin> margins) {
    margins.add(
        new Margin(
            pair,
            demand,
            demand,
            capacity.median(),
            capacity.atStandardScore(-context.standardScore),
            () -> demand <= 0 ? 1 : capacity.probabilityAtLeast(demand),
            basis));
  }
}
