package org.gaugeline.mechanics.chatter;

import java.util.List;
import java.util.function.Supplier;
import org.gaugeline.mechanics.FalsePosition;
import org.gaugeline.mechanics.GoldenSection;
import org.gaugeline.mechanics.Require;
import org.gaugeline.mechanics.cutting.MillingEngagement;
import org.gaugeline.mechanics.receptance.TipModel;
import org.jspecify.annotations.Nullable;

/**
 * Limit depth against regenerative chatter at given speeds, prepared once for a cut and a tip.
 *
 * <p>At a speed with tooth period T the cut is at its limit where an eigenvalue q = c·a·(1 −
 * e^{−iωT})·λ(ω) is 1. With 1 − e^{−iωT} = 2 sin(ωT/2)·e^{i(π/2 − ωT/2)} that is ωT/2 − arg λ − π/2
 * = mπ for an integer m, and then a = 1/(2c·Re λ): the limit is the least of these over all ω with
 * Re λ &gt; 0, and the least over all ω whatever the speed is the depth stable at any speed. λ does
 * not depend on the speed, so a chart costs one pass over the stored samples per speed; the
 * crossing found between samples is then solved with the response itself.
 *
 * <p>Zeroth-order solution of Altintas and Budak (CIRP Annals 44/1 (1995) 357), posed at fixed
 * speed; equal to their a = −(2πΛ_R/(N K_t))(1 + κ²). Mean directional factors: at half immersion
 * expect errors of 5 % near the floors and 10 to 15 % on high lobes; below about 10 to 15 %
 * immersion (memory) it misses period doubling, see {@link SemiDiscretization}. Damping by the
 * flanks counts at given speeds where the process has it ({@link ProcessDamping}); what holds at
 * any speed is without it, because it fades as speed rises.
 *
 * <p>Chatter is looked for within the frequencies that the responses name as their support.
 *
 * <p>Not for use by two threads at once.
 */
public final class StabilityLobes {
  private static final int REFINEMENTS = 12;
  private static final double PHASE_TOLERANCE = 1e-9;
  private static final int GOLDEN_STEPS = 30;

  private final OrientedResponse response;

  /** Frequencies at which the response is sampled, made when first asked for. */
  private final Supplier<double[]> support;

  private @Nullable LobeNodes nodesIfKnown;
  private final double twiceGainPa;
  private final double[] lambda = new double[4];
  private double chosenRe;
  private double chosenIm;

  /** Whether a crossing between samples is solved for, and not left on the straight line. */
  private final boolean solves;

  /** Limits at given speeds where the flanks damp, made when first asked for; null where not. */
  private final @Nullable Supplier<RubbedLobes> rubbing;

  private @Nullable RubbedLobes rubbed;

  private StabilityLobes(OrientedResponse response, @Nullable Supplier<RubbedLobes> rubbing) {
    this(response, response::supportRadPerS, true, rubbing);
  }

  private StabilityLobes(
      OrientedResponse response,
      Supplier<double[]> support,
      boolean solves,
      @Nullable Supplier<RubbedLobes> rubbing) {
    this.response = response;
    this.support = support;
    this.solves = solves;
    this.twiceGainPa = 2 * response.gainPa();
    this.rubbing = rubbing;
  }

  /**
   * Milling with two directions of motion, zeroth-order solution.
   *
   * @param process the cut
   * @param tip responses along the feed and its normal
   * @return the prepared limits
   */
  public static StabilityLobes milling(MillingProcess process, TipModel tip) {
    MillingResponse response = new MillingResponse(process, tip);
    return new StabilityLobes(
        response,
        process.damping().exists()
            ? () -> new RubbedLobes(process, tip, response.coarseSupportRadPerS())
            : null);
  }

  /**
   * The same without damping by the flanks, read off the straight lines between a few samples: to
   * find out where pockets are.
   *
   * @param process the cut
   * @param tip responses along the feed and its normal
   * @return the prepared limits
   */
  public static StabilityLobes coarseMilling(MillingProcess process, TipModel tip) {
    MillingResponse response = new MillingResponse(process, tip);
    return new StabilityLobes(response, response::coarseSupportRadPerS, false, null);
  }

