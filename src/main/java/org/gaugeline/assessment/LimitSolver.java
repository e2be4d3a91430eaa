package org.gaugeline.assessment;

import java.util.HashMap;
import java.util.Map;
import java.util.function.DoubleFunction;
import org.gaugeline.assembly.Assembly;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.job.OperationCompletion;
import org.gaugeline.mechanics.spread.Quantiles;
import org.gaugeline.reference.OperationKind;

/**
 * Solves how far each quantity can go, all else as asked, before a pair that depends on it is no
 * longer met at the asked confidence or a gate that depends on it is an error. The solution is on
 * the met side.
 *
 * <p>Each quantity is searched on a grid. All assemblies of a request share those of depth and
 * feed, so that the forces of a grid point are computed once.
 */
public final class LimitSolver {
  private static final int STEPS = 2048;

  /** A sixteenth of the range: shorter than the waves that a helix draws over depth. */
  private static final int ONE_CROSSING_STEPS = STEPS / 16;

  /** A length that no gap comes near, by which a gap becomes a share. */
  private static final double MOST_GAP_M = 100;

  private final JobContext context;
  private final Map<Double, CutForces> byDepth = new HashMap<>();
  private final FeedLimit feeds;
  private final SpeedForces speeds;

  public LimitSolver(JobContext context) {
    this.context = context;
    this.feeds = new FeedLimit(context);
    this.speeds = new SpeedForces(context);
  }

  /** All limits of one assembly. */
  public Limits solve(Appraisal appraisal) {
    Held held = appraisal.held();
    return new Limits(
        StableSpeeds.limit(spindleSpeed(appraisal, held), context, appraisal),
        torque(held),
        axialForce(held),
        StableDepth.depth(axialDepth(held), appraisal),
        feed(held),
        stickOut(appraisal),
        featureDepth(appraisal));
  }

  /** A tap has no other feed than its pitch. */
  private Limit feed(Held held) {
    return context.job.operation().kind() == OperationKind.TAPPING
        ? new Limit(context.job.operation().feedPerToothM(), "thread-pitch")
        : feeds.solve(held);
  }

  private Limit axialDepth(Held held) {
    if (OperationCompletion.isHole(context.job.operation().kind())) {
      return new Limit(Double.POSITIVE_INFINITY, "");
    }
    if (context.job.operation().kind() == OperationKind.PLUNGE_MILLING) {
      return new Limit(Double.POSITIVE_INFINITY, ""); // its forces do not grow with the depth
    }
    double flute = Math.min(context.job.tool().fluteLengthM(), context.cut.deepestM());
    double feed = context.job.operation().feedPerToothM();
    double deepest = Math.min(flute, deepestAssumedM(held));
    if (deepest <= 0) {
      return new Limit(0, "assumed-feature-depth");
    }
    return halve(
        deepest,
        deepest < flute ? "assumed-feature-depth" : "flute-length",
        depth ->
            ForceRatio.least(
                context,
                held,
                byDepth.computeIfAbsent(depth, ap -> context.cut.at(ap, feed)),
                omega()));
  }

  /**
   * Where the feature is as deep as the cut, a deeper cut would need more stick-out to clear it.
   */
  private double deepestAssumedM(Held held) {
    boolean assumed =
        context.job.assumptions().stream().anyMatch(a -> a.pointer().equals("/feature/depthMm"));
    double room = Pair.GAP.fullRatio() * GapMargin.wantedM(context, held.body());
    return assumed && context.job.operation().kind() != OperationKind.FACE_MILLING
        ? held.assembly().stickOutM() - room
        : Double.POSITIVE_INFINITY;
  }

  private double omega() {
    return context.job.operation().spindleSpeedRadPerS();
  }

  /** What speed can break: grip lost to it, torque and power of the spindle. */
  private ForceRatio speedRatio(
      Held held, CutForces forces, double omegaRadPerS, boolean watchGrip) {
    ForceRatio drive = ForceRatio.drive(context, forces, omegaRadPerS);
    if (!drive.isMet() || !watchGrip) {
      return drive;
    }
    return drive.or(ForceRatio.grip(context, held.at(context, omegaRadPerS), forces));
  }

  private Limit spindleSpeed(Appraisal appraisal, Held held) {
    double rated = appraisal.speedLimits().safeRadPerS();
    double fastest = Math.min(rated, SpeedMargins.unbalanceLimitRadPerS(context, appraisal));
    String governedBy =
        fastest < rated ? Pair.UNBALANCE_FORCE.id() : appraisal.speedLimits().governedBy();
    // a grip that fails at rest is not speed's doing: slowing down would not mend it
    Held resting = held.at(context, 0);
    boolean holdsAtRest = ForceRatio.grip(context, resting, context.forces).isMet();
    return search(
        fastest,
        governedBy,
        omega -> {
          boolean faster = omega >= omega();
          // a faster cut takes no more force: the asked forces, at hand already, bound it
          CutForces bound = faster ? context.forces : speeds.at(omega);
          ForceRatio bounded = speedRatio(held, bound, omega, holdsAtRest);
          return bounded.isMet() || !faster
              ? bounded
              : speedRatio(held, speeds.at(omega), omega, holdsAtRest);
        });
  }

