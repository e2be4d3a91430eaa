package org.gaugeline.assembly;

/**
 * A holder with the tool in it.
 *
 * @param holder the body
 * @param stickOutM front face to the tool's lowest point
 * @param insertionM length of shank in gripping contact
 * @param measured what was measured on it
 */
public record Assembly(HolderBody holder, double stickOutM, double insertionM, Measured measured) {

  /** An assembly that nobody has measured yet. */
  public Assembly(HolderBody holder, double stickOutM, double insertionM) {
    this(holder, stickOutM, insertionM, Measured.NONE);
  }

  /** The same with what was measured on it. */
  public Assembly with(Measured found) {
    return new Assembly(holder, stickOutM, insertionM, found);
  }

  /** Gauge plane to the tool's lowest point. */
  public double gaugeLengthM() {
    double found = measured.gaugeLengthM();
    return Double.isNaN(found) ? holder.projectionM() + stickOutM : found;
  }
}
