/** One job and one assembly: demands, capacities, margins, findings, limits. */
@NullMarked
package org.gaugeline.assessment;

import org.jspecify.annotations.NullMarked;
