package org.gaugeline.assessment;

/**
 * The pairs of demand and capacity that make a score, as the contract tables them. A criterion's
 * score is the least of its pairs.
 */
public enum Pair {
  RUNOUT("runout", Criterion.ACCURACY, Measure.SMALL_LENGTH, 2),
  SIZE_ERROR("size-error", Criterion.ACCURACY, Measure.SMALL_LENGTH, 2),
  ROUGHNESS("roughness", Criterion.ACCURACY, Measure.ROUGHNESS, 1.5),
  SLIP("slip", Criterion.GRIP, Measure.FORCE, 2),
  PULL_OUT("pull-out", Criterion.GRIP, Measure.FORCE, 2),
  STOP_TORQUE("stop-torque", Criterion.GRIP, Measure.TORQUE, 2),
  PUSH_IN("push-in", Criterion.GRIP, Measure.FORCE, 2),
  GAP("gap", Criterion.REACH, Measure.LENGTH, 2),
  TOOL_GAP("tool-gap", Criterion.REACH, Measure.LENGTH, 2),
  INSERTION("insertion", Criterion.REACH, Measure.LENGTH, 1.2),
  STABLE_DEPTH("stable-depth", Criterion.REACH, Measure.LENGTH, 2),
  SPINDLE_SPEED("spindle-speed", Criterion.SPEED, Measure.SPINDLE_SPEED, 1.25),
  UNBALANCE_FORCE("unbalance-force", Criterion.SPEED, Measure.FORCE, 2);

  private final String id;
  private final Criterion criterion;
  private final Measure measure;
  private final double fullRatio;

  Pair(String id, Criterion criterion, Measure measure, double fullRatio) {
    this.id = id;
    this.criterion = criterion;
    this.measure = measure;
    this.fullRatio = fullRatio;
  }

  /** Code of the pair in reasons. */
  public String id() {
    return id;
  }

  public Criterion criterion() {
    return criterion;
  }

  public Measure measure() {
    return measure;
  }

  /** Capacity over demand at which the score is 100; at its inverse it is 0. */
  public double fullRatio() {
    return fullRatio;
  }
}
