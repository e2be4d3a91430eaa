package org.gaugeline.toollist;

/** What became of one line of a list: each stands alone, and a bad one stops no other. */
public sealed interface LineResult permits JudgedLine, RefusedLine {
  /** Where the line stands and what it is called. */
  LinePlace place();
}
