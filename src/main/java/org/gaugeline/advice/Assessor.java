package org.gaugeline.advice;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.gaugeline.assembly.Assembly;
import org.gaugeline.assembly.Candidate;
import org.gaugeline.assembly.Extension;
import org.gaugeline.assembly.GivenAssembly;
import org.gaugeline.assembly.GivenStack;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.HolderCatalogue;
import org.gaugeline.assembly.Part;
import org.gaugeline.assembly.StandardPart;
import org.gaugeline.assessment.Appraisal;
import org.gaugeline.assessment.Appraiser;
import org.gaugeline.assessment.Body;
import org.gaugeline.assessment.ChartAsked;
import org.gaugeline.assessment.ChartSolver;
import org.gaugeline.assessment.DerivationStep;
import org.gaugeline.assessment.Finding;
import org.gaugeline.assessment.Inspection;
import org.gaugeline.assessment.JobContext;
import org.gaugeline.assessment.LimitSolver;
import org.gaugeline.assessment.Limits;
import org.gaugeline.assessment.Models;
import org.gaugeline.assessment.Reasons;
import org.gaugeline.assessment.StabilityChart;
import org.gaugeline.job.Assumption;
import org.gaugeline.job.Completion;
import org.gaugeline.job.Intent;
import org.gaugeline.job.IntentFaultException;
import org.gaugeline.job.Job;
import org.gaugeline.reference.MaterialIndex;
import org.gaugeline.reference.ReferenceData;
import org.jspecify.annotations.Nullable;

/**
 * The story of one assessment: complete the intent, put the given components together, weigh that
 * one assembly as any other, look at it by every rule, and find what would make it fit.
 */
public final class Assessor {
  private final ReferenceData data;
  private final HolderCatalogue catalogue;
  private final Completion completion;
  private final GivenStack stacks;
  private final Models models;
  private final Advisor advisor;
  private final Map<String, Body> bodies = new ConcurrentHashMap<>();

  public Assessor(ReferenceData data, HolderCatalogue catalogue, Advisor advisor) {
    this.data = data;
    this.catalogue = catalogue;
    this.completion = new Completion(data, MaterialIndex.of(data.materials().values()));
    this.stacks = new GivenStack(data, catalogue);
    this.models = new Models(data);
    this.advisor = advisor;
  }

  /** A given assembly weighed and looked at. */
  public record Judged(
      JobContext context, Appraisal appraisal, Inspection inspection, List<Finding> findings) {
    public Verdict verdict() {
      return Verdict.of(findings);
    }

    /** Its numbers as lines that can be checked by hand. */
    public List<DerivationStep> derivation() {
      return context.derivation(appraisal);
    }
  }

  /**
   * Weighs a given assembly and looks at it by every rule, its stable depth included.
   *
   * @throws IntentFaultException where a reference is unknown or nothing holds a tool
   */
  public Judged judge(Intent intent, GivenAssembly given) {
    Weighing firm = weigh(intent, given);
    Appraisal whole = Appraiser.withStableDepth(firm.context(), firm.appraisal());
    return looked(given, new Weighing(firm.context(), firm.built(), whole));
  }

  /**
   * The same for one line of many: a stable depth that is only predicted takes longer than all else
   * and is judged where it is asked for in so many words.
   *
   * @throws IntentFaultException where a reference is unknown or nothing holds a tool
   */
  public Judged judgeLine(Intent intent, GivenAssembly given) {
    return intent.preferences().asksStability() ? judge(intent, given) : judgeFirm(intent, given);
  }

  /** By every rule that can find an error: a stable depth that is only predicted finds none. */
  Judged judgeFirm(Intent intent, GivenAssembly given) {
    return looked(given, weigh(intent, given));
  }

  private static Judged looked(GivenAssembly given, Weighing weighing) {
    Inspection inspection =
        new Inspection(weighing.context(), given, weighing.built(), weighing.appraisal());
    return new Judged(weighing.context(), weighing.appraisal(), inspection, inspection.findings());
  }

  private record Weighing(JobContext context, GivenStack.Built built, Appraisal appraisal) {}

