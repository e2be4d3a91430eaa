/**
 * What a cut asks of tool and holder: specific cutting force, milling over the helical edge,
 * drilling, reaming, and what runout adds.
 *
 * <p>All quantities are SI (m, N, Pa, rad, s); every constant of a material or of practice is
 * passed in.
 */
@NullMarked
package org.gaugeline.mechanics.cutting;

import org.jspecify.annotations.NullMarked;
