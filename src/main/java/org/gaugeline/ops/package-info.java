/** Health, metrics, settings. */
@NullMarked
package org.gaugeline.ops;

import org.jspecify.annotations.NullMarked;
