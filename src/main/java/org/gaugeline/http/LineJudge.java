package org.gaugeline.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.gaugeline.advice.Assessor;
import org.gaugeline.assembly.GivenAssembly;
import org.gaugeline.assembly.HolderCatalogue;
import org.gaugeline.http.wire.WireAssessment;
import org.gaugeline.job.Intent;
import org.gaugeline.job.IntentFaultException;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.toollist.JudgedLine;
import org.gaugeline.toollist.LinePlace;
import org.gaugeline.toollist.LineResult;
import org.gaugeline.toollist.RefusedLine;
import org.jboss.logging.Logger;
import org.jspecify.annotations.Nullable;

/** One line of a list into what became of it: the same checks and rules as an assessment. */
final class LineJudge {
  private static final Logger LOG = Logger.getLogger(LineJudge.class);
  private static final String ID = "id";
  private static final String START_LINE = "startLine";
  private static final String POCKETS = "pockets";

  private final RequestBody<WireAssessment> bodies;
  private final Assessor assessor;
  private final ReferenceData data;
  private final Schema lines;
  private final Schema machines;

  LineJudge(Assessor assessor, ReferenceData data, HolderCatalogue holders) {
    ContractDocument document = ContractDocument.load();
    this.bodies = RequestBody.ofAssessments(document, new CatalogueFaults(data, holders));
    this.assessor = assessor;
    this.data = data;
    this.lines = document.schema("ListLine");
    this.machines = document.schema("ListMachine");
  }

  LineResult judge(RawLine raw, ListHead head) {
    if (raw instanceof RawLine.Unreadable unreadable) {
      return refused(place(raw, null, null), unreadable.problem());
    }
    RawLine.Read read = (RawLine.Read) raw;
    ObjectNode line = head.complete(read.members());
    List<Fault> faults = new ArrayList<>(read.faults());
    JsonNode id = own(line, ID, lines, "", faults);
    JsonNode startLine = own(line, START_LINE, lines, "", faults);
    JsonNode pockets =
        line.get("machine") instanceof ObjectNode machine
            ? own(machine, POCKETS, machines, "/machine", faults)
            : null;
    LinePlace place = place(raw, id == null ? line.get("label") : id, startLine);
    try {
      WireAssessment wire = bodies.read(line, faults);
      return judged(place, wire, pockets == null ? 0 : pockets.asInt());
    } catch (ProblemException e) {
      return refused(place, e.problem());
    } catch (IntentFaultException e) {
      return refused(place, Problem.invalid(IntentFaultWords.faults(e.faults())));
    } catch (RuntimeException e) {
      // A line stands alone, also where the service is at fault.
      LOG.error("a line met a defect", e);
      return refused(place, Problem.ofStatus(500));
    }
  }

  private LineResult judged(LinePlace place, WireAssessment wire, int pockets) {
    Intent intent = IntentReader.read(wire.intent());
    GivenAssembly given = AssessmentReader.assembly(wire);
    Assessor.Judged judged = assessor.judge(intent, given);
    return new JudgedLine(
        place,
        judged.context().job(),
        judged.verdict(),
        judged.findings(),
        Assessor.limits(judged),
        bodyRefs(given),
        pockets);
  }

  private List<String> bodyRefs(GivenAssembly given) {
    return given.components().stream()
        .map(GivenAssembly.Component::ref)
        .filter(Objects::nonNull)
        .filter(ref -> !data.colletSizes().containsKey(ref))
        .toList();
  }

  /** Takes out a member that an assessment does not have. */
  private static @Nullable JsonNode own(
      ObjectNode owner, String name, Schema schema, String at, List<Fault> faults) {
    JsonNode value = owner.remove(name);
    if (value == null) {
      return null;
    }
    ObjectNode alone = StrictJson.MAPPER.createObjectNode();
    alone.set(name, value);
    List<Fault> found = FaultFinder.find(alone, schema);
    for (Fault fault : found) {
      if (fault.pointer().equals("/" + name)) {
        faults.add(fault.below(at));
      }
    }
    return alone.get(name);
  }

  private static LinePlace place(RawLine raw, @Nullable JsonNode id, @Nullable JsonNode startLine) {
    return new LinePlace(
        id == null || !id.isTextual() || id.asText().isEmpty() ? "line " + raw.line() : id.asText(),
        raw.line(),
        startLine == null ? raw.startLine() : startLine.asLong());
  }

  private static RefusedLine refused(LinePlace place, Problem problem) {
    return new RefusedLine(
        place,
        problem.kind(),
        problem.title(),
        problem.status(),
        problem.detail(),
        problem.errors().stream()
            .map(f -> new RefusedLine.Fault(f.pointer(), f.code(), f.detail(), f.parameters()))
            .toList());
  }
}
