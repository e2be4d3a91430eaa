package org.gaugeline.toollist;

import java.util.List;
import org.gaugeline.advice.Verdict;
import org.gaugeline.assessment.Finding;
import org.gaugeline.assessment.Limits;
import org.gaugeline.assessment.StabilityChart;
import org.gaugeline.job.Job;

/**
 * A line whose assembly was weighed.
 *
 * @param stableSpeeds speeds with the deepest stable cuts; none where they were not asked for
 * @param holderRefs catalogue references of the assembly's bodies, without collets
 * @param pockets pockets of the machine's magazine; 0 where not said
 */
public record JudgedLine(
    LinePlace place,
    Job job,
    Verdict verdict,
    List<Finding> findings,
    Limits limits,
    List<StabilityChart.Point> stableSpeeds,
    List<String> holderRefs,
    int pockets)
    implements LineResult {
  private static final String NEIGHBOURS_EMPTY = "neighbour-pockets-empty";

  /** Whether the pockets beside it must stay empty. */
  boolean needsEmptyNeighbours() {
    for (Finding finding : findings) {
      if (finding.code().equals(NEIGHBOURS_EMPTY)) {
        return true;
      }
    }
    return false;
  }
}
