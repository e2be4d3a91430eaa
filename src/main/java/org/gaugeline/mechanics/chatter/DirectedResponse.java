package org.gaugeline.mechanics.chatter;

import org.gaugeline.mechanics.Require;
import org.gaugeline.mechanics.receptance.TipResponse;

/**
 * A response and the directional factor with which it changes the chip thickness.
 *
 * @param response response of one direction
 * @param factor µ, product of the cosines of force and surface normal to that direction, −1 to 1
 */
public record DirectedResponse(TipResponse response, double factor) {
  public DirectedResponse {
    Require.within("factor", factor, -1, 1);
  }
}
