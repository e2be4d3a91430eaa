package org.gaugeline.assessment;

/** The score of a margin. */
public final class Score {
  private Score() {}

  /**
   * 50 where the demand is just met, 100 at {@code fullRatio}, 0 at its inverse; smooth and never
   * falling in the ratio between: 100·t²(3 − 2t) with t = ½(1 + ln r / ln fullRatio) held in 0 … 1.
   *
   * @param ratio capacity over demand, ≥ 0, may be +∞
   * @param fullRatio ratio at which the score is 100, &gt; 1
   * @return 0 … 100
   */
  public static double of(double ratio, double fullRatio) {
    if (ratio <= 1 / fullRatio) {
      return 0;
    }
    if (ratio >= fullRatio) {
      return 100;
    }
    double t = 0.5 * (1 + Math.log(ratio) / Math.log(fullRatio));
    return 100 * t * t * (3 - 2 * t);
  }
}