  /**
   * Boring and turning, b = −1/(2K·Re ΣµG) (Tlusty; Schmitz and Smith, Machining Dynamics (2009),
   * ch. 3 and 4; memory).
   *
   * @param specificForcePa K, Pa, greater than 0
   * @param parts responses with their directional factors
   * @return the prepared limits, as width of chip
   */
  public static StabilityLobes boring(double specificForcePa, List<DirectedResponse> parts) {
    Require.positive("specificForcePa", specificForcePa);
    return new StabilityLobes(new SingleResponse(1, specificForcePa, List.copyOf(parts)), null);
  }

  /**
   * Quick estimate of milling along the normal at the mean tooth angle p = (φ_st + φ_ex)/2: b =
   * −1/(2K_s·Re G_or·N*), G_or = µ_x G_x + µ_y G_y, N* = N(φ_ex − φ_st)/2π, µ_x = sin p·sin(p + β),
   * µ_y = cos p·cos(p + β) (Tlusty; Schmitz and Smith 2009, ch. 4; memory; factors derived from
   * vectors). Mostly on the unsafe side: by a third at the floor of one example, by twice at single
   * speeds.
   *
   * @param process the cut; K_s = K_t√(1 + K_r²), β = arccot K_r
   * @param tip responses along the feed and its normal
   * @return the prepared limits
   */
  public static StabilityLobes averageAngle(MillingProcess process, TipModel tip) {
    MillingEngagement arc = process.engagement();
    double mean = (arc.entryRad() + arc.exitRad()) / 2;
    double beta = Math.atan2(1, process.radialRatio());
    double resultantPa = process.tangentialPa() * Math.hypot(1, process.radialRatio());
    double engaged = process.teeth() * arc.arcRad() / (2 * Math.PI);
    List<DirectedResponse> parts =
        List.of(
            new DirectedResponse(tip.x(), Math.sin(mean) * Math.sin(mean + beta)),
            new DirectedResponse(tip.y(), Math.cos(mean) * Math.cos(mean + beta)));
    return new StabilityLobes(
        new SingleResponse(process.teeth(), resultantPa * engaged, parts), null);
  }

  /**
   * Limit at one speed.
   *
   * @param spindleRadPerS Ω, rad/s, greater than 0
   * @return least depth that chatters, with its frequency
   */
  public ChatterLimit limitAt(double spindleRadPerS) {
    Require.positive("spindleRadPerS", spindleRadPerS);
    if (rubbing != null) {
      RubbedLobes known = rubbed == null ? rubbing.get() : rubbed;
      rubbed = known;
      return known.limitAt(spindleRadPerS);
    }
    LobeNodes nodes = nodes();
    double perOmega = 1 / (response.teeth() * spindleRadPerS);
    LobeCrossing crossing = LobeCrossing.deepest(nodes, perOmega);
    if (!crossing.exists()) {
      return ChatterLimit.NONE;
    }
    return solves
        ? solved(nodes, crossing, perOmega)
        : new ChatterLimit(1 / (twiceGainPa * crossing.re()), nodes.omega[crossing.node()]);
  }

  /** Sampled when first asked for: a limit with damping flanks does without. */
  private LobeNodes nodes() {
    LobeNodes known = nodesIfKnown;
    if (known == null) {
      known = LobeNodes.of(response, support.get());
      nodesIfKnown = known;
    }
    return known;
  }

