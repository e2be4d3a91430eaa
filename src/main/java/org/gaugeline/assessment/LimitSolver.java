package org.gaugeline.assessment;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import org.gaugeline.assembly.Assembly;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.job.Job;
import org.gaugeline.job.OperationCompletion;
import org.gaugeline.mechanics.reach.Obstacle;
import org.gaugeline.mechanics.reach.WallReach;
import org.gaugeline.mechanics.spread.Quantiles;
import org.gaugeline.reference.OperationKind;
import org.jspecify.annotations.Nullable;

/**
 * Solves how far each quantity can go, all else as asked, before a pair that depends on it is no
 * longer met at the asked confidence or a gate that depends on it is an error. The solution is on
 * the met side.
 *
 * <p>Depth and feed are searched on a grid of halvings that all assemblies of a request share, so
 * that the forces of a grid point are computed once.
 */
public final class LimitSolver {
  private static final int HALVINGS = 11;
  private static final int FEED_HALVINGS = 9;
  private static final double FEED_RANGE = 128;

  private final JobContext context;
  private final Map<Double, CutForces> byDepth = new HashMap<>();
  private final Map<Double, CutForces> byFeed = new HashMap<>();
  private final Map<Double, CutForces> bySpeed = new HashMap<>();

  public LimitSolver(JobContext context) {
    this.context = context;
  }

  /** All limits of one assembly. */
  public Limits solve(Appraisal appraisal) {
    Held held = Held.of(context, appraisal.body(), appraisal.assembly());
    return new Limits(
        spindleSpeed(appraisal, held),
        torque(held),
        axialForce(held),
        axialDepth(held),
        feed(held),
        stickOut(appraisal),
        featureDepth(appraisal));
  }

  private Limit axialDepth(Held held) {
    if (OperationCompletion.isHole(context.job.operation().kind())) {
      return new Limit(Double.POSITIVE_INFINITY, "");
    }
    double flute = context.job.tool().fluteLengthM();
    double feed = context.job.operation().feedPerToothM();
    double deepest = Math.min(flute, deepestAssumedM(held.assembly().stickOutM()));
    return search(
        deepest,
        deepest < flute ? "assumed-feature-depth" : "flute-length",
        depth ->
            forceFault(
                held, byDepth.computeIfAbsent(depth, ap -> context.cut.at(ap, feed)), omega()));
  }

  /**
   * Where the feature is as deep as the cut, a deeper cut would need more stick-out to clear it.
   */
  private double deepestAssumedM(double stickOutM) {
    boolean assumed =
        context.job.assumptions().stream().anyMatch(a -> a.pointer().equals("/feature/depthMm"));
    double room = Pair.GAP.fullRatio() * context.job.feature().wallClearanceM();
    return assumed && context.job.operation().kind() != OperationKind.FACE_MILLING
        ? stickOutM - room
        : Double.POSITIVE_INFINITY;
  }

  private Limit feed(Held held) {
    double asked = context.job.operation().feedPerToothM();
    double most =
        Math.max(
            2 * asked,
            context.models.data().practice("feedRangePerDiameter")
                * context.job.tool().diameterM());
    double depth = Math.max(context.job.operation().axialDepthM(), 1e-9);
    return searchByRatio(
        most,
        "feed-range",
        feed -> {
          String fault =
              forceFault(
                  held, byFeed.computeIfAbsent(feed, fz -> context.cut.at(depth, fz)), omega());
          return fault == null ? roughnessFault(held, feed) : fault;
        });
  }

  private @Nullable String roughnessFault(Held held, double feedPerToothM) {
    double asked = context.job.feature().raM();
    if (Double.isNaN(asked) || !Roughness.leavesCusps(context)) {
      return null;
    }
    double tir = held.runout().stack().quantileTirM(context.job.preferences().confidence());
    return Roughness.meanRoughnessM(context, feedPerToothM, tir) > asked
        ? Pair.ROUGHNESS.id()
        : null;
  }

