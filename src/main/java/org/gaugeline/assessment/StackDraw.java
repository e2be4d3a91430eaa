package org.gaugeline.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.gaugeline.mechanics.spread.StandardNormal;

/**
 * One draw of what is least known of a stack and its cut, as standard normal scores of each spread.
 *
 * @param spindleTurn rotational stiffness of the spindle joint
 * @param spindleSlide lateral stiffness of the spindle joint
 * @param seams stiffness of the joints between parts, all alike
 * @param toolTurn rotational stiffness of the tool joint
 * @param toolSlide lateral stiffness of the tool joint
 * @param damping damping ratio of body and tool
 * @param force cutting coefficient K_t
 * @param spindleDamping damping ratio of the spindle joint
 * @param rubbing damping by the flanks, one of {@link #RUBBING_LEVELS} values
 */
record StackDraw(
    double spindleTurn,
    double spindleSlide,
    double seams,
    double toolTurn,
    double toolSlide,
    double damping,
    double force,
    double spindleDamping,
    double rubbing) {
  /** Everything at its median. */
  static final StackDraw MEDIAN = new StackDraw(0, 0, 0, 0, 0, 0, 0, 0, 0);

  /** So few that what only depends on them is computed once for all draws. */
  static final int RUBBING_LEVELS = 8;

  private static final int DIMENSIONS = 9;
  private static final long SEED = 20_261_125;

  /** How much of it leads to a deep limit: the lower, the likelier the draw is among the least. */
  double ease() {
    return spindleTurn + toolTurn + toolSlide + damping + spindleDamping + rubbing - force;
  }

  /**
   * Draws that stand for the joint spread: a Latin hypercube (McKay, Beckman and Conover,
   * Technometrics 21 (1979) 239; memory), every margin met in equal strata, always the same.
   *
   * @param count how many, 2 or more
   */
  static List<StackDraw> latinHypercube(int count) {
    SplittableRandom random = new SplittableRandom(SEED);
    double[][] score = new double[DIMENSIONS][count];
    for (int d = 0; d < DIMENSIONS; d++) {
      double[] column = score[d];
      int levels = d == DIMENSIONS - 1 ? RUBBING_LEVELS : count;
      for (int i = 0; i < count; i++) {
        int stratum = (int) ((long) i * levels / count);
        column[i] = StandardNormal.quantile((stratum + 0.5) / levels);
      }
      for (int i = count - 1; i > 0; i--) {
        int other = random.nextInt(i + 1);
        double kept = column[i];
        column[i] = column[other];
        column[other] = kept;
      }
    }
    List<StackDraw> draws = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      draws.add(
          new StackDraw(
              score[0][i],
              score[1][i],
              score[2][i],
              score[3][i],
              score[4][i],
              score[5][i],
              score[6][i],
              score[7][i],
              score[8][i]));
    }
    return draws;
  }
}
