package org.gaugeline.assessment;

import java.util.List;

/** All rules, in the order in which findings are told. */
public final class Rules {
  private static final List<Severity> NOTE = List.of(Severity.NOTE);
  private static final List<Severity> ERROR = List.of(Severity.ERROR);
  private static final List<Severity> HARD = List.of(Severity.ERROR, Severity.WARNING);
  private static final List<Severity> SPREAD =
      List.of(Severity.ERROR, Severity.WARNING, Severity.NOTE);

  public static final List<Rule> ALL =
      List.of(
          new InterfaceRule(),
          new ShankFormRule(),
          new BoreRule(),
          new ColletRule(),
          new StackRule(),
          new AccessoryRule(),
          new EquipmentRule(),
          new CollisionRule(),
          pair(Pair.GAP, "/assembly/stickOutMm", "plane-geometry"),
          pair(Pair.TOOL_GAP, "/tool", "plane-geometry"),
          pair(Pair.INSERTION, "/assembly/stickOutMm", "grip-practice", "din-6535"),
          new FluteRule(),
          new StickOutRule(),
          pair(Pair.SLIP, "/assembly", "grip-practice", "grip-memory"),
          pair(Pair.STOP_TORQUE, "/assembly", "din-6535", "screw-strength-recalled"),
          pair(Pair.PULL_OUT, "/assembly", "din-6535", "screw-strength-recalled"),
          pair(Pair.PUSH_IN, "/assembly", "grip-practice", "screw-strength-recalled"),
          new MarkedGripRule(),
          new ShankToleranceRule(),
          new ShankSubstrateRule(),
          new NutTorqueRule(),
          new GripLossRule(),
          pair(Pair.RUNOUT, "/assembly", "accuracy-practice", "runout-life-article"),
          pair(Pair.SIZE_ERROR, "/assembly", "timoshenko-beam", "joint-fit"),
          pair(Pair.ROUGHNESS, "/feature/raUm", "cusp-geometry"),
          new ToothRule(),
          pair(Pair.STABLE_DEPTH, "/operation/axialDepthMm", "timoshenko-beam", "dynamics-memory"),
          rated("machine-speed", "given", "changer-practice"),
          usual("interface-speed", "interface-practice", "interface-memory"),
          usual("holder-speed", "grip-memory", "grip-practice"),
          rated("marked-speed", "given"),
          usual("collet-speed", "er-memory"),
          usual("coupling-speed", "interface-practice", "interface-memory"),
          rated("cutter-speed", "given"),
          rated("bending-frequency", "beam-theory", "dynamics-memory"),
          pair(Pair.UNBALANCE_FORCE, "/operation", "iso-16084-scope", "balance-practice"),
          new BalanceRule(),
          gate("interface-bending", "/assembly", SPREAD, "interface-practice"),
          gate("coupling-bending", "/assembly/components", SPREAD, "interface-practice"),
          gate(ArborFace.CODE, "/assembly", SPREAD, "interface-practice", "arbor-memory"),
          gate("mouth-expansion", "/operation", NOTE, "rotating-disc-theory"),
          gate("spindle-torque", "/machine", HARD, "given", "milling-integration"),
          gate("spindle-power", "/machine/powerKw", HARD, "given", "milling-integration"),
          gate("changer-mass", "/machine/toolChanger", ERROR, "changer-practice"),
          gate("changer-length", "/machine/toolChanger", ERROR, "changer-practice"),
          gate("changer-moment", "/machine/toolChanger", ERROR, "changer-practice"),
          gate("changer-diameter", "/machine/toolChanger", ERROR, "changer-practice"),
          gate("neighbour-pockets-empty", "/machine/toolChanger", NOTE, "changer-practice"),
          gate("coolant-machine", "/machine/throughCoolant", ERROR, "given"),
          new CoolantRule(),
          gate("not-for-side-load", "/assembly", ERROR, "grip-practice"),
          gate("gives-way", "/assembly", ERROR, "grip-practice"),
          gate("no-length-compensation", "/assembly", ERROR, "tapping-practice"),
          new MeasuredRule(),
          new MisplacedRule());

  private Rules() {}

  private static Rule pair(Pair pair, String pointer, String... sources) {
    return new PairRule(pair, pointer, List.of(sources));
  }

  /** A speed that is marked, given or computed: it has no spread. */
  private static Rule rated(String code, String... sources) {
    return new SpeedRule(code, false, List.of(sources));
  }

  /** A speed that is usual for such a part. */
  private static Rule usual(String code, String... sources) {
    return new SpeedRule(code, true, List.of(sources));
  }

  private static Rule gate(
      String code, String pointer, List<Severity> severities, String... sources) {
    return new GateRule(code, pointer, severities, List.of(sources));
  }
}
