/**
 * Whole tool lists: what became of each line, what only shows when all lines are seen, and whether
 * the list passes. Knows nothing of formats.
 */
@NullMarked
package org.gaugeline.toollist;

import org.jspecify.annotations.NullMarked;
