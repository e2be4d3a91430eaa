/**
 * Room between a tool stack and the part: turned profiles against walls, drafts, steps and floors.
 * SI units throughout.
 */
@NullMarked
package org.gaugeline.mechanics.reach;

import org.jspecify.annotations.NullMarked;
