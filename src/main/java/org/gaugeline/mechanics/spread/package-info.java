/**
 * Positive quantities that are known only within a spread, and the normal distribution behind them.
 */
@NullMarked
package org.gaugeline.mechanics.spread;

import org.jspecify.annotations.NullMarked;
