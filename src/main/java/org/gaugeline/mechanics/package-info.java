/**
 * Machining mechanics: formulas and solvers on SI doubles, without state, I/O or framework.
 *
 * <p>Every quantity is in m, N, Pa, kg, s, rad and their products, and its name ends in that unit.
 * Every public method states its equation, its validity and the source it is taken from. Tables of
 * constants do not live here: callers pass them in, each from a sourced table row.
 */
@NullMarked
package org.gaugeline.mechanics;

import org.jspecify.annotations.NullMarked;
