/**
 * Typed records of sourced data: materials, interfaces, families, shanks, fits, speeds, frictions.
 * SI throughout; every record names its source and every uncertain value its spread. No reading of
 * files (see tables), no formulas (see mechanics).
 */
@NullMarked
package org.gaugeline.reference;

import org.jspecify.annotations.NullMarked;
