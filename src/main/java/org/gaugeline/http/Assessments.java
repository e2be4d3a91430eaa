package org.gaugeline.http;

import org.gaugeline.advice.Assessment;
import org.gaugeline.advice.Assessor;
import org.gaugeline.advice.Verdict;
import org.gaugeline.assembly.GivenAssembly;
import org.gaugeline.assembly.HolderCatalogue;
import org.gaugeline.http.wire.WireAssessment;
import org.gaugeline.job.Intent;
import org.gaugeline.job.IntentFaultException;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.wording.Words;

/** Body with a given assembly in, assessment out. Holds no state of requests. */
public final class Assessments {
  private final RequestBody<WireAssessment> bodies;
  private final Assessor assessor;
  private final AssessmentWriter writer;

  public Assessments(Assessor assessor, Words words, ReferenceData data, HolderCatalogue holders) {
    this.bodies =
        RequestBody.ofAssessments(ContractDocument.load(), new CatalogueFaults(data, holders));
    this.assessor = assessor;
    this.writer = new AssessmentWriter(words, data.version());
  }

  /** A body that was read and judged, with its answer still to be written. */
  record Asked(
      WireAssessment wire,
      String digest,
      Intent intent,
      GivenAssembly given,
      Assessor.Judged judged) {

    /** Whether changes must be searched for, which takes longer than all the rest. */
    boolean needsSearch() {
      return judged.verdict() == Verdict.UNFIT;
    }
  }

  /**
   * Reads and judges a body.
   *
   * @throws ProblemException where it has faults
   */
  Asked ask(byte[] body) {
    WireAssessment wire = bodies.read(body);
    Intent intent = IntentReader.read(wire.intent());
    GivenAssembly given = AssessmentReader.assembly(wire);
    try {
      return new Asked(
          wire, Recommendations.digest(body), intent, given, assessor.judge(intent, given));
    } catch (IntentFaultException e) {
      throw new ProblemException(Problem.invalid(IntentFaultWords.faults(e.faults())));
    }
  }

  byte[] answer(Asked asked, boolean explain) {
    Assessment assessment = assessor.assess(asked.intent(), asked.given(), asked.judged());
    return writer.write(
        assessment, explain ? asked.judged() : null, asked.wire().intent(), asked.digest());
  }
}
