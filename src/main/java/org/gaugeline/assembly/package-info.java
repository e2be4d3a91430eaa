/**
 * What answers a job: holder bodies, the stack of holder, collet and tool, its profile, and the
 * composing of candidates.
 */
@NullMarked
package org.gaugeline.assembly;

import org.jspecify.annotations.NullMarked;
