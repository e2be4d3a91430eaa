/** Runout at the tool tip from the joints of an assembly, and what runout does to the cut. */
@NullMarked
package org.gaugeline.mechanics.runout;

import org.jspecify.annotations.NullMarked;
