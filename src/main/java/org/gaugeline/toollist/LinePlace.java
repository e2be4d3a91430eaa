package org.gaugeline.toollist;

/**
 * Where a line stands and what it is called.
 *
 * @param id the caller's name for it; made from the line where none was given
 * @param line 1-based: the line of the body where the body is made of lines, the position among the
 *     lines otherwise
 * @param startLine 1-based line of the caller's own file that a finding points to
 * @param named whether the id is the caller's: only those must differ
 */
public record LinePlace(String id, long line, long startLine, boolean named) {}
