package org.gaugeline.advice;

import java.util.List;
import org.gaugeline.assessment.Demands;
import org.gaugeline.assessment.Finding;
import org.gaugeline.assessment.Loads;
import org.gaugeline.job.Assumption;
import org.gaugeline.job.Job;

/**
 * What is said of an assembly that somebody chose.
 *
 * @param assumptions what was left out of the assembly and how it was filled
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
    List<Assumption> assumptions,
    RankedAssembly assembly,
    List<Recommendation.Change> wouldFitIf,
    List<String> wontFitBy) {}
