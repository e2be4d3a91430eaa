package org.gaugeline.advice;

import java.util.List;
import org.gaugeline.assessment.Demands;
import org.gaugeline.assessment.Finding;
import org.gaugeline.assessment.Loads;
import org.gaugeline.job.Job;

/**
 * What is said of an assembly that somebody chose.
 *
 * @param assembly everything that is said of a ranked assembly
 * @param wouldFitIf single changes after each of which no error is left
 * @param wontFitBy pointers of members of which no value in the range helps
 */
public record Assessment(
    Job job,
    Loads loads,
    Demands demands,
    Verdict verdict,
    List<Finding> findings,
    RankedAssembly assembly,
    List<Recommendation.Change> wouldFitIf,
    List<String> wontFitBy) {}
