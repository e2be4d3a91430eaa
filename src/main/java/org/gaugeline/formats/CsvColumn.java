package org.gaugeline.formats;

/** Columns of a checked list, in their order. */
enum CsvColumn {
  ID("id"),
  LINE("line"),
  VERDICT("verdict"),
  ERRORS("errors"),
  WARNINGS("warnings"),
  NOTES("notes"),
  CODES("codes"),
  TEXT("text"),
  POINTER("pointer"),
  DEMAND("demand"),
  CAPACITY("capacity"),
  UNIT("unit"),
  SPINDLE_SPEED_LIMIT_RPM("spindleSpeedLimitRpm"),
  AXIAL_DEPTH_LIMIT_MM("axialDepthLimitMm"),
  FEED_PER_TOOTH_LIMIT_MM("feedPerToothLimitMm"),
  STICK_OUT_LIMIT_MM("stickOutLimitMm"),
  TORQUE_LIMIT_NM("torqueLimitNm"),
  AXIAL_FORCE_LIMIT_N("axialForceLimitN"),
  FEATURE_DEPTH_LIMIT_MM("featureDepthLimitMm");

  private final String title;

  CsvColumn(String title) {
    this.title = title;
  }

  String title() {
    return title;
  }
}
