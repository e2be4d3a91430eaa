/** Widths of the standard tolerance grades of cylindrical fits. */
@NullMarked
package org.gaugeline.mechanics.fits;

import org.jspecify.annotations.NullMarked;
