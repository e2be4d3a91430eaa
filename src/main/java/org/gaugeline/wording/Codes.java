package org.gaugeline.wording;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.gaugeline.assessment.Pair;
import org.gaugeline.assessment.Rules;
import org.gaugeline.toollist.ListCode;

/** Every code that the engine speaks in. Each has a template; each template has a code. */
public final class Codes {
  /** Ending of a pair's code in reasons. */
  public static final String MARGIN = "-margin";

  /** Limits of machine and interface that an assembly passes or not. */
  public static final List<String> GATES =
      List.of(
          "changer-mass",
          "changer-length",
          "changer-moment",
          "changer-diameter",
          "neighbour-pockets-empty",
          "spindle-torque",
          "spindle-power",
          "interface-bending",
          "coupling-bending",
          "arbor-face-bending",
          "mouth-expansion",
          "coolant-machine",
          "coolant-holder",
          "not-for-side-load",
          "gives-way",
          "no-length-compensation");

  /** What tilt of the tool axis clears a stack that does not clear upright, or why none is told. */
  private static final List<String> TILTS =
      List.of("tilt-that-clears", "no-tilt-clears", "tilt-not-proposed");

  /** Why a clamping family has no candidate. */
  public static final List<String> ABSENCES =
      List.of(
          "excluded-by-shop",
          "shank-form",
          "other-cutter",
          "needs-shrink-unit",
          "not-in-stock",
          "no-bore-for-shank",
          "no-holder-in-catalogue");

  /** What a person must know before acting. */
  public static final List<String> CAUTIONS =
      List.of(
          "unit-suspicion",
          "thin-chip-extrapolation",
          "shank-rubs-wall",
          "tilted-ball-cuts-at",
          "tolerance-finer-than-process",
          "roughness-finer-than-process",
          "nothing-suitable",
          "heat-unit-pays-back",
          "markings-and-manuals-first",
          "hot-holder",
          "hss-in-shrink",
          "never-tighten-empty",
          "pull-out-possible",
          "face-contact-unused",
          "face-contact-missing",
          "joints-add-up",
          "damper-needs-tuning",
          "tooth-does-not-cut",
          "uneven-tooth-load",
          "grade-not-attainable",
          "can-be-thrown",
          "near-marked-speed",
          "never-clamp-on-flutes",
          "long-overhang",
          "form-tap-brittle",
          "blind-hole-chips",
          "float-takes-runout",
          "float-follows-bore",
          "long-bar",
          "single-point-unbalance",
          "steep-ramp",
          "thread-gauge",
          "disc-on-spacers",
          "disc-runs-out-sideways",
          "internal-thread-assumed",
          "may-chatter");

  /** What a person must know before trusting a stability chart. */
  public static final List<String> CHART_CAUTIONS =
      List.of("method-needs-modes", "period-doubling-not-seen");

  /** Steps of putting an assembly together. */
  public static final List<String> STEPS =
      List.of(
          "lay-out-parts",
          "clean-taper-and-bore",
          "check-retention-knob",
          "check-coolant-tube",
          "couple-head-to-adapter",
          "clamp-extension",
          "fit-sleeve",
          "fit-sealed-collet",
          "fit-form-lock",
          "set-back-stop-screw",
          "mark-shank",
          "set-stop-for-stick-out",
          "heat-nose",
          "keep-to-heating-limit",
          "let-cool-guarded",
          "snap-collet-into-nut",
          "tighten-nut",
          "tighten-screw-on-flat",
          "seat-square",
          "clamp-as-marked",
          "draw-against-stop",
          "seat-on-arbor",
          "tighten-arbor-screw",
          "set-stick-out",
          "check-insertion",
          "check-float",
          "balance-assembly",
          "measure-runout-at-tip",
          "compare-runout",
          "set-edge-by-trial-bore",
          "measure-length-on-machine",
          "preset-gauge-length",
          "check-coolant-flow",
          "aim-coolant",
          "keep-chips-clear",
          "write-tool-label",
          "check-arbor-after-first-part",
          "check-after-first-part");

  /** Why a member that was left out was filled as it was. */
  public static final List<String> ASSUMPTIONS =
      List.of(
          "material-reference-state",
          "material-table",
          "equipment-assumed-present",
          "equipment-assumed-absent",
          "practice-value",
          "default-currency",
          "condition-not-stated",
          "plain-form-of-interface",
          "usual-for-interface",
          "usual-for-machines",
          "tilted-axis",
          "guide-value-of-interface",
          "not-stated",
          "usual-for-operation",
          "usual-for-material",
          "usual-for-tool",
          "depth-of-cut",
          "tool-diameter",
          "tolerance-table",
          "held-by-top-speed",
          "lowered-for-hardness",
          "starting-value",
          "plain-shank",
          "next-standard-shank",
          "standard-shank",
          "neck-plus-standard-shank",
          "standard-tap",
          "coarse-pitch",
          "feed-is-pitch",
          "tap-drill",
          "bore-less-depth",
          "bar-for-the-depth",
          "bore-of-cutter",
          "width-of-cutter",
          "turn-of-ramp",
          "cone-of-tool",
          "usual-for-thread",
          "usual-grip",
          "end-before-it",
          "bore-of-shank",
          "generic-part",
          "sum-of-profile",
          "usual-for-bodies",
          "from-profile",
          "usual-for-such-a-part",
          "shortest-that-clears");

  /** Members of the request whose change has a sentence of its own. */
  static final List<String> CHANGES =
      List.of(
          "/tool/shank/form",
          "/tool/shank/diameterMm",
          "/shop/shrinkUnit",
          "/shop/stockOnly",
          "/shop/excludedFamilies",
          "/assembly/components/ref",
          "/assembly/components/family");

  private static final List<String> LIMITS_ONLY =
      List.of(
          "flute-length",
          "cutter-body-length",
          "feed-range",
          "thread-pitch",
          "assumed-feature-depth",
          "machine-speed",
          "interface-speed",
          "holder-speed",
          "collet-speed",
          "coupling-speed",
          "marked-speed",
          "cutter-speed",
          "bending-frequency");

  private Codes() {}

  /** Codes of reasons: pairs, gates and absences. */
  public static List<String> reasons() {
    List<String> reasons = new ArrayList<>();
    for (Pair pair : Pair.values()) {
      reasons.add(pair.id() + MARGIN);
    }
    reasons.addAll(GATES);
    reasons.addAll(TILTS);
    reasons.addAll(ABSENCES);
    return List.copyOf(reasons);
  }

  /** Codes of findings, in the order in which they are told. */
  public static List<String> findings() {
    return Rules.ALL.stream().flatMap(rule -> rule.codes().stream()).toList();
  }

  /** Codes of what only shows when all lines of a list are seen. */
  public static List<String> listFindings() {
    return Arrays.stream(ListCode.values()).map(ListCode::id).toList();
  }

  /** Findings that no reason words already. */
  static List<String> findingsOnly() {
    List<String> reasons = reasons();
    return findings().stream()
        .filter(code -> !reasons.contains(code) && !reasons.contains(code + MARGIN))
        .toList();
  }

  /** Codes of what stops a limit: pairs, gates, speeds and the ends of a search. */
  public static List<String> limits() {
    List<String> limits = new ArrayList<>();
    for (Pair pair : Pair.values()) {
      limits.add(pair.id());
    }
    limits.addAll(GATES);
    limits.addAll(LIMITS_ONLY);
    return List.copyOf(limits);
  }
}
