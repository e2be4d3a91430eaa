package org.gaugeline.advice;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.DoubleFunction;
import org.gaugeline.assembly.GivenAssembly;
import org.gaugeline.assembly.GivenStack;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.job.Intent;
import org.gaugeline.job.IntentFaultException;
import org.gaugeline.job.Job;
import org.gaugeline.job.OperationCompletion;
import org.gaugeline.quantity.SixDigits;
import org.gaugeline.quantity.UnitSuffix;

/**
 * The smallest single change of each member after which no error is left, found by asking again:
 * outward from the present value in both directions until an answer has none, then closing in on
 * where the error ends. A change is rounded away from the present value, so that it holds as sent.
 */
final class WouldFit {
  private static final int STEPS = 24;
  private static final double CLOSE = 1e-6;

  private final Assessor assessor;
  private final Advisor advisor;
  private final Intent intent;
  private final GivenAssembly given;
  private final Job job;
  private final double stickOutM;
  private final List<GivenStack.Placed> placed;
  private final List<Recommendation.Change> changes = new ArrayList<>();
  private final List<String> hopeless = new ArrayList<>();
  private boolean solved;

  WouldFit(
      Assessor assessor,
      Advisor advisor,
      Intent intent,
      GivenAssembly given,
      Assessor.Judged judged) {
    this.assessor = assessor;
    this.advisor = advisor;
    this.intent = intent;
    this.given = given;
    this.job = judged.context().job();
    this.stickOutM = judged.appraisal().assembly().stickOutM();
    this.placed = judged.inspection().built().placed();
  }

  List<Recommendation.Change> changes() {
    solve();
    return List.copyOf(changes);
  }

  /** Members of which no value in the range helps. */
  List<String> hopeless() {
    solve();
    return List.copyOf(hopeless);
  }

  /** A member that may be changed. */
  private record Member(String pointer, UnitSuffix unit, double now, double least, double most) {}

  private void solve() {
    if (solved) {
      return;
    }
    solved = true;
    Job.Tool tool = job.tool();
    Job.Operation cut = job.operation();
    boolean hole = OperationCompletion.isHole(cut.kind());
    if (!tool.bored()) { // a cutter on an arbor stands out by its own body
      number(
          new Member(
              "/assembly/stickOutMm",
              UnitSuffix.MM,
              stickOutM,
              Math.min(stickOutM, tool.fluteLengthM()),
              Math.max(stickOutM, tool.overallLengthM())),
          out -> fits(intent, given.standingOut(out)));
    }
    if (!hole) {
      number(
          new Member(
              "/operation/axialDepthMm",
              UnitSuffix.MM,
              cut.axialDepthM(),
              cut.axialDepthM() / 100,
              Math.max(cut.axialDepthM(), tool.fluteLengthM())),
          depth -> fits(intent.with(intent.operation().withAxialDepthM(depth)), given));
      number(
          new Member(
              "/operation/radialDepthMm",
              UnitSuffix.MM,
              cut.radialDepthM(),
              cut.radialDepthM() / 100,
              Math.max(cut.radialDepthM(), tool.diameterM())),
          depth -> fits(intent.with(intent.operation().withRadialDepthM(depth)), given));
    }
    feed(tool, cut);
    speed(tool, cut);
    family();
  }

  /** The feed in the words in which it was given: both at once would contradict each other. */
  private void feed(Job.Tool tool, Job.Operation cut) {
    if (intent.operation().feedPerRevM() != null) {
      feed(
          "/operation/feedPerRevMm",
          cut.feedPerToothM() * tool.teeth(),
          f -> fits(intent.with(intent.operation().withFeedPerRevM(f)), given));
    } else {
      feed(
          "/operation/feedPerToothMm",
          cut.feedPerToothM(),
          f -> fits(intent.with(intent.operation().withFeedPerToothM(f)), given));
    }
  }

  private void feed(String pointer, double nowM, DoubleFunction<Boolean> fits) {
    number(new Member(pointer, UnitSuffix.MM, nowM, nowM / 50, nowM * 10), fits);
  }

  /** The speed in the words in which it was given. */
  private void speed(Job.Tool tool, Job.Operation cut) {
    double top = Math.max(cut.spindleSpeedRadPerS(), job.machine().maxSpindleSpeedRadPerS());
    if (intent.operation().cuttingSpeedMPerS() != null) {
      double radius = tool.diameterM() / 2;
      number(
          new Member(
              "/operation/cuttingSpeedMPerMin",
              UnitSuffix.M_PER_MIN,
              cut.spindleSpeedRadPerS() * radius,
              cut.spindleSpeedRadPerS() * radius / 50,
              top * radius),
          v -> fits(intent.with(intent.operation().withCuttingSpeedMPerS(v)), given));
    } else {
      number(
          new Member(
              "/operation/spindleSpeedRpm",
              UnitSuffix.RPM,
              cut.spindleSpeedRadPerS(),
              cut.spindleSpeedRadPerS() / 50,
              top),
          omega -> fits(intent.with(intent.operation().withSpindleSpeedRadPerS(omega)), given));
    }
  }

