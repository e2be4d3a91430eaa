/**
 * Spindle joints under bending and torque: face contact, taper contact and both. SI units
 * throughout.
 */
@NullMarked
package org.gaugeline.mechanics.joint;

import org.jspecify.annotations.NullMarked;
