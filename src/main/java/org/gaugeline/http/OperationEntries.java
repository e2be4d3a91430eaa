package org.gaugeline.http;

import org.gaugeline.reference.OperationKind;

/** What of each kind of operation is computed. */
final class OperationEntries {
  private OperationEntries() {}

  static void write(JsonBytes json, OperationKind kind) {
    json.text("id", kind.id());
    json.text("name", name(kind));
    json.flag("computed", isComputed(kind));
    json.text("note", note(kind));
  }

  private static String name(OperationKind kind) {
    String words = kind.id().replace('-', ' ');
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private static boolean isComputed(OperationKind kind) {
    return switch (kind) {
      case SIDE_MILLING,
          SLOTTING,
          FACE_MILLING,
          HIGH_EFFICIENCY_MILLING,
          PROFILING,
          DRILLING,
          REAMING ->
          true;
      case PLUNGE_MILLING, RAMPING, CHAMFERING, BORING, TAPPING, THREAD_MILLING -> false;
    };
  }

  private static String note(OperationKind kind) {
    return switch (kind) {
      case SIDE_MILLING, SLOTTING, HIGH_EFFICIENCY_MILLING ->
          "Loads over a revolution, grip, accuracy, reach and speed.";
      case FACE_MILLING -> "Loads with the lead angle, grip, accuracy, reach and speed.";
      case PROFILING -> "Loads at the effective diameter, grip, accuracy, reach and speed.";
      case DRILLING -> "Torque and thrust, grip, accuracy, reach and speed.";
      case REAMING -> "Torque of the thin cut, grip, accuracy, reach and speed.";
      case PLUNGE_MILLING, RAMPING, CHAMFERING, BORING, TAPPING, THREAD_MILLING ->
          "Read and checked; its loads are not computed in this version.";
    };
  }
}
