/** Tables and reports that people and build servers read: CSV in and out, SARIF, JUnit. */
@NullMarked
package org.gaugeline.formats;

import org.jspecify.annotations.NullMarked;