  private Limit torque(Held held) {
    double pull = context.safety * context.forces.pullN();
    double d = context.job.tool().shankDiameterM();
    Quantiles stop = held.grip().stopTorqueNm();
    if (stop != null) {
      return new Limit(
          stop.atStandardScore(-context.standardScore) / context.safety, Pair.STOP_TORQUE.id());
    }
    double carried = held.grip().stopAxialN() == null ? pull : 0;
    double torque = torqueLeftNm(held.grip(), carried, d);
    for (SeamGrip seam : held.seams()) {
      torque = Math.min(torque, torqueLeftNm(seam.grip(), pull, seam.diameterM()));
    }
    return new Limit(torque / context.safety, Pair.SLIP.id());
  }

  /** Torque that friction carries beside an axial force. */
  private double torqueLeftNm(GripCapacity grip, double axialN, double diameterM) {
    double force = grip.frictionForceN().atStandardScore(-context.standardScore);
    return force > axialN ? Math.sqrt(force * force - axialN * axialN) * diameterM / 2 : 0;
  }

  private Limit axialForce(Held held) {
    Quantiles stop = held.grip().stopAxialN();
    double most =
        stop == null
            ? axialLeftN(held.grip(), context.job.tool().shankDiameterM())
            : stop.atStandardScore(-context.standardScore);
    String governedBy = stop == null ? Pair.SLIP.id() : Pair.PULL_OUT.id();
    for (SeamGrip seam : held.seams()) {
      double left = axialLeftN(seam.grip(), seam.diameterM());
      if (left < most) {
        most = left;
        governedBy = Pair.SLIP.id();
      }
    }
    return new Limit(most / context.safety, governedBy);
  }

  /** Axial force that friction carries beside the torque of the cut. */
  private double axialLeftN(GripCapacity grip, double diameterM) {
    double around = context.safety * 2 * context.forces.peakTorqueNm() / diameterM;
    double force = grip.frictionForceN().atStandardScore(-context.standardScore);
    return force > around ? Math.sqrt(force * force - around * around) : 0;
  }

  private Limit stickOut(Appraisal appraisal) {
    HolderBody holder = appraisal.assembly().holder();
    double longest = context.job.tool().overallLengthM() - holder.minInsertionM();
    double now = appraisal.assembly().stickOutM();
    boolean watched = watchesStableDepth(appraisal);
    if (context.job.tool().bored()) {
      ForceRatio asIs = everything(appraisal, watched);
      return asIs.isMet() ? new Limit(now, "cutter-body-length") : new Limit(0, asIs.code());
    }
    if (longest <= now) {
      return new Limit(longest, Pair.INSERTION.id());
    }
    ForceRatio asChosen = everything(appraisal, watched);
    if (!asChosen.isMet()) {
      return new Limit(0, asChosen.code()); // the stick-out stands at its least already
    }
    Appraiser appraiser = new Appraiser(context);
    return searchBetween(
        now,
        asChosen.ratio(),
        longest,
        Pair.INSERTION.id(),
        stickOut -> {
          Assembly longer = StickOut.at(context, holder, stickOut);
          Appraisal then = appraiser.appraise(appraisal.body(), longer);
          return watched ? withStableDepth(then) : everything(then, false);
        });
  }

  /** Everything, and of what is met so far the stable depth: of that only what can be tightest. */
  private ForceRatio withStableDepth(Appraisal appraisal) {
    ForceRatio others = everything(appraisal, false);
    if (!others.isMet()) {
      return others;
    }
    double asked = context.job.operation().axialDepthM();
    Margin stable =
        StableDepth.margin(context, appraisal.body(), appraisal.assembly(), asked * others.ratio());
    return stable == null || stable.ratio() >= others.ratio()
        ? others
        : new ForceRatio(stable.ratio(), stable.ratio() < 1 ? Pair.STABLE_DEPTH.id() : "");
  }

  /** A prediction that falls short as asked says nothing about how far the rest may go. */
  private static boolean watchesStableDepth(Appraisal appraisal) {
    Margin stable = appraisal.margin(Pair.STABLE_DEPTH);
    return stable != null && stable.isTentative() && stable.ratio() >= 1;
  }

  /**
   * The tightest of all gates and margins, under the name of the first that fails.
   *
   * @param withTentative whether what is only predicted counts
   */
  private static ForceRatio everything(Appraisal appraisal, boolean withTentative) {
    String first = "";
    double tightest = Double.POSITIVE_INFINITY;
    for (Gate gate : appraisal.gates()) {
      if (gate.severity() == Severity.ERROR) {
        return new ForceRatio(0, gate.code());
      }
    }
    for (Margin margin : appraisal.margins()) {
      if (margin.isTentative() && !withTentative) {
        continue;
      }
      double ratio = margin.ratio();
      first = ratio < 1 && first.isEmpty() ? margin.pair().id() : first;
      tightest = Math.min(tightest, ratio);
    }
    return new ForceRatio(tightest, first);
  }

