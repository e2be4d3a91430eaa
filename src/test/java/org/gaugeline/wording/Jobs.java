package org.gaugeline.wording;

import java.util.List;
import org.gaugeline.job.Intent;
import org.gaugeline.job.Job;
import org.gaugeline.quantity.TextUnits;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ToolKind;

/** The least that can be asked, in both units of text. */
final class Jobs {
  private Jobs() {}

  static Job of(TextUnits units) {
    return Answers.ADVISOR.recommend(intent(units)).job();
  }

  private static Intent intent(TextUnits units) {
    return new Intent(
        null,
        units,
        new Intent.Workpiece("42CrMo4", null, null, null, null, null, null, null),
        new Intent.Operation(
            OperationKind.SIDE_MILLING,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null),
        new Intent.Feature(null, null, null, null, null, null, null, null, null, List.of()),
        new Intent.Tool(
            ToolKind.END_MILL,
            0.012,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null),
        new Intent.Machine(
            "HSK-A63", null, null, null, null, List.of(), null, null, null, null, null, null, null,
            null, null),
        new Intent.Shop(null, null, null, null, List.of(), List.of(), null, null, null, null, null),
        new Intent.Preferences(null, null, null, null, null, null, null, null));
  }

  /** The same intent with texts in the other units. */
  static Intent in(TextUnits units, Intent intent) {
    return new Intent(
        intent.label(),
        units,
        intent.workpiece(),
        intent.operation(),
        intent.feature(),
        intent.tool(),
        intent.machine(),
        intent.shop(),
        intent.preferences());
  }
}
