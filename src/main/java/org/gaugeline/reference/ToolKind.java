package org.gaugeline.reference;

/** The kind of cutting tool. */
public enum ToolKind implements Word {
  END_MILL("end-mill"),
  BALL_END_MILL("ball-end-mill"),
  BULL_NOSE_END_MILL("bull-nose-end-mill"),
  FACE_MILL("face-mill"),
  SHELL_MILL("shell-mill"),
  DISC_CUTTER("disc-cutter"),
  DRILL("drill"),
  REAMER("reamer"),
  TAP("tap"),
  THREAD_MILL("thread-mill"),
  BORING_TOOL("boring-tool"),
  CHAMFER_MILL("chamfer-mill");

  private final String id;

  ToolKind(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
