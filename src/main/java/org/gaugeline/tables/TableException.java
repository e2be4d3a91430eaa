package org.gaugeline.tables;

/** A table or holder file that cannot be used; the message starts with file and line. */
public final class TableException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * @param file name of the file
   * @param line line in it, from 1; 0 where the whole file is meant
   * @param what what is wrong, with the value
   */
  public TableException(String file, int line, String what) {
    super(place(file, line) + what);
  }

  TableException(String file, int line, String what, Throwable cause) {
    super(place(file, line) + what, cause);
  }

  private static String place(String file, int line) {
    return line == 0 ? file + ": " : file + ":" + line + ": ";
  }
}
