/** Tuned masses against vibration: response, classical and chatter tuning, gain. SI units. */
@NullMarked
package org.gaugeline.mechanics.damper;

import org.jspecify.annotations.NullMarked;
