/**
 * Stability of milling and boring against regenerative chatter: the zeroth-order limit at a given
 * speed, the one-dimensional estimate and semi-discretization. SI units throughout.
 */
@NullMarked
package org.gaugeline.mechanics.chatter;

import org.jspecify.annotations.NullMarked;
