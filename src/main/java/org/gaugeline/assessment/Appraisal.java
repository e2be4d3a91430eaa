package org.gaugeline.assessment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.gaugeline.assembly.Assembly;
import org.jspecify.annotations.Nullable;

/**
 * One assembly weighed against one job: its margins, its gates, its standing. Everything else that
 * is said of an assembly (limits, predictions, words) derives from the same numbers later, for the
 * few that are shown.
 */
public final class Appraisal {
  private static final Criterion[] CRITERIA = Criterion.values();

  private final Held held;
  private final Geometry geometry;
  private final List<Margin> margins;
  private final List<Gate> gates;
  private final SpeedLimits speedLimits;
  private final Standing standing;
  private final double[] scores;

  Appraisal(
      Held held,
      Geometry geometry,
      List<Margin> margins,
      List<Gate> gates,
      SpeedLimits speedLimits) {
    this.held = held;
    this.geometry = geometry;
    this.margins = margins;
    this.gates = gates;
    this.speedLimits = speedLimits;
    this.standing = standing(margins, gates);
    this.scores = scores(margins);
  }

  /** The same with one pair more. */
  Appraisal with(Margin margin) {
    List<Margin> more = new ArrayList<>(margins);
    more.add(margin);
    return new Appraisal(held, geometry, more, gates, speedLimits);
  }

  public Assembly assembly() {
    return held.assembly();
  }

  Body body() {
    return held.body();
  }

  Held held() {
    return held;
  }

  public Geometry geometry() {
    return geometry;
  }

  public List<Margin> margins() {
    return margins;
  }

  List<Gate> gates() {
    return gates;
  }

  SpeedLimits speedLimits() {
    return speedLimits;
  }

  public Standing standing() {
    return standing;
  }

  /** The margin of a pair; null where the pair does not apply. */
  public @Nullable Margin margin(Pair pair) {
    for (Margin margin : margins) {
      if (margin.pair() == pair) {
        return margin;
      }
    }
    return null;
  }

  /** The least score of a criterion's pairs; 100 where none applies. */
  public double score(Criterion criterion) {
    return scores[criterion.ordinal()];
  }

  private static double[] scores(List<Margin> margins) {
    double[] least = new double[CRITERIA.length];
    Arrays.fill(least, 100);
    for (Margin margin : margins) {
      int at = margin.pair().criterion().ordinal();
      least[at] = Math.min(least[at], margin.score());
    }
    return least;
  }

  /** Probability that all pairs of a criterion are met, taken as independent. */
  double probability(Criterion criterion) {
    double all = 1;
    for (Margin margin : margins) {
      if (margin.pair().criterion() == criterion) {
        all *= margin.probability();
      }
    }
    return all;
  }

  /** Capacity over demand of the tightest margin at the median: how near a losing one comes. */
  public double leastMedianRatio() {
    double least = Double.POSITIVE_INFINITY;
    for (Margin margin : margins) {
      least = margin.isTentative() ? least : Math.min(least, margin.medianRatio());
    }
    return least;
  }

  /** What the assembly loses by: the failed gate or the criterion with the least score. */
  public Criterion weakest() {
    for (Gate gate : gates) {
      if (gate.severity() == Severity.ERROR) {
        return Criterion.GATE;
      }
    }
    Criterion weakest = Criterion.ACCURACY;
    for (Criterion criterion : CRITERIA) {
      if (criterion != Criterion.GATE && score(criterion) < score(weakest)) {
        weakest = criterion;
      }
    }
    return weakest;
  }

  private static Standing standing(List<Margin> margins, List<Gate> gates) {
    Standing standing = Standing.SUITABLE;
    for (Gate gate : gates) {
      if (gate.severity() == Severity.ERROR) {
        return Standing.UNSUITABLE;
      }
      if (gate.severity() == Severity.WARNING) {
        standing = Standing.MARGINAL;
      }
    }
    for (Margin margin : margins) {
      Severity severity = margin.severity();
      if (severity == Severity.ERROR) {
        return Standing.UNSUITABLE;
      }
      if (severity != null) {
        standing = Standing.MARGINAL;
      }
    }
    return standing;
  }

  /** Gates worth naming, most serious first kept in table order. */
  List<Gate> gatesOf(Severity severity) {
    List<Gate> of = new ArrayList<>();
    for (Gate gate : gates) {
      if (gate.severity() == severity) {
        of.add(gate);
      }
    }
    return of;
  }
}
