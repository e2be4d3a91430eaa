/** Codes and numbers into metric or inch words, made once, from one template file. */
@NullMarked
package org.gaugeline.wording;

import org.jspecify.annotations.NullMarked;
