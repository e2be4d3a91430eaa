package org.gaugeline.http;

import org.gaugeline.job.UsualWeights;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.Practice;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.Stage;
import org.gaugeline.reference.ToolKind;
import org.gaugeline.reference.Word;
import org.jspecify.annotations.Nullable;

/** What of each kind of operation is computed, and what matters most to it. */
final class OperationEntries {
  private final ReferenceData data;

  OperationEntries(ReferenceData data) {
    this.data = data;
  }

  void write(JsonBytes json, OperationKind kind) {
    json.text("id", kind.id());
    json.text("name", name(kind));
    json.flag("computed", true);
    json.text("note", note(kind));
    json.array("weights");
    weights(json, kind, "");
    if (takesDiscs(kind)) {
      weights(json, ToolKind.DISC_CUTTER, ToolKind.DISC_CUTTER.id());
    }
    json.endArray();
  }

  /** Whether disc cutters are used for it. */
  private static boolean takesDiscs(OperationKind kind) {
    return kind == OperationKind.SLOTTING || kind == OperationKind.SIDE_MILLING;
  }

  private void weights(JsonBytes json, Word subject, String tool) {
    for (String criterion : UsualWeights.CRITERIA) {
      weight(json, UsualWeights.ofAnyStage(data, criterion, subject), criterion, "", tool);
      for (Stage stage : Stage.values()) {
        Practice row = UsualWeights.ofStage(data, criterion, subject, stage);
        weight(json, row, criterion, stage.id(), tool);
      }
    }
  }

  private static void weight(
      JsonBytes json, @Nullable Practice row, String criterion, String stage, String tool) {
    if (row == null) {
      return;
    }
    json.object();
    json.text("criterion", criterion);
    if (!stage.isEmpty()) {
      json.text("stage", stage);
    }
    if (!tool.isEmpty()) {
      json.text("toolKind", tool);
    }
    json.number("p05", row.value().p05());
    json.number("median", row.value().median());
    json.number("p95", row.value().p95());
    json.text("note", row.note());
    json.text("source", row.sourceKey());
    json.endObject();
  }

  private static String name(OperationKind kind) {
    String words = kind.id().replace('-', ' ');
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private static String note(OperationKind kind) {
    return switch (kind) {
      case SIDE_MILLING, HIGH_EFFICIENCY_MILLING ->
          "Loads over a revolution, grip, accuracy, reach and speed.";
      case SLOTTING ->
          "Loads over a revolution, grip, accuracy, reach and speed; for discs the runout of their"
              + " sides, which widens the slot. Axial bending of a disc is not computed.";
      case FACE_MILLING -> "Loads with the lead angle, grip, accuracy, reach and speed.";
      case PROFILING -> "Loads at the effective diameter, grip, accuracy, reach and speed.";
      case DRILLING -> "Torque and thrust, grip, accuracy, reach and speed.";
      case REAMING ->
          "Torque of the thin cut, grip, accuracy, reach and speed; a floating holder follows the"
              + " bore.";
      case BORING ->
          "Force and torque of one edge or several, bending of the bar, feed marks, unbalance of a"
              + " single edge, grip, reach and speed. Chatter of a long bar and the setting of the"
              + " edge are not computed.";
      case TAPPING ->
          "Torque of cut and form taps with a jammed chip, axial error of synchronisation, square or"
              + " friction, reach and speed. Spindle acceleration at the reversal and the size of the"
              + " thread are not computed.";
      case PLUNGE_MILLING ->
          "Torque, push and side force of the end edges in a straight step, grip, accuracy, reach and"
              + " speed. Overlap with the plunge beside it is left out, which overstates.";
      case RAMPING ->
          "Loads of rim and end edges at the deepest point of a pass, straight or in a helix, grip,"
              + " accuracy, reach and speed. Rubbing of a centre without edges is not computed.";
      case CHAMFERING ->
          "Loads of the cone on a straight edge, grip, accuracy, reach and speed. A curved edge is"
              + " not computed.";
      case THREAD_MILLING ->
          "Loads of the full 60° profile of an internal thread in one pass, grip, accuracy, reach and"
              + " speed. External threads and other profiles are not computed.";
    };
  }
}
