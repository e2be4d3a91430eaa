package org.gaugeline.toollist;

import java.util.List;

/**
 * What is said of a list as a whole.
 *
 * @param passed whether nothing was found that is as hard as the caller asked for, and no line was
 *     refused
 */
public record ListSummary(List<ListFinding> findings, Totals totals, boolean passed) {}