  private Limit featureDepth(Appraisal appraisal) {
    if (context.job.operation().kind() == OperationKind.FACE_MILLING) {
      return new Limit(Double.POSITIVE_INFINITY, "");
    }
    OperationKind kind = context.job.operation().kind();
    boolean hole = OperationCompletion.isHole(kind) && kind != OperationKind.BORING;
    double deepest = hole ? context.job.tool().fluteLengthM() : appraisal.geometry().gaugeLengthM();
    double asked = context.job.feature().depthM();
    double step = deepest / STEPS;
    return searchFrom(
        deepest,
        hole ? "flute-length" : Pair.GAP.id(),
        asked / step,
        reachRatio(appraisal, context.reach).ratio(),
        -step / MOST_GAP_M, // a gap above what stands falls as that rises
        depth -> reachRatio(appraisal, Reach.atDepth(context.job, depth)));
  }

  /** Gap left beyond what is asked, over a length longer than any gap; 1 where none is left. */
  private static ForceRatio reachRatio(Appraisal appraisal, Reach reach) {
    Margin gap = appraisal.margin(Pair.GAP);
    double demand = gap == null ? 0 : gap.demand();
    double stickOut = appraisal.assembly().stickOutM();
    double own = reach.ownGapM(stickOut) + Reach.TOUCH_M;
    double left = reach.holderGapM(appraisal.body(), stickOut) - demand;
    return own < 0
        ? new ForceRatio(ratioOfRoom(Math.min(own, left)), Pair.TOOL_GAP.id())
        : new ForceRatio(ratioOfRoom(left), Pair.GAP.id());
  }

  /**
   * The ratio whose share left is a room over {@link #MOST_GAP_M}: below 1 wherever it is short.
   */
  private static double ratioOfRoom(double roomM) {
    double share = Math.min(roomM / MOST_GAP_M, 0.5);
    return share < 0 ? Math.min(1 / (1 - share), Math.nextDown(1.0)) : 1 / (1 - share);
  }

  private static Limit search(
      double most, String governedAtMost, DoubleFunction<ForceRatio> tightest) {
    return searchBetween(0, Double.POSITIVE_INFINITY, most, governedAtMost, tightest);
  }

  /** Largest value between bounds that is met; the lower bound where even the first step is not. */
  private static Limit searchBetween(
      double least,
      double ratioAtLeast,
      double most,
      String governedAtMost,
      DoubleFunction<ForceRatio> tightest) {
    ForceRatio atMost = tightest.apply(most);
    if (atMost.isMet()) {
      return new Limit(most, governedAtMost);
    }
    double step = (most - least) / STEPS;
    GridSearch search =
        GridSearch.between(0, ratioAtLeast, STEPS, atMost)
            .run(i -> tightest.apply(least + i * step));
    return new Limit(least + search.met() * step, search.governedBy());
  }

  /**
   * Largest value from 0 that is met, looked for from a known one on.
   *
   * @param at position of the known value, in steps of the grid
   * @param ratio ratio there
   * @param slope share left per step there, &lt; 0
   */
  private static Limit searchFrom(
      double most,
      String governedAtMost,
      double at,
      double ratio,
      double slope,
      DoubleFunction<ForceRatio> tightest) {
    ForceRatio atMost = tightest.apply(most);
    if (atMost.isMet()) {
      return new Limit(most, governedAtMost);
    }
    double step = most / STEPS;
    GridSearch search =
        new GridSearch(GridSearch.SHARE_LEFT, 0, STEPS, atMost.code(), at, ratio, slope)
            .run(i -> tightest.apply(i * step));
    return new Limit(search.met() * step, search.governedBy());
  }

  /**
   * Largest value from 0 that is met: for what may be met again further on, as a longer helix
   * spreads its forces around the cutter. Parted by halving until one crossing is left, at points
   * that all assemblies share; then by secants. At 0 nothing is demanded.
   */
  static Limit halve(double most, String governedAtMost, DoubleFunction<ForceRatio> tightest) {
    ForceRatio beyond = tightest.apply(most);
    if (beyond.isMet()) {
      return new Limit(most, governedAtMost);
    }
    double step = most / STEPS;
    ForceRatio within = ForceRatio.NOTHING;
    int met = 0;
    int failed = STEPS;
    while (failed - met > ONE_CROSSING_STEPS) {
      int middle = (met + failed) / 2;
      ForceRatio found = tightest.apply(middle * step);
      if (found.isMet()) {
        met = middle;
        within = found;
      } else {
        failed = middle;
        beyond = found;
      }
    }
    GridSearch search =
        GridSearch.between(met, within.ratio(), failed, beyond).run(i -> tightest.apply(i * step));
    return new Limit(search.met() * step, search.governedBy());
  }
}
