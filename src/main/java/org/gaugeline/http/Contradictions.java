package org.gaugeline.http;

import static org.gaugeline.http.IntentReader.orElse;
import static org.gaugeline.http.IntentReader.orEmpty;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.gaugeline.http.wire.WireIntent;
import org.jspecify.annotations.Nullable;

/**
 * Members that are each in range and cannot be true together. Absent members contradict nothing.
 */
final class Contradictions {
  private static final double LARGEST_GRADED_MM = 500;
  private static final double LEAST_REAMED = 0.5;
  private static final int FIVE_AXES = 5;
  private static final double BALL_TOLERANCE = 0.01;
  private static final Set<String> HOLLOW = Set.of("drilling", "reaming", "boring", "tapping");
  private static final Set<String> HOLE_WIDENING =
      Set.of("drilling", "reaming", "boring", "tapping", "thread-milling");

  private final List<Fault> faults = new ArrayList<>();

  private Contradictions() {}

  static List<Fault> find(WireIntent wire) {
    Contradictions found = new Contradictions();
    WireIntent.Operation operation = orElse(wire.operation(), WireIntent.Operation.NONE);
    WireIntent.Tool tool = orElse(wire.tool(), WireIntent.Tool.NONE);
    WireIntent.Shop shop = orElse(wire.shop(), WireIntent.Shop.NONE);
    found.cut(operation);
    found.cutAndTool(operation, tool);
    HoleContradictions.find(operation, tool, found.faults);
    found.tool(tool);
    BoreContradictions.find(operation, tool, found.faults);
    WireIntent.Feature feature = orElse(wire.feature(), WireIntent.Feature.NONE);
    found.feature(feature, tool);
    if (!"face-milling".equals(operation.kind())) {
      found.pocket(feature, tool);
    }
    found.tilt(feature, orElse(wire.machine(), WireIntent.Machine.NONE));
    found.machine(orElse(wire.machine(), WireIntent.Machine.NONE));
    found.weights(orElse(wire.preferences(), WireIntent.Preferences.NONE).weights());
    StockContradictions.find(orEmpty(shop.stock()), found.faults);
    return found.faults;
  }

  private void cut(WireIntent.Operation o) {
    both(
        "/operation/cuttingSpeedMPerMin",
        o.cuttingSpeedMPerMin(),
        "/operation/spindleSpeedRpm",
        o.spindleSpeedRpm());
    both(
        "/operation/feedPerToothMm",
        o.feedPerToothMm(),
        "/operation/feedPerRevMm",
        o.feedPerRevMm());
  }

  private void cutAndTool(WireIntent.Operation o, WireIntent.Tool t) {
    boolean hole = HOLE_WIDENING.contains(orElse(o.kind(), ""));
    if (!hole) {
      above(
          "/operation/radialDepthMm",
          o.radialDepthMm(),
          "/tool/diameterMm",
          t.diameterMm(),
          "A tool cannot engage wider than its diameter. Maybe both passes of a wider cut were added.");
    }
    Double hollow = o.preDrilledDiameterMm();
    Double diameter = t.diameterMm();
    if (HOLLOW.contains(orElse(o.kind(), ""))) {
      if (hollow != null && diameter != null && hollow >= diameter) {
        add(
            "/operation/preDrilledDiameterMm",
            hollow,
            "/tool/diameterMm",
            diameter,
            "is not smaller than",
            "Nothing would be left to cut. Maybe the finished diameter was put here.");
      }
      if ("reaming".equals(o.kind())
          && hollow != null
          && diameter != null
          && hollow < LEAST_REAMED * diameter) {
        add(
            "/operation/preDrilledDiameterMm",
            hollow,
            "/tool/diameterMm",
            diameter,
            "is less than half of",
            "A reamer only widens a hole that is nearly there. Maybe the allowance was put here.");
      }
    }
  }

  private void tool(WireIntent.Tool t) {
    above(
        "/tool/fluteLengthMm",
        t.fluteLengthMm(),
        "/tool/overallLengthMm",
        t.overallLengthMm(),
        "The flutes cannot be longer than the tool. Maybe the two were swapped.");
    above(
        "/tool/neckLengthMm",
        t.neckLengthMm(),
        "/tool/overallLengthMm",
        t.overallLengthMm(),
        "The neck, from the tip, cannot end beyond the tool. Maybe the two were swapped.");
    above(
        "/tool/fluteLengthMm",
        t.fluteLengthMm(),
        "/tool/neckLengthMm",
        t.neckLengthMm(),
        "The neck is measured from the tip and ends behind the flutes. Maybe only its free part was"
            + " given.");
    Double radius = t.cornerRadiusMm();
    Double diameter = t.diameterMm();
    if (radius == null || diameter == null) {
      return;
    }
    boolean ball = "ball-end-mill".equals(t.kind());
    boolean tooLarge = radius > 0.5 * diameter * (1 + (ball ? BALL_TOLERANCE : 1e-9));
    boolean tooSmall = ball && radius < 0.5 * diameter * (1 - BALL_TOLERANCE);
    if (tooLarge || tooSmall) {
      add(
          "/tool/cornerRadiusMm",
          radius,
          "/tool/diameterMm",
          diameter,
          ball ? "is not half of" : "is more than half of",
          ball
              ? "A ball end has half the diameter as its radius. Maybe it is a bull nose."
              : "Maybe the diameter of the corner was given.");
    }
  }

