/**
 * Unit conversion and formatting. The unit of a number is the suffix of its name; this package
 * knows every suffix and its factor to SI. Knows nothing of machining.
 */
@NullMarked
package org.gaugeline.quantity;

import org.jspecify.annotations.NullMarked;
