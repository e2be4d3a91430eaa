package org.gaugeline.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.gaugeline.mechanics.chatter.ChatterLimit;
import org.gaugeline.mechanics.spread.Quantiles;
import org.jspecify.annotations.Nullable;

/**
 * Draws the stability chart of one assembly: the limit at the median, its band under the joint
 * spread of joints, damping and force, and what the asked cut has of it.
 */
public final class ChartSolver {
  private static final int BAND_SPEEDS = 100;
  private static final int SPEEDS = 400;
  private static final int DEAR_SPEEDS = 40;
  private static final int MOST_BEST = 5;
  private static final int FORCES = 3;
  private static final double LOWEST_SHARE = 0.1;
  private static final double HALF = 0.5;
  private static final double LOW = 0.05;
  private static final double HIGH = 0.95;

  private final JobContext context;
  private final Appraisal appraisal;
  private final StableDepth stable;
  private final double fastestRadPerS;
  private final ChatterCut cut;

  private ChartSolver(JobContext context, Appraisal appraisal, StableDepth stable) {
    this.context = context;
    this.appraisal = appraisal;
    this.stable = stable;
    this.fastestRadPerS = context.fastestRadPerS(appraisal);
    this.cut = stable.cut;
  }

  /** The chart; null where the job is no cut to which lobes apply. */
  public static @Nullable StabilityChart solve(
      JobContext context, Appraisal appraisal, ChartAsked asked) {
    StableDepth stable = StableDepth.of(context, appraisal.body(), appraisal.assembly());
    return stable == null ? null : new ChartSolver(context, appraisal, stable).chart(asked);
  }

  private StabilityChart chart(ChartAsked asked) {
    boolean modal = LowImmersion.applies(stable.tip());
    boolean wanted =
        asked.method() == null
            ? cut.isLow(context)
            : asked.method() == StabilityMethod.SEMI_DISCRETIZATION;
    LowImmersion fine = wanted && modal ? LowImmersion.of(cut.process(), stable.tip()) : null;
    double to = highest(asked);
    double from = lowest(asked, to);
    double[] speeds = evenly(from, to, fine == null ? SPEEDS : DEAR_SPEEDS);
    List<StabilityChart.Point> boundary = new ArrayList<>(speeds.length);
    for (double speed : speeds) {
      boundary.add(point(speed, fine));
    }
    List<StabilityChart.Point> at =
        asked.speedsRadPerS().stream().map(speed -> point(speed, fine)).toList();
    StabilityChart.Cut asAsked = asAsked(fine);
    boolean rough = fine == null;
    boolean known = rough && !cut.isLow(context);
    return new StabilityChart(
        rough ? StabilityMethod.ZEROTH_ORDER : StabilityMethod.SEMI_DISCRETIZATION,
        cut.immersion(),
        rough
            ? known ? context.practice("zerothOrderFloorError") : Double.NaN
            : context.practice("semiDiscretizationError"),
        rough
            ? known ? context.practice("zerothOrderLobeError") : Double.NaN
            : context.practice("semiDiscretizationError"),
        cut.process().tangentialPa(),
        cut.process().radialRatio(),
        cut.ktSourceKey(),
        2 * Math.PI * cut.rubbingLengthM().median(),
        stable.dynamics.isMeasured(),
        boundary,
        at,
        guaranteed(boundary, at, asAsked),
        best(boundary, from, to, rough),
        TipDynamics.modes(stable.tip()),
        band(from, to),
        asAsked,
        DamperTunings.of(context, cut, appraisal.body(), appraisal.assembly()),
        Overhangs.of(context, cut, appraisal.body(), appraisal.assembly()),
        cautions(wanted, modal, asAsked));
  }

  private double highest(ChartAsked asked) {
    Double to = asked.toRadPerS();
    if (to != null) {
      return to;
    }
    double from = asked.fromRadPerS() == null ? 0 : asked.fromRadPerS();
    return Math.max(context.fastestRadPerS(), Math.max(speed(), 2 * from));
  }

  private double lowest(ChartAsked asked, double toRadPerS) {
    Double from = asked.fromRadPerS();
    return from == null
        ? Math.min(LOWEST_SHARE * toRadPerS, Math.min(HALF * speed(), HALF * toRadPerS))
        : from;
  }

  private double speed() {
    return context.job.operation().spindleSpeedRadPerS();
  }

  private static double[] evenly(double from, double to, int count) {
    double[] speeds = new double[count];
    for (int i = 0; i < count; i++) {
      speeds[i] = from + (to - from) * i / (count - 1);
    }
    return speeds;
  }

  private StabilityChart.Point point(double speedRadPerS, @Nullable LowImmersion fine) {
    ChatterLimit limit = stable.medianAt(speedRadPerS);
    double depth = limit.depthM();
    if (fine != null) {
      depth = fine.limitM(speedRadPerS, depth, stable.lobes().guaranteed().depthM());
    }
    double hz = limit.chatterRadPerS() > 0 ? limit.chatterHz() : Double.NaN;
    return new StabilityChart.Point(speedRadPerS, depth, hz);
  }

  /**
   * The zeroth-order floor, which holds at any speed; or less where semi-discretization found less
   * at one of the speeds that were looked at.
   */
  private StabilityChart.Point guaranteed(
      List<StabilityChart.Point> boundary,
      List<StabilityChart.Point> at,
      StabilityChart.Cut asAsked) {
    ChatterLimit floor = stable.lobes().guaranteed();
    double least = Math.min(floor.depthM(), asAsked.limit().depthM());
    for (StabilityChart.Point point : boundary) {
      least = Math.min(least, point.depthM());
    }
    for (StabilityChart.Point point : at) {
      least = Math.min(least, point.depthM());
    }
    return new StabilityChart.Point(
        Double.NaN, least, floor.chatterRadPerS() > 0 ? floor.chatterHz() : Double.NaN);
  }

