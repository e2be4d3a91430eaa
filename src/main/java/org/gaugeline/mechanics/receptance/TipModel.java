package org.gaugeline.mechanics.receptance;

/**
 * A tool tip seen in two directions, without cross response.
 *
 * @param x response along the feed
 * @param y response along the normal to the feed, in the plane of the cut
 */
public record TipModel(TipResponse x, TipResponse y) {
  /**
   * The same response in both directions, as of a round tool.
   *
   * @param response the response
   * @return the tip
   */
  public static TipModel symmetric(TipResponse response) {
    return new TipModel(response, response);
  }
}
