package org.gaugeline.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.gaugeline.advice.Assessor;
import org.gaugeline.assembly.GivenAssembly;
import org.gaugeline.assembly.HolderCatalogue;
import org.gaugeline.assembly.StockRefs;
import org.gaugeline.assessment.StabilityChart;
import org.gaugeline.http.wire.WireAssessment;
import org.gaugeline.job.Intent;
import org.gaugeline.job.IntentFaultException;
import org.gaugeline.reference.ItemSymbol;
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
  private static final String LABEL = "label";

  /** Further faults of one line are counted: a list of such lines must fit into memory. */
  private static final int MOST_FAULTS = 20;

  private final RequestBody<WireAssessment> bodies;
  private final Assessor assessor;
  private final SymbolLines symbols;
  private final StockRefs counted;
  private final Schema lines;
  private final Schema machines;

  LineJudge(
      Assessor assessor, ReferenceData data, HolderCatalogue holders, List<ItemSymbol> symbols) {
    ContractDocument document = ContractDocument.load();
    this.bodies = RequestBody.ofAssessments(document, new CatalogueFaults(data, holders));
    this.assessor = assessor;
    this.symbols = new SymbolLines(symbols);
    this.counted = new StockRefs(holders);
    this.lines = document.schema("ListLine");
    this.machines = document.schema("ListMachine");
  }

  LineResult judge(RawLine raw, ListHead head) {
    if (raw instanceof RawLine.Unreadable unreadable) {
      return refused(unnamed(raw), unreadable.problem());
    }
    RawLine.Read read = (RawLine.Read) raw;
    if (!(read.tree() instanceof ObjectNode members)) {
      Fault fault = new Fault("", "wrong-type", "A line must be an object.", Map.of());
      return refused(unnamed(raw), Problem.invalid(List.of(fault)));
    }
    try {
      return judge(read, members, head);
    } catch (RuntimeException e) {
      // A line stands alone, also where the service is at fault.
      LOG.error("a line met a defect", e);
      return refused(unnamed(raw), Problem.ofStatus(500));
    }
  }

  private LineResult judge(RawLine.Read read, ObjectNode members, ListHead head) {
    List<Fault> faults = new ArrayList<>(read.faults());
    symbols.apply(members, faults);
    ObjectNode line = head.complete(members);
    JsonNode id = own(line, ID, lines, "", faults);
    JsonNode startLine = own(line, START_LINE, lines, "", faults);
    JsonNode pockets =
        line.get("machine") instanceof ObjectNode machine
            ? own(machine, POCKETS, machines, "/machine", faults)
            : null;
    LinePlace place = place(read, id, sound(line, LABEL, lines), startLine);
    try {
      WireAssessment wire = bodies.read(line, faults);
      return judged(place, wire, pockets == null ? 0 : pockets.asInt());
    } catch (ProblemException e) {
      return refused(place, e.problem());
    } catch (IntentFaultException e) {
      return refused(place, Problem.invalid(IntentFaultWords.faults(e.faults())));
    }
  }

  private LineResult judged(LinePlace place, WireAssessment wire, int pockets) {
    Intent intent = IntentReader.read(wire.intent());
    GivenAssembly given = AssessmentReader.assembly(wire);
    Assessor.Judged judged = assessor.judgeLine(intent, given);
    return new JudgedLine(
        place,
        judged.context().job(),
        judged.verdict(),
        judged.findings(),
        Assessor.limits(judged),
        stableSpeeds(intent, judged),
        bodyRefs(given),
        pockets);
  }

  /** A line tells them only where it asks for them: a list shall not wait for what nobody reads. */
  private static List<StabilityChart.Point> stableSpeeds(Intent intent, Assessor.Judged judged) {
    boolean asked = intent.preferences().asksStability();
    return asked ? judged.context().stableSpeeds(judged.appraisal()) : List.of();
  }

  private List<String> bodyRefs(GivenAssembly given) {
    return given.components().stream()
        .map(GivenAssembly.Component::ref)
        .filter(Objects::nonNull)
        .filter(counted::knows)
        .toList();
  }

  /** Takes out a member that an assessment does not have. */
  private static @Nullable JsonNode own(
      ObjectNode owner, String name, Schema schema, String at, List<Fault> faults) {
    JsonNode value = sound(owner, name, schema, at, faults);
    owner.remove(name);
    return value;
  }

  /** A member if it keeps to the schema; what is wrong with it is found when the line is read. */
  private static @Nullable JsonNode sound(ObjectNode owner, String name, Schema schema) {
    return sound(owner, name, schema, "", new ArrayList<>());
  }

  private static @Nullable JsonNode sound(
      ObjectNode owner, String name, Schema schema, String at, List<Fault> faults) {
    JsonNode value = owner.get(name);
    if (value == null) {
      return null;
    }
    ObjectNode alone = StrictJson.MAPPER.createObjectNode();
    alone.set(name, value);
    for (Fault fault : FaultFinder.find(alone, schema)) {
      if (fault.pointer().equals("/" + name)) {
        faults.add(fault.below(at));
      }
    }
    return alone.get(name);
  }

  private static LinePlace unnamed(RawLine raw) {
    return place(raw, null, null, null);
  }

  /** A label, or the number of the line, names what the caller gave no id to. */
  private static LinePlace place(
      RawLine raw, @Nullable JsonNode id, @Nullable JsonNode label, @Nullable JsonNode startLine) {
    String own = id == null ? "" : id.asText();
    String said = own.isEmpty() && label != null ? label.asText() : own;
    return new LinePlace(
        said.isEmpty() ? "line " + raw.line() : said,
        raw.line(),
        startLine == null ? raw.startLine() : startLine.asLong(),
        !own.isEmpty());
  }

  private static RefusedLine refused(LinePlace place, Problem problem) {
    int count = problem.errors().size();
    return new RefusedLine(
        place,
        problem.kind(),
        problem.title(),
        problem.status(),
        count > MOST_FAULTS
            ? problem.detail() + " Of a line of a list " + MOST_FAULTS + " are listed."
            : problem.detail(),
        problem.errors().stream()
            .limit(MOST_FAULTS)
            .map(f -> new RefusedLine.Fault(f.pointer(), f.code(), f.detail(), f.parameters()))
            .toList());
  }
}
