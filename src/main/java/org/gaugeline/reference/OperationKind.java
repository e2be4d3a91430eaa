package org.gaugeline.reference;

/** What is done to the workpiece. */
public enum OperationKind implements Word {
  SIDE_MILLING("side-milling"),
  SLOTTING("slotting"),
  FACE_MILLING("face-milling"),
  HIGH_EFFICIENCY_MILLING("high-efficiency-milling"),
  PROFILING("profiling"),
  PLUNGE_MILLING("plunge-milling"),
  RAMPING("ramping"),
  CHAMFERING("chamfering"),
  DRILLING("drilling"),
  REAMING("reaming"),
  BORING("boring"),
  TAPPING("tapping"),
  THREAD_MILLING("thread-milling");

  private final String id;

  OperationKind(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
