package org.gaugeline.reference;

/**
 * Speed and feed to start from where the request gives none.
 *
 * @param machinability key that materials refer to
 * @param toolClass kind of tool the row is for
 * @param substrate cutting material
 * @param cuttingSpeedMPerS median starting speed, m/s
 * @param minCuttingSpeedMPerS low end of the usual range
 * @param maxCuttingSpeedMPerS high end of the usual range
 * @param feedPerDiameter feed per tooth (mills, reamers) or per revolution (drills, boring) over
 *     diameter; not used for taps, which feed their pitch
 * @param minFeedM least sensible feed, m
 * @param maxFeedM greatest sensible feed, m
 * @param sourceKey source of the row
 */
public record StartingValue(
    String machinability,
    ToolClass toolClass,
    Substrate substrate,
    double cuttingSpeedMPerS,
    double minCuttingSpeedMPerS,
    double maxCuttingSpeedMPerS,
    double feedPerDiameter,
    double minFeedM,
    double maxFeedM,
    String sourceKey) {

  /** The groups of tools for which starting values are kept. */
  public enum ToolClass implements Word {
    SOLID_MILL("solid-mill"),
    INDEXABLE_MILL("indexable-mill"),
    DRILL("drill"),
    REAMER("reamer"),
    TAP("tap"),
    BORING("boring");

    private final String id;

    ToolClass(String id) {
      this.id = id;
    }

    @Override
    public String id() {
      return id;
    }
  }
}
