package org.gaugeline.advice;

import java.util.List;
import org.gaugeline.assembly.Assembly;
import org.gaugeline.assembly.Part;
import org.gaugeline.assessment.Caution;
import org.gaugeline.assessment.Geometry;
import org.gaugeline.assessment.Limits;
import org.gaugeline.assessment.Predicted;
import org.gaugeline.assessment.Probability;
import org.gaugeline.assessment.Reason;
import org.gaugeline.assessment.Scores;
import org.gaugeline.assessment.SetUpStep;
import org.gaugeline.assessment.StabilityChart;
import org.gaugeline.assessment.Standing;

/**
 * One assembly with everything that is said of it.
 *
 * @param id name within the answer, such as {@code a1}
 * @param components parts to put together, spindle first
 * @param stableSpeeds speeds with the deepest stable cuts, where they were computed
 * @param rank place among all weighed candidates, 1 for the best
 */
public record RankedAssembly(
    String id,
    int rank,
    Assembly assembly,
    List<Part> components,
    Standing standing,
    Scores scores,
    Probability probability,
    Geometry geometry,
    Predicted predicted,
    Limits limits,
    List<StabilityChart.Point> stableSpeeds,
    List<SetUpStep> setUp,
    Economics economics,
    List<Reason> reasons,
    List<Caution> cautions) {}
