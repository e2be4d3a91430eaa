/**
 * What is asked, complete and in SI: workpiece, operation, feature, tool, machine, shop. Completion
 * turns a partial intent into a full one and lists what it assumed. No holders here.
 */
@NullMarked
package org.gaugeline.job;

import org.jspecify.annotations.NullMarked;
