package org.gaugeline.http.wire;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** The body of a stability chart: that of an assessment, and what the chart shall show. */
public record WireStabilityChart(
    @Nullable String label,
    @Nullable String textUnits,
    WireIntent.@Nullable Workpiece workpiece,
    WireIntent.@Nullable Operation operation,
    WireIntent.@Nullable Feature feature,
    WireIntent.@Nullable Tool tool,
    WireIntent.@Nullable Machine machine,
    WireIntent.@Nullable Shop shop,
    WireIntent.@Nullable Preferences preferences,
    WireAssessment.@Nullable Assembly assembly,
    @Nullable Chart chart) {

  /** The body without the chart. */
  public WireAssessment assessment() {
    return new WireAssessment(
        label,
        textUnits,
        workpiece,
        operation,
        feature,
        tool,
        machine,
        shop,
        preferences,
        assembly);
  }

  /** What to show. */
  public record Chart(
      @Nullable Double fromRpm,
      @Nullable Double toRpm,
      @Nullable List<Double> spindleSpeedsRpm,
      @Nullable String method) {
    /** Nothing said. */
    public static final Chart NONE = new Chart(null, null, null, null);
  }
}
