/**
 * Request bodies as they are sent: every member may be absent, names and units as in the contract.
 */
@NullMarked
package org.gaugeline.http.wire;

import org.jspecify.annotations.NullMarked;
