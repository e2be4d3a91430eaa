package org.gaugeline.advice;

import java.util.List;
import java.util.Map;
import org.gaugeline.assessment.Caution;
import org.gaugeline.assessment.Demands;
import org.gaugeline.assessment.Loads;
import org.gaugeline.assessment.Reason;
import org.gaugeline.assessment.Scores;
import org.gaugeline.assessment.Standing;
import org.gaugeline.job.Job;
import org.gaugeline.reference.ClampingFamily;
import org.jspecify.annotations.Nullable;

/**
 * The whole answer to one intent.
 *
 * @param assemblies the best, in order
 * @param flagged the best losing assembly of each family that is not among them
 * @param wouldFitIf where no assembly meets the job, single changes with which one would
 */
public record Recommendation(
    Job job,
    Loads loads,
    Demands demands,
    List<FamilyVerdict> families,
    List<RankedAssembly> assemblies,
    List<RankedAssembly> flagged,
    Weighed weighed,
    List<RuledOut> ruledOut,
    List<Caution> cautions,
    List<Change> wouldFitIf) {

  /** Code of the caution that {@code wouldFitIf} belongs to. */
  public static final String NOTHING_SUITABLE = "nothing-suitable";

  /**
   * How a clamping family stands.
   *
   * @param bestAssembly id into assemblies or flagged; null where there is none
   */
  public record FamilyVerdict(
      ClampingFamily family,
      Standing standing,
      Scores scores,
      List<Reason> reasons,
      @Nullable String bestAssembly) {}

  /**
   * How many candidates were weighed, and what the losing ones lost by.
   *
   * @param lostBy criterion word to count, in the order of the criteria
   */
  public record Weighed(int candidates, Map<String, Integer> lostBy) {}

  /**
   * A family that cannot take part, and what would admit it.
   *
   * @param equipment the missing equipment and when it pays; null where that is not the obstacle or
   *     it never pays on this job
   */
  public record RuledOut(
      ClampingFamily family,
      Reason reason,
      List<Change> wouldFitIf,
      @Nullable Equipment equipment) {}

  /**
   * Equipment that the shop has not got.
   *
   * @param price guide price
   */
  public record Equipment(double price, BreakEven breakEven) {}

  /**
   * A single change of the request.
   *
   * @param pointer JSON pointer into the request
   * @param to new value: number in SI, word or flag
   * @param from present value; null where absent
   */
  public record Change(String pointer, @Nullable Object from, Object to) {}
}
