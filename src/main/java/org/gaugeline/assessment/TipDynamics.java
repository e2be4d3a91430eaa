package org.gaugeline.assessment;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.assembly.Assembly;
import org.gaugeline.assembly.Measured;
import org.gaugeline.mechanics.receptance.ModalResponse;
import org.gaugeline.mechanics.receptance.SampledResponse;
import org.gaugeline.mechanics.receptance.TipMode;
import org.gaugeline.mechanics.receptance.TipModel;
import org.gaugeline.mechanics.receptance.TipResponse;

/**
 * The tip of one assembly as stability sees it: as measured where anything was measured, a
 * direction without a measurement rigid; else as predicted, the same in both directions.
 */
final class TipDynamics {
  private static final ModalResponse RIGID = new ModalResponse(List.of(), 0);

  private final StackDynamics predicted;
  private final Measured measured;

  private TipDynamics(StackDynamics predicted, Measured measured) {
    this.predicted = predicted;
    this.measured = measured;
  }

  static TipDynamics of(JobContext context, Body body, Assembly assembly) {
    return new TipDynamics(
        new StackDynamics(context, body, assembly.stickOutM()), assembly.measured());
  }

  /** The tip as it would be predicted, whether measured or not. */
  StackDynamics predicted() {
    return predicted;
  }

  boolean isMeasured() {
    return measured.hasDynamics();
  }

  /** The tip at the median, or as measured. */
  TipModel median() {
    return isMeasured() || predicted.isTuned()
        ? model(StackDraw.MEDIAN)
        : TipModel.symmetric(predicted.median());
  }

  /** The tip for a draw; what was measured does not move. */
  TipModel model(StackDraw draw) {
    return isMeasured()
        ? new TipModel(direction(true), direction(false))
        : TipModel.symmetric(predicted.response(draw));
  }

  private TipResponse direction(boolean alongFeed) {
    List<Measured.Sample> samples =
        measured.response().stream().filter(s -> s.alongFeed() == alongFeed).toList();
    if (!samples.isEmpty()) {
      return new SampledResponse(
          samples.stream().mapToDouble(Measured.Sample::frequencyRadPerS).toArray(),
          samples.stream().mapToDouble(Measured.Sample::realMPerN).toArray(),
          samples.stream().mapToDouble(Measured.Sample::imaginaryMPerN).toArray());
    }
    List<TipMode> modes =
        measured.modes().stream()
            .filter(m -> m.alongFeed() == alongFeed)
            .map(
                m ->
                    TipMode.ofStiffness(m.frequencyRadPerS(), m.stiffnessNPerM(), m.dampingRatio()))
            .toList();
    return modes.isEmpty() ? RIGID : new ModalResponse(modes, 0);
  }

  /** The modes of a tip as they are reported; none for a direction that was sampled. */
  static List<StabilityChart.Mode> modes(TipModel tip) {
    List<StabilityChart.Mode> modes = new ArrayList<>();
    if (tip.x().equals(tip.y())) {
      add("xy", tip.x(), modes);
    } else {
      add("x", tip.x(), modes);
      add("y", tip.y(), modes);
    }
    return List.copyOf(modes);
  }

  private static void add(String direction, TipResponse response, List<StabilityChart.Mode> modes) {
    if (response instanceof ModalResponse modal) {
      for (TipMode mode : modal.modes()) {
        modes.add(
            new StabilityChart.Mode(
                direction,
                mode.angularFrequencyRadPerS() / (2 * Math.PI),
                mode.dampingRatio(),
                mode.stiffnessNPerM()));
      }
    }
  }
}
