package org.gaugeline.advice;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assessment.Limits;
import org.gaugeline.job.Intent;
import org.gaugeline.job.Job;
import org.gaugeline.quantity.UnitSuffix;
import org.gaugeline.reference.OperationKind;

/**
 * Where no assembly meets a job: the single changes of speed, feed or depth with which the one that
 * comes nearest does. Each is a limit of that assembly, and is told only where the job asked anew
 * with it is met.
 */
final class NearestFit {
  /** Metric text shows these digits at least. */
  private static final MathContext AS_SHOWN = new MathContext(3, RoundingMode.FLOOR);

  private final Intent intent;
  private final Job job;
  private final BiPredicate<Intent, HolderBody> meets;

  /**
   * Ready to search.
   *
   * @param meets whether a holder meets an intent, suitable or marginal
   */
  NearestFit(Intent intent, Job job, BiPredicate<Intent, HolderBody> meets) {
    this.intent = intent;
    this.job = job;
    this.meets = meets;
  }

  /**
   * What would do.
   *
   * @param assemblyId the assembly that it would do for; empty where nothing would
   */
  record Found(String assemblyId, List<Recommendation.Change> changes) {
    static final Found NOTHING = new Found("", List.of());
  }

  /**
   * The changes for the first of the losing assemblies that one would do for.
   *
   * @param losing nearest first
   */
  Found among(List<RankedAssembly> losing) {
    for (RankedAssembly assembly : losing) {
      List<Recommendation.Change> changes = changes(assembly);
      if (!changes.isEmpty()) {
        return new Found(assembly.id(), changes);
      }
    }
    return Found.NOTHING;
  }

  private List<Recommendation.Change> changes(RankedAssembly assembly) {
    Limits limits = assembly.limits();
    HolderBody holder = assembly.assembly().holder();
    List<Recommendation.Change> changes = new ArrayList<>(3);
    speed(limits.spindleSpeedRadPerS().value(), holder, changes);
    if (job.operation().kind() != OperationKind.TAPPING) {
      feed(limits.feedPerToothM().value(), holder, changes);
    }
    double depth = limits.axialDepthM().value();
    if (depth < job.operation().axialDepthM()) {
      double now = job.operation().axialDepthM();
      double to = lowered(depth, UnitSuffix.MM);
      add("/operation/axialDepthMm", now, to, with(cut().withAxialDepthM(to)), holder, changes);
    }
    return changes;
  }

  /** The speed in the words in which it was given. */
  private void speed(double limitRadPerS, HolderBody holder, List<Recommendation.Change> changes) {
    double now = job.operation().spindleSpeedRadPerS();
    if (!(limitRadPerS < now)) {
      return;
    }
    if (cut().cuttingSpeedMPerS() != null) {
      double radius = job.tool().diameterM() / 2;
      double to = lowered(limitRadPerS * radius, UnitSuffix.M_PER_MIN);
      Intent asked = with(cut().withCuttingSpeedMPerS(to));
      add("/operation/cuttingSpeedMPerMin", now * radius, to, asked, holder, changes);
    } else {
      double to = lowered(limitRadPerS, UnitSuffix.RPM);
      Intent asked = with(cut().withSpindleSpeedRadPerS(to));
      add("/operation/spindleSpeedRpm", now, to, asked, holder, changes);
    }
  }

  /** The feed in the words in which it was given. */
  private void feed(double limitM, HolderBody holder, List<Recommendation.Change> changes) {
    double now = job.operation().feedPerToothM();
    if (!(limitM < now)) {
      return;
    }
    if (cut().feedPerRevM() != null) {
      int teeth = job.tool().teeth();
      double to = lowered(limitM * teeth, UnitSuffix.MM);
      Intent asked = with(cut().withFeedPerRevM(to));
      add("/operation/feedPerRevMm", now * teeth, to, asked, holder, changes);
    } else {
      double to = lowered(limitM, UnitSuffix.MM);
      Intent asked = with(cut().withFeedPerToothM(to));
      add("/operation/feedPerToothMm", now, to, asked, holder, changes);
    }
  }

  private Intent.Operation cut() {
    return intent.operation();
  }

  private Intent with(Intent.Operation changed) {
    return intent.with(changed);
  }

  private void add(
      String pointer,
      double now,
      double to,
      Intent asked,
      HolderBody holder,
      List<Recommendation.Change> changes) {
    if (to > 0 && meets.test(asked, holder)) {
      changes.add(new Recommendation.Change(pointer, now, to));
    }
  }

  /**
   * Lowered so that text holds too: to what metric text shows, and before that by what inch text
   * may round up. The units of text change no number.
   */
  private static double lowered(double valueSi, UnitSuffix unit) {
    if (!(valueSi > 0) || Double.isInfinite(valueSi)) {
      return 0;
    }
    double kept = unit.fromSi(valueSi) * (1 - inchRounding(unit));
    return unit.toSi(new BigDecimal(kept).round(AS_SHOWN).doubleValue());
  }

  /** Share by which inch text may be above the number: half a step of its last digit. */
  private static double inchRounding(UnitSuffix unit) {
    return switch (unit) {
      case M_PER_MIN -> 0.005; // ft/min in three digits
      case MM -> 0.0005; // inches in four
      default -> 0; // said alike in both
    };
  }
}
