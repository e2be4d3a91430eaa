package org.gaugeline.assessment;

import java.util.function.DoubleUnaryOperator;
import java.util.function.IntFunction;

/**
 * Finds the last step of a grid that is met, where everything before a step is met and everything
 * beyond fails: by secants over a measure of the room left, always inside the bracket, to
 * neighbouring steps. Where a secant has not ended after a few looks, because a demand jumps, it
 * halves.
 */
final class GridSearch {
  /** Room as a share of the capacity: nearly linear where the demand is nearly linear. */
  static final DoubleUnaryOperator SHARE_LEFT = ratio -> 1 - 1 / ratio;

  private static final int SECANTS = 7;

  private final DoubleUnaryOperator roomOfRatio;
  private int looks;
  private int met;
  private int failed;
  private String governedBy;
  private double last;
  private double lastRoom;
  private double slope;

  /**
   * Starts from a known point, which need not lie on the grid.
   *
   * @param roomOfRatio room left by a ratio of capacity over demand: 0 at 1, rising
   * @param met last step known to be met, −1 if none is
   * @param failed first step known to fail, one past the grid if none is
   * @param governedBy what fails there
   * @param at position of the known point, in steps
   * @param ratio ratio there
   * @param slope room per step to go by at first, &lt; 0
   */
  GridSearch(
      DoubleUnaryOperator roomOfRatio,
      int met,
      int failed,
      String governedBy,
      double at,
      double ratio,
      double slope) {
    this.roomOfRatio = roomOfRatio;
    this.met = met;
    this.failed = failed;
    this.governedBy = governedBy;
    this.last = at;
    this.lastRoom = roomOfRatio.applyAsDouble(ratio);
    this.slope = slope;
  }

  /**
   * A search between a step that is met and one that fails, the first secant drawn through both.
   *
   * @param ratioAtMet ratio at the first
   */
  static GridSearch between(int met, double ratioAtMet, int failed, ForceRatio atFailed) {
    double room = SHARE_LEFT.applyAsDouble(atFailed.ratio());
    double lost = room - SHARE_LEFT.applyAsDouble(ratioAtMet);
    return new GridSearch(
        SHARE_LEFT, met, failed, atFailed.code(), failed, atFailed.ratio(), lost / (failed - met));
  }

  /** Runs the search over what is tightest at a step. */
  GridSearch run(IntFunction<ForceRatio> tightest) {
    while (failed - met > 1) {
      int next = next(last - lastRoom / slope);
      ForceRatio there = tightest.apply(next);
      if (there.isMet()) {
        met = next;
      } else {
        failed = next;
        governedBy = there.code();
      }
      double room = roomOfRatio.applyAsDouble(there.ratio());
      double steeper = (room - lastRoom) / (next - last);
      slope = Double.isFinite(steeper) && steeper < 0 ? steeper : slope;
      last = next;
      lastRoom = room;
    }
    return this;
  }

  /** The grid point nearest to a guess inside the bracket; an end or the middle of it otherwise. */
  private int next(double guess) {
    if (looks++ >= SECANTS || !Double.isFinite(guess)) {
      return (met + failed) / 2;
    }
    return (int) Math.max(met + 1, Math.min(failed - 1, Math.rint(guess)));
  }

  /** The last step that is met; −1 if none is. */
  int met() {
    return met;
  }

  /** What fails one step further. */
  String governedBy() {
    return governedBy;
  }
}
