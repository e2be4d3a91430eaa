package org.gaugeline.assessment;

import java.util.List;

/** All rules, in the order in which findings are told. */
public final class Rules {
  public static final List<Rule> ALL =
      List.of(
          new InterfaceRule(),
          new ShankFormRule(),
          new BoreRule(),
          new ColletRule(),
          new StackRule(),
          new EquipmentRule(),
          new CollisionRule(),
          new PairRule(Pair.GAP, "/assembly/stickOutMm"),
          new PairRule(Pair.INSERTION, "/assembly/stickOutMm"),
          new FluteRule(),
          new StickOutRule(),
          new PairRule(Pair.SLIP, "/assembly"),
          new PairRule(Pair.STOP_TORQUE, "/assembly"),
          new PairRule(Pair.PULL_OUT, "/assembly"),
          new PairRule(Pair.PUSH_IN, "/assembly"),
          new MarkedTorqueRule(),
          new ShankToleranceRule(),
          new ShankSubstrateRule(),
          new NutTorqueRule(),
          new GripLossRule(),
          new PairRule(Pair.RUNOUT, "/assembly"),
          new PairRule(Pair.SIZE_ERROR, "/assembly"),
          new PairRule(Pair.ROUGHNESS, "/feature/raUm"),
          new ToothRule(),
          new PairRule(Pair.STABLE_DEPTH, "/operation/axialDepthMm"),
          new SpeedRule("machine-speed"),
          new SpeedRule("interface-speed"),
          new SpeedRule("holder-speed"),
          new SpeedRule("marked-speed"),
          new SpeedRule("collet-speed"),
          new SpeedRule("coupling-speed"),
          new SpeedRule("cutter-speed"),
          new SpeedRule("bending-frequency"),
          new PairRule(Pair.UNBALANCE_FORCE, "/operation"),
          new BalanceRule(),
          new GateRule("interface-bending", "/assembly"),
          new GateRule("coupling-bending", "/assembly/components"),
          new GateRule("mouth-expansion", "/operation"),
          new GateRule("spindle-torque", "/machine"),
          new GateRule("spindle-power", "/machine/powerKw"),
          new GateRule("changer-mass", "/machine/toolChanger"),
          new GateRule("changer-length", "/machine/toolChanger"),
          new GateRule("changer-moment", "/machine/toolChanger"),
          new GateRule("changer-diameter", "/machine/toolChanger"),
          new GateRule("neighbour-pockets-empty", "/machine/toolChanger"),
          new GateRule("coolant-machine", "/machine/throughCoolant"),
          new GateRule("coolant-holder", "/assembly/components"),
          new GateRule("not-for-side-load", "/assembly"),
          new GateRule("gives-way", "/assembly"),
          new GateRule("no-length-compensation", "/assembly"),
          new MeasuredRule(),
          new MisplacedRule());

  private Rules() {}
}
