package org.gaugeline.job;

import java.util.List;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.Practice;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.Stage;
import org.gaugeline.reference.ToolKind;
import org.gaugeline.reference.Word;
import org.jspecify.annotations.Nullable;

/**
 * What matters most to an operation where nobody says it: rows of the practice table, by stage
 * where there is one for it. A disc cutter has its own, whatever it cuts. No row means 1.
 */
public final class UsualWeights {
  /** The criteria, as the weights of a request name them. */
  public static final List<String> CRITERIA = List.of("accuracy", "grip", "reach", "speed");

  private static final String PREFIX = "defaultWeight";

  private UsualWeights() {}

  /** The row that counts; null where the tables name none. */
  static @Nullable Practice row(
      ReferenceData data, String criterion, OperationKind kind, ToolKind tool, Stage stage) {
    Word subject = tool == ToolKind.DISC_CUTTER ? tool : kind;
    Practice ofStage = ofStage(data, criterion, subject, stage);
    return ofStage == null ? ofAnyStage(data, criterion, subject) : ofStage;
  }

  /** The row of a criterion for one stage of an operation or of a kind of tool; null where none. */
  public static @Nullable Practice ofStage(
      ReferenceData data, String criterion, Word subject, Stage stage) {
    return data.practices().get(id(criterion, subject) + OperationCompletion.pascal(stage.id()));
  }

  /** The row for stages that have none of their own; null where none. */
  public static @Nullable Practice ofAnyStage(ReferenceData data, String criterion, Word subject) {
    return data.practices().get(id(criterion, subject));
  }

  private static String id(String criterion, Word subject) {
    return PREFIX
        + OperationCompletion.pascal(criterion)
        + OperationCompletion.pascal(subject.id());
  }
}