  /** Within what machine, tool and assembly bear. */
  private List<StabilityChart.Point> best(
      List<StabilityChart.Point> boundary, double fromRadPerS, double toRadPerS, boolean rough) {
    double most = Math.min(toRadPerS, fastestRadPerS);
    if (!(most > fromRadPerS)) {
      return List.of();
    }
    if (rough) {
      return StableSpeeds.refined(stable, fromRadPerS, most).stream()
          .map(pocket -> point(pocket.spindleRadPerS(), null))
          .toList();
    }
    return IntStream.range(0, boundary.size())
        .filter(i -> boundary.get(i).spindleRadPerS() <= most && isPeak(boundary, i))
        .mapToObj(boundary::get)
        .sorted(Comparator.comparingDouble(StabilityChart.Point::depthM).reversed())
        .limit(MOST_BEST)
        .toList();
  }

  private static boolean isPeak(List<StabilityChart.Point> boundary, int i) {
    double depth = boundary.get(i).depthM();
    return (i == 0 || boundary.get(i - 1).depthM() < depth)
        && (i == boundary.size() - 1 || boundary.get(i + 1).depthM() <= depth);
  }

  private StabilityChart.Band band(double fromRadPerS, double toRadPerS) {
    List<StabilityChart.Point> low = new ArrayList<>(BAND_SPEEDS);
    List<StabilityChart.Point> high = new ArrayList<>(BAND_SPEEDS);
    for (double speed : evenly(fromRadPerS, toRadPerS, BAND_SPEEDS)) {
      DepthSpread spread = stable.spread(speed);
      low.add(new StabilityChart.Point(speed, spread.quantileM(LOW), Double.NaN));
      high.add(new StabilityChart.Point(speed, spread.quantileM(HIGH), Double.NaN));
    }
    return new StabilityChart.Band(low, high, StackDraw.FEW.size());
  }

  private StabilityChart.Cut asAsked(@Nullable LowImmersion fine) {
    double depth = context.job.operation().axialDepthM();
    double[] atMedianForce = stable.atMedianForceM(speed());
    DepthSpread spread = DepthSpread.of(atMedianForce, cut.ktOverMedian());
    return new StabilityChart.Cut(
        speed(),
        depth,
        point(speed(), fine),
        spread.quantileM(LOW),
        spread.quantileM(HIGH),
        fine == null ? spread.probabilityAtLeast(depth) : probabilityStable(depth),
        narrowing(atMedianForce));
  }

  /** By semi-discretization, each draw with forces in the middle of equally likely parts. */
  private double probabilityStable(double depthM) {
    int parts = cut.ktOverMedian().equals(Quantiles.exact(1)) ? 1 : FORCES;
    int count = 0;
    for (StackDraw draw : StackDraw.FEW) {
      LowImmersion drawn =
          LowImmersion.of(cut.process(draw.rubbing()), stable.dynamics.model(draw));
      for (int part = 0; part < parts; part++) {
        double force = cut.ktOverMedian().quantile((part + HALF) / parts);
        count += drawn.isStable(speed(), depthM * force) ? 1 : 0;
      }
    }
    return (double) count / (StackDraw.FEW.size() * parts);
  }

  /** What would be left of the spread if the tip, or the force, were at its median for sure. */
  private List<StabilityChart.Narrowing> narrowing(double[] atMedianForceM) {
    List<StabilityChart.Narrowing> all = new ArrayList<>();
    if (!stable.dynamics.isMeasured()) {
      double[] known = stable.ofMedianTipM(speed());
      all.add(
          narrowing(
              "tap-test", "/assembly/measured/modes", DepthSpread.of(known, cut.ktOverMedian())));
    }
    if (Double.isNaN(context.job.workpiece().ktPa())) {
      DepthSpread known = DepthSpread.of(atMedianForceM, Quantiles.exact(1));
      all.add(narrowing("cutting-force-test", "/workpiece/ktNPerMm2", known));
    }
    all.sort(Comparator.comparingDouble(StabilityChart.Narrowing::spreadRatio));
    return List.copyOf(all);
  }

  private static StabilityChart.Narrowing narrowing(
      String measurement, String pointer, DepthSpread left) {
    return new StabilityChart.Narrowing(
        measurement, pointer, left.quantileM(HIGH) / left.quantileM(LOW));
  }

  private List<Caution> cautions(boolean wanted, boolean modal, StabilityChart.Cut asAsked) {
    List<Caution> cautions = new ArrayList<>();
    if (wanted && !modal) {
      cautions.add(caution("method-needs-modes", Double.NaN, Measure.COUNT));
    }
    if (cut.isLow(context) && (!wanted || !modal)) {
      cautions.add(caution("period-doubling-not-seen", cut.immersion(), Measure.RATIO));
    }
    if (context.job.operation().axialDepthM() > asAsked.p05M()) {
      cautions.add(caution("may-chatter", asAsked.p05M(), Measure.LENGTH));
    }
    return List.copyOf(cautions);
  }

  private static Caution caution(String code, double value, Measure measure) {
    return new Caution(code, Severity.NOTE, value, measure, "");
  }
}