  private double omega() {
    return context.job.operation().spindleSpeedRadPerS();
  }

  /** The first force-driven pair or gate that these forces break; null where none. */
  private @Nullable String forceFault(Held held, CutForces forces, double omegaRadPerS) {
    List<Margin> margins = new ArrayList<>(6);
    ForceMargins.add(context, held, forces, margins);
    String fault = firstFault(margins);
    if (fault != null) {
      return fault;
    }
    double moment = InterfaceBending.momentNm(forces, held.assembly().gaugeLengthM());
    return moment > InterfaceBending.of(context, held.body().holder()).fullNm()
        ? "interface-bending"
        : driveFault(forces, omegaRadPerS);
  }

  /** What speed can break: grip lost to it, torque and power of the spindle. */
  private @Nullable String speedFault(
      Held held, CutForces forces, double omegaRadPerS, boolean watchGrip) {
    String fault = driveFault(forces, omegaRadPerS);
    if (fault != null || !watchGrip) {
      return fault;
    }
    return gripFault(Held.of(context, held.body(), held.assembly(), omegaRadPerS), forces);
  }

  private @Nullable String gripFault(Held held, CutForces forces) {
    List<Margin> margins = new ArrayList<>(3);
    ForceMargins.addGrip(context, held.grip(), forces, margins);
    return firstFault(margins);
  }

  private @Nullable String driveFault(CutForces forces, double omegaRadPerS) {
    Job.Machine machine = context.job.machine();
    if (forces.torqueNm() <= Gates.availableTorqueNm(machine, omegaRadPerS)) {
      return null;
    }
    return forces.torqueNm() * omegaRadPerS > machine.powerW() ? "spindle-power" : "spindle-torque";
  }

  private static @Nullable String firstFault(List<Margin> margins) {
    for (Margin margin : margins) {
      if (margin.ratio() < 1) {
        return margin.pair().id();
      }
    }
    return null;
  }

  private Limit spindleSpeed(Appraisal appraisal, Held held) {
    double rated = appraisal.speedLimits().safeRadPerS();
    double fastest = Math.min(rated, SpeedMargins.unbalanceLimitRadPerS(context, appraisal));
    String governedBy =
        fastest < rated ? Pair.UNBALANCE_FORCE.id() : appraisal.speedLimits().governedBy();
    // a grip that fails at rest is not speed's doing: slowing down would not mend it
    boolean holdsAtRest =
        gripFault(Held.of(context, held.body(), held.assembly(), 0), context.forces) == null;
    return search(
        fastest,
        governedBy,
        omega -> {
          boolean faster = omega >= omega();
          // a faster cut takes no more force: the asked forces, at hand already, bound it
          String bound =
              speedFault(held, faster ? context.forces : forcesAt(omega), omega, holdsAtRest);
          return bound == null || !faster
              ? bound
              : speedFault(held, forcesAt(omega), omega, holdsAtRest);
        });
  }

  /** Forces at another speed: the specific force falls a little with it. */
  private CutForces forcesAt(double omegaRadPerS) {
    return bySpeed.computeIfAbsent(
        omegaRadPerS,
        omega -> context.with(context.job.operation().atSpeed(omega, diameter())).forces);
  }

  private double diameter() {
    return context.job.tool().diameterM();
  }

  private Limit torque(Held held) {
    double pull = context.safety * context.forces.pullN();
    double d = context.job.tool().shankDiameterM();
    Quantiles stop = held.grip().stopTorqueNm();
    if (stop != null) {
      return new Limit(
          stop.atStandardScore(-context.standardScore) / context.safety, Pair.STOP_TORQUE.id());
    }
    double force = held.grip().frictionForceN().atStandardScore(-context.standardScore);
    double left = force > pull ? Math.sqrt(force * force - pull * pull) : 0;
    return new Limit(left * d / 2 / context.safety, Pair.SLIP.id());
  }

