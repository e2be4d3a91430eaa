/** Candidates assessed, ranked and explained; what would make a losing one fit. */
@NullMarked
package org.gaugeline.advice;

import org.jspecify.annotations.NullMarked;
