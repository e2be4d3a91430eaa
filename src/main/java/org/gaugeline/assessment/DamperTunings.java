package org.gaugeline.assessment;

import java.util.List;
import org.gaugeline.assembly.Assembly;
import org.gaugeline.assembly.Damper;
import org.gaugeline.mechanics.chatter.StabilityLobes;
import org.gaugeline.mechanics.damper.TuningHost;
import org.gaugeline.mechanics.receptance.TipModel;
import org.gaugeline.mechanics.receptance.TipResponse;
import org.gaugeline.mechanics.receptance.TunedMass;
import org.jspecify.annotations.Nullable;

/**
 * What the tuned mass of a stack is worth for one cut, and what wrong tuning costs: depth limits at
 * the median by the zeroth-order solution, with the mass tuned in several ways.
 *
 * <p>Both closed tunings hold for one undamped mode, and that against chatter makes the deepest
 * negative real part least. A cut sees just that where its directional factors have real
 * eigenvalues, as at low immersion; near a full slot they are −K_r ± i, the size of the response
 * counts, and classical tuning may be the deeper.
 *
 * @param massKg the mass
 * @param atM its middle, from the gauge plane
 * @param frequencyHz its own frequency as the chart takes it
 * @param frequencyGiven whether that was told, not tuned
 * @param dampingRatio its damping ratio as the chart takes it
 * @param dampingGiven whether that was told, not tuned
 * @param hostFrequencyHz lowest mode of the stack without the mass, at the median
 * @param massRatio µ by the shape of that mode
 * @param tunings limits by tuning, in the order of the words
 */
public record DamperTunings(
    double massKg,
    double atM,
    double frequencyHz,
    boolean frequencyGiven,
    double dampingRatio,
    boolean dampingGiven,
    double hostFrequencyHz,
    double massRatio,
    List<Tuned> tunings) {

  /**
   * Limits with the mass tuned in one way.
   *
   * @param frequencyHz as tuned; NaN where the mass is left out
   * @param dampingRatio as tuned; NaN where the mass is left out
   * @param guaranteedM depth stable at any speed; +∞ where no depth chatters
   * @param depthM depth stable at the asked speed; +∞ where no depth chatters
   */
  public record Tuned(
      DamperTuning tuning,
      double frequencyHz,
      double dampingRatio,
      double guaranteedM,
      double depthM) {

    /** The same under another word. */
    private Tuned as(DamperTuning other) {
      return new Tuned(other, frequencyHz, dampingRatio, guaranteedM, depthM);
    }
  }

  /** The tunings for a cut; null where the stack has no tuned mass, or its tip was measured. */
  static @Nullable DamperTunings of(
      JobContext context, ChatterCut cut, Body body, Assembly assembly) {
    Damper damper = body.holder().damper();
    if (damper == null || assembly.measured().hasDynamics()) {
      return null;
    }
    StackDynamics dynamics = new StackDynamics(context, body, assembly.stickOutM());
    TuningHost host = dynamics.tuningHost(damper);
    TunedMass used = dynamics.tuned(damper);
    double speed = context.job.operation().spindleSpeedRadPerS();
    double off = context.practice("damperFrequencyError");
    Tuned asUsed = solve(DamperTuning.AS_USED, used, dynamics, cut, speed);
    List<Tuned> tunings =
        List.of(
            asUsed,
            host.chatterTuned().equals(used)
                ? asUsed.as(DamperTuning.CHATTER_TUNED)
                : solve(DamperTuning.CHATTER_TUNED, host.chatterTuned(), dynamics, cut, speed),
            solve(DamperTuning.CLASSICAL, host.classicallyTuned(), dynamics, cut, speed),
            solve(DamperTuning.DETUNED_LOW, detuned(used, 1 - off), dynamics, cut, speed),
            solve(DamperTuning.DETUNED_HIGH, detuned(used, 1 + off), dynamics, cut, speed),
            solve(DamperTuning.WITHOUT, null, dynamics, cut, speed));
    return new DamperTunings(
        damper.massKg(),
        damper.atM(),
        hz(used.angularFrequencyRadPerS()),
        !Double.isNaN(damper.frequencyHz()),
        used.dampingRatio(),
        !Double.isNaN(damper.dampingRatio()),
        hz(host.angularFrequencyRadPerS()),
        host.massRatio(),
        tunings);
  }

  private static Tuned solve(
      DamperTuning tuning,
      @Nullable TunedMass mass,
      StackDynamics dynamics,
      ChatterCut cut,
      double spindleRadPerS) {
    TipResponse tip =
        mass == null ? dynamics.modal(StackDraw.MEDIAN) : dynamics.damped(StackDraw.MEDIAN, mass);
    StabilityLobes lobes = StabilityLobes.milling(cut.process(), TipModel.symmetric(tip));
    return new Tuned(
        tuning,
        mass == null ? Double.NaN : hz(mass.angularFrequencyRadPerS()),
        mass == null ? Double.NaN : mass.dampingRatio(),
        lobes.guaranteed().depthM(),
        lobes.limitAt(spindleRadPerS).depthM());
  }

  private static double hz(double angularFrequencyRadPerS) {
    return angularFrequencyRadPerS / (2 * Math.PI);
  }

  private static TunedMass detuned(TunedMass mass, double factor) {
    return new TunedMass(
        mass.massKg(), factor * mass.angularFrequencyRadPerS(), mass.dampingRatio());
  }

  /** Limits with one tuning. */
  public Tuned with(DamperTuning tuning) {
    return tunings.get(tuning.ordinal());
  }

  /**
   * Share of the guaranteed depth that the worse of the two detunings loses; negative where both
   * gain, NaN where nothing chatters.
   */
  public double detuningLoss() {
    double worse =
        Math.min(
            with(DamperTuning.DETUNED_LOW).guaranteedM(),
            with(DamperTuning.DETUNED_HIGH).guaranteedM());
    return 1 - worse / with(DamperTuning.AS_USED).guaranteedM();
  }
}