  private Limit axialForce(Held held) {
    Quantiles stop = held.grip().stopAxialN();
    if (stop != null) {
      return new Limit(
          stop.atStandardScore(-context.standardScore) / context.safety, Pair.PULL_OUT.id());
    }
    double around =
        context.safety * 2 * context.forces.peakTorqueNm() / context.job.tool().shankDiameterM();
    double force = held.grip().frictionForceN().atStandardScore(-context.standardScore);
    double left = force > around ? Math.sqrt(force * force - around * around) : 0;
    return new Limit(left / context.safety, Pair.SLIP.id());
  }

  private Limit stickOut(Appraisal appraisal) {
    HolderBody holder = appraisal.assembly().holder();
    double longest = context.job.tool().overallLengthM() - holder.minInsertionM();
    double now = appraisal.assembly().stickOutM();
    if (longest <= now) {
      return new Limit(longest, Pair.INSERTION.id());
    }
    Appraiser appraiser = new Appraiser(context);
    return searchBetween(
        now,
        longest,
        Pair.INSERTION.id(),
        stickOut -> {
          Assembly longer = StickOut.at(context, holder, stickOut);
          return stickOutFault(appraiser.appraise(appraisal.body(), longer));
        });
  }

  private static @Nullable String stickOutFault(Appraisal appraisal) {
    for (Gate gate : appraisal.gates()) {
      if (gate.severity() == Severity.ERROR) {
        return gate.code();
      }
    }
    return firstFault(appraisal.margins());
  }

  private Limit featureDepth(Appraisal appraisal) {
    if (context.job.operation().kind() == OperationKind.FACE_MILLING) {
      return new Limit(Double.POSITIVE_INFINITY, "");
    }
    double radius = context.job.tool().diameterM() / 2;
    double clearance = context.job.feature().wallClearanceM();
    double draft = context.job.feature().wallDraftRad();
    boolean hole = OperationCompletion.isHole(context.job.operation().kind());
    double deepest = hole ? context.job.tool().fluteLengthM() : appraisal.geometry().gaugeLengthM();
    return search(
        deepest,
        hole ? "flute-length" : Pair.GAP.id(),
        depth ->
            WallReach.gapM(
                        appraisal.body().fromNose(),
                        appraisal.assembly().stickOutM(),
                        Obstacle.wall(radius, 0, depth, draft))
                    < clearance
                ? Pair.GAP.id()
                : null);
  }

  /**
   * The same search over the logarithm of the value, down to a part in 128: forces are powers of
   * the feed. 0 where even that has a fault.
   */
  private static Limit searchByRatio(
      double most, String governedAtMost, DoubleFunction<@Nullable String> fault) {
    double range = Math.log(FEED_RANGE);
    Limit log =
        searchBetween(
            -range, 0, governedAtMost, x -> fault.apply(most * Math.exp(x)), FEED_HALVINGS);
    return new Limit(log.value() <= -range ? 0 : most * Math.exp(log.value()), log.governedBy());
  }

  private static Limit search(
      double most, String governedAtMost, DoubleFunction<@Nullable String> fault) {
    return searchBetween(0, most, governedAtMost, fault);
  }

  /**
   * Largest value between bounds without a fault, found by halving; the lower bound where even the
   * first step has one.
   */
  private static Limit searchBetween(
      double least, double most, String governedAtMost, DoubleFunction<@Nullable String> fault) {
    return searchBetween(least, most, governedAtMost, fault, HALVINGS);
  }

  private static Limit searchBetween(
      double least,
      double most,
      String governedAtMost,
      DoubleFunction<@Nullable String> fault,
      int halvings) {
    String governedBy = fault.apply(most);
    if (governedBy == null) {
      return new Limit(most, governedAtMost);
    }
    double met = least;
    double step = most - least;
    for (int i = 0; i < halvings; i++) {
      step /= 2;
      String found = fault.apply(met + step);
      if (found == null) {
        met += step;
      } else {
        governedBy = found;
      }
    }
    return new Limit(met, governedBy);
  }
}