  /** Solves for the crossing with the response itself. */
  private ChatterLimit solved(LobeNodes nodes, LobeCrossing crossing, double perOmega) {
    int node = crossing.node();
    double low = nodes.omega[node - 1];
    double high = nodes.omega[node];
    FalsePosition bracket =
        new FalsePosition(
            low,
            low * perOmega - nodes.turn[node - 1] - crossing.lobe(),
            high,
            high * perOmega - nodes.turn[node] - crossing.lobe());
    double w = bracket.next();
    for (int step = 0; step < REFINEMENTS; step++) {
      choose(nodes, w, node);
      double value = w * perOmega - LobeNodes.turn(chosenRe, chosenIm) - crossing.lobe();
      if (Math.abs(value) < PHASE_TOLERANCE) {
        break;
      }
      bracket.narrow(w, value);
      w = bracket.next();
    }
    return new ChatterLimit(1 / (twiceGainPa * (chosenRe > 0 ? chosenRe : crossing.re())), w);
  }

  /** Evaluates the response and keeps the branch nearest to the straight line through the nodes. */
  private void choose(LobeNodes nodes, double omegaRadPerS, int node) {
    response.at(omegaRadPerS, lambda);
    double share =
        (omegaRadPerS - nodes.omega[node - 1]) / (nodes.omega[node] - nodes.omega[node - 1]);
    double re = LobeNodes.between(nodes.re, node, share);
    double im = LobeNodes.between(nodes.im, node, share);
    boolean second =
        response.branches() == 2
            && Math.hypot(lambda[2] - re, lambda[3] - im)
                < Math.hypot(lambda[0] - re, lambda[1] - im);
    chosenRe = lambda[second ? 2 : 0];
    chosenIm = lambda[second ? 3 : 1];
  }

  /**
   * Limits at many speeds.
   *
   * @param spindleRadPerS Ω, rad/s, each greater than 0
   * @param depthM receives the limit depths, m
   * @param chatterRadPerS receives the chatter frequencies, rad/s
   * @throws IllegalArgumentException if the arrays differ in length
   */
  public void limits(double[] spindleRadPerS, double[] depthM, double[] chatterRadPerS) {
    if (depthM.length != spindleRadPerS.length || chatterRadPerS.length != depthM.length) {
      throw new IllegalArgumentException(
          "speeds, depths and frequencies must be as many, but are "
              + spindleRadPerS.length
              + ", "
              + depthM.length
              + " and "
              + chatterRadPerS.length);
    }
    for (int i = 0; i < depthM.length; i++) {
      ChatterLimit limit = limitAt(spindleRadPerS[i]);
      depthM[i] = limit.depthM();
      chatterRadPerS[i] = limit.chatterRadPerS();
    }
  }

  /**
   * Depth that is stable at every speed, 1/(2c·max Re λ).
   *
   * @return least limit over all speeds, with its frequency
   */
  public ChatterLimit guaranteed() {
    LobeNodes nodes = nodes();
    int best = -1;
    for (int i = 0; i < nodes.size; i++) {
      best = best < 0 || nodes.re[i] > nodes.re[best] ? i : best;
    }
    if (best < 0 || !(nodes.re[best] > 0)) {
      return ChatterLimit.NONE;
    }
    boolean last = best + 1 == nodes.size || nodes.opensRun[best + 1];
    double low = nodes.opensRun[best] ? nodes.omega[best] : nodes.omega[best - 1];
    double high = last ? nodes.omega[best] : nodes.omega[best + 1];
    double w = low;
    if (high > low) {
      w = GoldenSection.peak(low, high, GOLDEN_STEPS, this::largestRe);
    }
    return new ChatterLimit(1 / (twiceGainPa * largestRe(w)), w);
  }

  private double largestRe(double omegaRadPerS) {
    response.at(omegaRadPerS, lambda);
    return response.branches() == 2 ? Math.max(lambda[0], lambda[2]) : lambda[0];
  }

  /**
   * Limit depth of those speeds that let the cut chatter at a given frequency, 1/(2c·Re λ(ω)).
   *
   * @param chatterRadPerS ω, rad/s
   * @return depth, m; infinite if no depth chatters at that frequency
   */
  public double depthAtFrequencyM(double chatterRadPerS) {
    double re = largestRe(chatterRadPerS);
    return re > 0 ? 1 / (twiceGainPa * re) : Double.POSITIVE_INFINITY;
  }
}