  private Weighing weigh(Intent intent, GivenAssembly given) {
    Job job = completion.complete(intent);
    JobContext context = JobContext.of(job, models);
    GivenStack.Built built = stacks.build(job, given);
    Appraiser appraiser = new Appraiser(context);
    Body body = body(built.body());
    Double stickOut = given.stickOutM();
    Assembly assembly =
        stickOut == null
            ? appraiser.appraise(body).assembly()
            : Appraiser.standing(context, body, stickOut);
    Appraisal appraisal = appraiser.appraise(body, assembly.with(given.measured()));
    return new Weighing(context, built, appraisal);
  }

  /** How far a judged assembly may go, in each direction alone. */
  public static Limits limits(Judged judged) {
    return new LimitSolver(judged.context()).solve(judged.appraisal());
  }

  /** The stability chart of a given assembly; no chart where no such limit applies to the cut. */
  public Charted chart(Intent intent, GivenAssembly given, ChartAsked asked) {
    Weighing weighing = weigh(intent, given);
    return new Charted(
        weighing.context(),
        ChartSolver.solve(weighing.context(), weighing.appraisal(), asked),
        new Inspection(weighing.context(), given, weighing.built(), weighing.appraisal())
            .assumptions());
  }

  /**
   * A job with its chart.
   *
   * @param chart null where no such limit applies to the cut
   * @param assumptions what was estimated of the assembly
   */
  public record Charted(
      JobContext context, @Nullable StabilityChart chart, List<Assumption> assumptions) {}

  /** Everything that is said of a judged assembly. */
  public Assessment assess(Intent intent, GivenAssembly given, Judged judged) {
    JobContext context = judged.context();
    Verdict verdict = judged.verdict();
    WouldFit would = new WouldFit(this, advisor, intent, given, judged);
    return new Assessment(
        context.job(),
        context.loads(),
        context.demands(),
        verdict,
        judged.findings(),
        judged.inspection().assumptions(),
        told(context, judged),
        verdict == Verdict.UNFIT ? would.changes() : List.of(),
        verdict == Verdict.UNFIT ? would.hopeless() : List.of());
  }

  private static RankedAssembly told(JobContext context, Judged judged) {
    Appraisal appraisal = judged.appraisal();
    List<StandardPart> chosen =
        judged.inspection().built().accessories().stream().map(GivenStack.Accessory::part).toList();
    Candidate candidate = Candidate.ofGiven(appraisal.assembly().holder());
    Limits limits = new LimitSolver(context).solve(appraisal);
    Weighed weighed = Weighed.of(context, new Economist(context), candidate, appraisal);
    List<Part> parts = Components.of(context, appraisal, chosen);
    return new RankedAssembly(
        "a1",
        1,
        appraisal.assembly(),
        parts,
        appraisal.standing(),
        weighed.scores(),
        context.probability(appraisal),
        appraisal.geometry(),
        context.predicted(appraisal),
        limits,
        context.stableSpeeds(appraisal),
        SetUp.steps(context, appraisal, parts, limits),
        weighed.economics(),
        Reasons.of(appraisal),
        AssemblyCautions.of(context, appraisal));
  }

  /** Every way of holding, in the order of the table. */
  List<String> families() {
    return List.copyOf(data.families().keySet());
  }

  /** References of what may stand in the place of a component and takes the shank. */
  List<String> inPlaceOf(GivenStack.Placed placed, Job job) {
    HolderBody now = placed.body();
    if (now == null) {
      return List.of();
    }
    double shank = job.tool().shankDiameterM();
    if (placed.kind() == GivenStack.Kind.EXTENSION) {
      return catalogue.attachments().extensions().stream().map(Extension::ref).toList();
    }
    return catalogue.byInterface().getOrDefault(now.spindleInterface().id(), List.of()).stream()
        .filter(holder -> holder.takes(shank))
        .map(HolderBody::ref)
        .toList();
  }

  private Body body(HolderBody holder) {
    if (holder.origin() == HolderBody.Origin.REQUEST) {
      return Body.prepare(holder, models);
    }
    // a knob or tube may stop the coolant of a body that otherwise passes it
    String key = holder.throughCoolant() ? holder.ref() : holder.ref() + " dry";
    Body prepared = bodies.get(key);
    return prepared == null
        ? bodies.computeIfAbsent(key, any -> Body.prepare(holder, models))
        : prepared;
  }
}
