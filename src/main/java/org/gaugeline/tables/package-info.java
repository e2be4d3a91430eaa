/**
 * Reads the table files and the shop's holder files into records, once, at the start. A row without
 * a known source stops the start.
 */
@NullMarked
package org.gaugeline.tables;

import org.jspecify.annotations.NullMarked;
