/**
 * Frequency response of tool tips: receptances of beam chains at a frequency, coupled through
 * joints and with tuned masses, and the modal or sampled responses that stability needs. SI units
 * throughout; time dependence e^{iωt}.
 */
@NullMarked
package org.gaugeline.mechanics.receptance;

import org.jspecify.annotations.NullMarked;
