/**
 * What holds a shank: friction of a shrink, collet or hydraulic grip, positive stops, and the play
 * of a fit.
 */
@NullMarked
package org.gaugeline.mechanics.grip;

import org.jspecify.annotations.NullMarked;
