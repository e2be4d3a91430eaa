package org.gaugeline.assembly;

/**
 * A holder with the tool in it.
 *
 * @param holder the body
 * @param stickOutM front face to the tool's lowest point
 * @param insertionM length of shank in gripping contact
 */
public record Assembly(HolderBody holder, double stickOutM, double insertionM) {

  /** Gauge plane to the tool's lowest point. */
  public double gaugeLengthM() {
    return holder.projectionM() + stickOutM;
  }
}