  private boolean fits(Intent changed, GivenAssembly assembly) {
    try {
      return assessor.judgeFirm(changed, assembly).verdict() != Verdict.UNFIT;
    } catch (IntentFaultException | IllegalArgumentException e) {
      return false; // what cannot even be computed is no advice
    }
  }

  private void number(Member member, DoubleFunction<Boolean> fits) {
    double lower = nearest(member, member.least(), fits);
    double upper = nearest(member, member.most(), fits);
    if (Double.isNaN(lower) && Double.isNaN(upper)) {
      hopeless.add(member.pointer());
      return;
    }
    boolean down =
        Double.isNaN(upper)
            || (!Double.isNaN(lower) && member.now() / lower <= upper / member.now());
    changes.add(new Recommendation.Change(member.pointer(), member.now(), down ? lower : upper));
  }

  /** The value nearest to the present one towards an end at which no error is left; NaN if none. */
  private static double nearest(Member member, double end, DoubleFunction<Boolean> fits) {
    if (!(end > 0) || end == member.now()) {
      return Double.NaN;
    }
    double bad = member.now();
    for (int step = 1; step <= STEPS; step++) {
      double value = member.now() * Math.pow(end / member.now(), (double) step / STEPS);
      if (fits.apply(value)) {
        return closer(member, bad, value, fits);
      }
      bad = value;
    }
    return Double.NaN;
  }

  private static double closer(
      Member member, double from, double to, DoubleFunction<Boolean> fits) {
    double bad = from;
    double good = to;
    while (Math.abs(good / bad - 1) > CLOSE) {
      double middle = Math.sqrt(good * bad);
      if (fits.apply(middle)) {
        good = middle;
      } else {
        bad = middle;
      }
    }
    double rounded = asSent(good, good > member.now(), member.unit());
    return fits.apply(rounded) ? rounded : asSent(to, to > member.now(), member.unit());
  }

  private static double asSent(double value, boolean up, UnitSuffix unit) {
    double wire = unit.fromSi(value);
    double rounded = up ? -SixDigits.roundDown(-wire) : SixDigits.roundDown(wire);
    return unit.toSi(rounded);
  }

  /**
   * Another way to hold the tool, said in the words of the component that holds it now: those that
   * suit the job best are tried first, then every other one that goes in its place.
   */
  private void family() {
    GivenStack.Placed holding = holding();
    int index = indexOf(holding);
    GivenAssembly.Component now = given.components().get(index);
    boolean byRef = now.ref() != null;
    HolderBody body = Objects.requireNonNull(holding.body(), "what grips has a body");
    String from = byRef ? now.ref() : body.family().id();
    String pointer = now.pointer() + (byRef ? "/ref" : "/family");
    Set<String> others = new LinkedHashSet<>();
    for (HolderBody holder : advisor.best(intent)) {
      if (holder.seams().isEmpty()) {
        others.add(byRef ? holder.ref() : holder.family().id());
      }
    }
    others.addAll(byRef ? assessor.inPlaceOf(holding, job) : assessor.families());
    for (String to : others) {
      if (!to.equals(from) && fits(intent, given.with(index, changed(now, to, byRef)))) {
        changes.add(new Recommendation.Change(pointer, from, to));
        return;
      }
    }
    hopeless.add(pointer);
  }

  /** The foremost component that grips by itself; a sleeve only passes on. */
  private GivenStack.Placed holding() {
    GivenStack.Placed found = placed.get(0);
    for (GivenStack.Placed one : placed) {
      boolean grips =
          one.kind() == GivenStack.Kind.HOLDER || one.kind() == GivenStack.Kind.EXTENSION;
      found = grips ? one : found;
    }
    return found;
  }

  private int indexOf(GivenStack.Placed one) {
    for (int i = 0; i < given.components().size(); i++) {
      if (given.components().get(i).pointer().equals(one.pointer())) {
        return i;
      }
    }
    throw new IllegalStateException("no component stands at " + one.pointer());
  }

  private static GivenAssembly.Component changed(
      GivenAssembly.Component now, String to, boolean byRef) {
    return byRef
        ? new GivenAssembly.Component(now.pointer(), now.role(), to, now.details())
        : new GivenAssembly.Component(
            now.pointer(), now.role(), null, now.details().withFamily(to));
  }
}
