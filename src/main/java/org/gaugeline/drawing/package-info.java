/** Drawings as SVG: the stability diagram. */
@NullMarked
package org.gaugeline.drawing;

import org.jspecify.annotations.NullMarked;
