package org.gaugeline.assessment;

/** Scores of the four criteria, each the least of its pairs, and their weighted geometric mean. */
public record Scores(double accuracy, double grip, double reach, double speed, double overall) {
  /** Nothing could be scored. */
  public static final Scores NONE = new Scores(0, 0, 0, 0, 0);
}