  private void feature(WireIntent.Feature f, WireIntent.Tool t) {
    String grade = f.toleranceGrade();
    Double nominal = f.nominalSizeMm() == null ? t.diameterMm() : f.nominalSizeMm();
    if (grade != null
        && f.toleranceBandUm() == null
        && nominal != null
        && nominal > LARGEST_GRADED_MM) {
      addFault(
          "/feature/toleranceGrade",
          grade,
          "/feature/nominalSizeMm",
          nominal,
          "toleranceGrade ("
              + grade
              + ") is known up to 500 mm, nominalSizeMm is "
              + SchemaFaults.plain(nominal)
              + " mm. Give toleranceBandUm instead.");
    }
  }

  private void pocket(WireIntent.Feature f, WireIntent.Tool t) {
    above(
        "/tool/diameterMm",
        t.diameterMm(),
        "/feature/pocketWidthMm",
        f.pocketWidthMm(),
        "The tool does not enter a pocket that is narrower than itself. Maybe the width was halved.");
  }

  private void tilt(WireIntent.Feature f, WireIntent.Machine m) {
    Double tilt = f.tiltDeg();
    Integer axes = m.axes();
    if (tilt != null && tilt != 0 && axes != null && axes < FIVE_AXES) {
      add(
          "/feature/tiltDeg",
          tilt,
          "/machine/axes",
          axes,
          "asks more than",
          "Tilting the tool axis takes five axes. Maybe the slope of the wall was meant: that is"
              + " wallDraftDeg.");
    }
  }

  private void machine(WireIntent.Machine m) {
    List<WireIntent.TorqueCurvePoint> curve = orEmpty(m.torqueCurve());
    for (int i = 1; i < curve.size(); i++) {
      Double earlier = curve.get(i - 1).spindleSpeedRpm();
      Double later = curve.get(i).spindleSpeedRpm();
      if (earlier != null && later != null && later <= earlier) {
        add(
            "/machine/torqueCurve/" + i + "/spindleSpeedRpm",
            later,
            "/machine/torqueCurve/" + (i - 1) + "/spindleSpeedRpm",
            earlier,
            "is not above",
            "The points must stand by rising speed.");
      }
    }
    WireIntent.ToolChanger changer = orElse(m.toolChanger(), WireIntent.ToolChanger.NONE);
    above(
        "/machine/toolChanger/maxDiameterMm",
        changer.maxDiameterMm(),
        "/machine/toolChanger/maxDiameterNeighboursEmptyMm",
        changer.maxDiameterNeighboursEmptyMm(),
        "With occupied neighbours there cannot be more room. Maybe the two were swapped.");
  }

  private void weights(WireIntent.@Nullable Weights w) {
    if (w != null
        && isZero(w.accuracy())
        && isZero(w.grip())
        && isZero(w.reach())
        && isZero(w.speed())) {
      faults.add(
          new Fault(
              "/preferences/weights",
              "contradiction",
              "All four weights are 0, so that nothing could be ranked. Give at least one.",
              Map.of()));
    }
  }

  private static boolean isZero(@Nullable Double weight) {
    return weight != null && weight == 0;
  }

  private void both(
      String pointer, @Nullable Double value, String otherPointer, @Nullable Double other) {
    if (value != null && other != null) {
      add(pointer, value, otherPointer, other, "stands beside", "Give one of the two.");
    }
  }

  private void above(
      String pointer,
      @Nullable Double value,
      String otherPointer,
      @Nullable Double other,
      String cause) {
    if (value != null && other != null && value > other) {
      add(pointer, value, otherPointer, other, "is more than", cause);
    }
  }

  private void add(
      String pointer,
      double value,
      String otherPointer,
      double other,
      String relation,
      String cause) {
    add(faults, pointer, value, otherPointer, other, relation, cause);
  }

  private void addFault(
      String pointer, Object value, String otherPointer, Object other, String detail) {
    addFault(faults, pointer, value, otherPointer, other, detail);
  }

  /** One fault at each of the two members, so that both can be marked. */
  static void add(
      List<Fault> faults,
      String pointer,
      double value,
      String otherPointer,
      double other,
      String relation,
      String cause) {
    String detail =
        SchemaFaults.name(pointer)
            + " ("
            + SchemaFaults.plain(value)
            + ") "
            + relation
            + " "
            + SchemaFaults.name(otherPointer)
            + " ("
            + SchemaFaults.plain(other)
            + "). "
            + cause;
    addFault(faults, pointer, value, otherPointer, other, detail);
  }

  static void addFault(
      List<Fault> faults,
      String pointer,
      Object value,
      String otherPointer,
      Object other,
      String detail) {
    faults.add(fault(pointer, value, otherPointer, other, detail));
    faults.add(fault(otherPointer, other, pointer, value, detail));
  }

  static Fault fault(
      String pointer, Object value, String otherPointer, Object other, String detail) {
    Map<String, Object> parameters = new LinkedHashMap<>();
    parameters.put("actual", value);
    parameters.put("otherPointer", otherPointer);
    parameters.put("other", other);
    return new Fault(pointer, "contradiction", detail, parameters);
  }
}
