/**
 * Stepped tool stacks as Timoshenko beams on elastic joints: tip compliance in closed form, bending
 * modes and a lower bound on the first frequency. SI units throughout.
 */
@NullMarked
package org.gaugeline.mechanics.beam;

import org.jspecify.annotations.NullMarked;
