/**
 * The v1 resources, wire records, one reader and one writer per aggregate, problems, media types.
 */
@NullMarked
package org.gaugeline.http;

import org.jspecify.annotations.NullMarked;
