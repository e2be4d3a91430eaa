package org.gaugeline.mechanics;

/**
 * A bracket around a zero that false position with the Illinois rule narrows: it keeps the zero
 * inside and does not stall, because an end that stays twice counts half (Dowell and Jarratt, BIT
 * 11 (1971) 168; memory).
 *
 * <p>Not for use by two threads at once.
 */
public final class FalsePosition {
  private double low;
  private double atLow;
  private double high;
  private double atHigh;
  private int kept;

  /**
   * A bracket.
   *
   * @param low one end
   * @param atLow value there; infinite where the function has a pole
   * @param high the other end, above the first
   * @param atHigh value there, of the other sign
   */
  public FalsePosition(double low, double atLow, double high, double atHigh) {
    this.low = low;
    this.atLow = atLow;
    this.high = high;
    this.atHigh = atHigh;
  }

  /**
   * Where to look next: where the straight line through both ends is zero, or the middle beside a
   * pole.
   *
   * @return a place inside
   */
  public double next() {
    return Double.isInfinite(atLow)
        ? (low + high) / 2
        : low - atLow * (high - low) / (atHigh - atLow);
  }

  /**
   * Takes a place as the end of its sign.
   *
   * @param place inside the bracket
   * @param value there
   */
  public void narrow(double place, double value) {
    if ((value > 0) == (atHigh > 0)) {
      high = place;
      atHigh = value;
      atLow = kept == 1 ? atLow / 2 : atLow;
      kept = 1;
    } else {
      low = place;
      atLow = value;
      atHigh = kept == -1 ? atHigh / 2 : atHigh;
      kept = -1;
    }
  }

  /**
   * Distance of the ends.
   *
   * @return width, 0 or more
   */
  public double width() {
    return high - low;
  }
}
