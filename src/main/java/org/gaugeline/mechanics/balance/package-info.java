/**
 * Unbalance of a tool assembly at speed, the seat it turns on, and the spindle mouth that opens.
 */
@NullMarked
package org.gaugeline.mechanics.balance;

import org.jspecify.annotations.NullMarked;
