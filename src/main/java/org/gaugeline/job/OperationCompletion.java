package org.gaugeline.job;

import org.gaugeline.reference.Coolant;
import org.gaugeline.reference.IsoGroup;
import org.gaugeline.reference.Material;
import org.gaugeline.reference.MillingDirection;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ProcessCapability;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.Stage;
import org.gaugeline.reference.StartingValue;
import org.gaugeline.reference.StartingValue.ToolClass;
import org.gaugeline.reference.Substrate;
import org.gaugeline.reference.ToolKind;

/** Completes the cut and the feature from starting values and practice. */
public final class OperationCompletion {
  private static final String START = "starting-value";

  private final ReferenceData data;
  private final HoleCompletion holes;

  OperationCompletion(ReferenceData data) {
    this.data = data;
    this.holes = new HoleCompletion(data);
  }

  Job.Operation operation(
      Intent intent,
      Job.Workpiece workpiece,
      Job.Tool tool,
      Job.Machine machine,
      Assumptions assumptions) {
    Intent.Operation asked = intent.operation();
    OperationKind kind = asked.kind();
    Stage stage =
        assumptions.given(
            asked.stage(),
            "/operation/stage",
            usualStage(intent, data),
            "usual-for-operation",
            "cutting-practice");
    double ramp =
        kind == OperationKind.RAMPING
            ? assumptions.given(
                asked.rampAngleRad(),
                "/operation/rampAngleDeg",
                data.practice("defaultRampAngleRad"),
                "usual-for-operation",
                data.practiceRow("defaultRampAngleRad").sourceKey())
            : 0;
    double axial = isHole(kind) ? 0 : axialM(intent, stage, tool, ramp, assumptions);
    double radial = isHole(kind) ? 0 : radialM(asked, stage, tool, axial, assumptions);
    StartingValue start = start(workpiece, tool);
    double speed = spindleSpeed(asked, workpiece, tool, machine, start, assumptions);
    return new Job.Operation(
        kind,
        stage,
        axial,
        radial,
        speed,
        speed * tool.diameterM() / 2,
        feedPerTooth(asked, kind, tool, radial, start, assumptions),
        holes.preDrilled(asked, stage, tool, assumptions),
        assumptions.given(
            asked.coolant(),
            "/operation/coolant",
            tool.throughCoolant() && machine.throughCoolant()
                ? Coolant.THROUGH_TOOL
                : workpiece.isoGroup() == IsoGroup.K || workpiece.isoGroup() == IsoGroup.H
                    ? Coolant.AIR
                    : Coolant.FLOOD,
            "usual-for-material",
            "cutting-practice"),
        asked.direction() == null ? MillingDirection.DOWN : asked.direction(),
        HoleCompletion.tapping(asked, assumptions),
        HoleCompletion.holeEnd(asked, assumptions),
        assumptions.given(
            asked.minutesPerPart(),
            "/operation/minutesPerPart",
            data.practice("defaultMinutesPerPart"),
            "practice-value",
            data.practiceRow("defaultMinutesPerPart").sourceKey()),
        assumptions.given(
            asked.partsPerYear(),
            "/operation/partsPerYear",
            data.practice("defaultPartsPerYear"),
            "practice-value",
            data.practiceRow("defaultPartsPerYear").sourceKey()),
        ramp);
  }

  /** A ramp that circles goes down by π·(hole − cutter)·tan(angle) a turn. */
  private double axialM(
      Intent intent, Stage stage, Job.Tool tool, double rampRad, Assumptions assumptions) {
    Intent.Operation asked = intent.operation();
    OperationKind kind = asked.kind();
    double flute = tool.fluteLengthM();
    double usual = Math.min(tool.diameterM() * depthRatio("axial", kind, stage), flute);
    String reason = "usual-for-operation";
    Double hole = intent.feature().nominalSizeM();
    Double width = asked.radialDepthM();
    if (tool.kind() == ToolKind.DISC_CUTTER) {
      usual = flute;
      reason = "width-of-cutter";
    } else if (kind == OperationKind.RAMPING && hole != null && hole > tool.diameterM()) {
      usual = Math.min(flute, Math.PI * (hole - tool.diameterM()) * Math.tan(rampRad));
      reason = "turn-of-ramp";
    } else if (kind == OperationKind.CHAMFERING && width != null) {
      usual = width / Math.tan(tool.pointAngleRad() / 2);
      reason = "cone-of-tool";
    }
    return assumptions.given(
        asked.axialDepthM(), "/operation/axialDepthMm", usual, reason, "cutting-practice");
  }

  private double radialM(
      Intent.Operation asked, Stage stage, Job.Tool tool, double axialM, Assumptions assumptions) {
    OperationKind kind = asked.kind();
    double usual = tool.diameterM() * depthRatio("radial", kind, stage);
    String reason = "usual-for-operation";
    if (kind == OperationKind.CHAMFERING) {
      usual = axialM * Math.tan(tool.pointAngleRad() / 2);
      reason = "cone-of-tool";
    } else if (kind == OperationKind.THREAD_MILLING) {
      usual = ThreadCompletion.depthM(tool.pitchM());
      reason = "usual-for-thread";
    } else if (tool.kind() == ToolKind.DISC_CUTTER) {
      usual = tool.diameterM() * data.practice("discRadialDepthPerDiameter");
      reason = "usual-for-tool";
    }
    return assumptions.given(
        asked.radialDepthM(), "/operation/radialDepthMm", usual, reason, "cutting-practice");
  }

  Job.Feature feature(
      Intent intent, Job.Operation operation, Job.Tool tool, Assumptions assumptions) {
    Intent.Feature asked = intent.feature();
    boolean hole = isHole(operation.kind());
    double depth =
        assumptions.given(
            asked.depthM(),
            "/feature/depthMm",
            operation.kind() == OperationKind.BORING
                ? data.practice("boredDepthPerDiameter") * tool.diameterM()
                : hole
                    ? Math.min(
                        data.practice("holeDepthPerDiameter") * tool.diameterM(),
                        tool.fluteLengthM())
                    : operation.axialDepthM(),
            hole ? "usual-for-operation" : "depth-of-cut",
            "accuracy-practice");
    String clearance = "wallClearance" + pascal(operation.stage().id()) + "M";
    boolean thread = operation.kind() == OperationKind.THREAD_MILLING;
    boolean ownWidth = operation.kind() == OperationKind.SLOTTING;
    boolean disc = tool.kind() == ToolKind.DISC_CUTTER;
    double nominal =
        assumptions.given(
            asked.nominalSizeM(),
            "/feature/nominalSizeMm",
            thread
                ? ThreadCompletion.nominalM(tool, data)
                : ownWidth && disc
                    ? operation.axialDepthM()
                    : hole || ownWidth ? tool.diameterM() : data.practice("defaultNominalSizeM"),
            thread ? "usual-for-thread" : hole ? "tool-diameter" : "practice-value",
            "accuracy-practice");
    return new Job.Feature(
        depth,
        asked.wallDraftRad() == null ? 0 : asked.wallDraftRad(),
        assumptions.given(
            asked.wallClearanceM(),
            "/feature/wallClearanceMm",
            data.practice(clearance),
            "practice-value",
            data.practiceRow(clearance).sourceKey()),
        nominal,
        toleranceBand(asked, operation, nominal, assumptions),
        asked.raM() == null ? Double.NaN : asked.raM(),
        asked.tiltRad() == null ? 0 : asked.tiltRad(),
        asked.pocketWidthM() == null ? Double.NaN : asked.pocketWidthM(),
        asked.obstructions());
  }

  private double toleranceBand(
      Intent.Feature asked, Job.Operation operation, double nominal, Assumptions assumptions) {
    if (asked.toleranceBandM() != null) {
      return asked.toleranceBandM();
    }
    Integer grade = asked.toleranceGrade();
    if (grade == null) {
      ProcessCapability capability = data.capabilities().get(operation.kind());
      String practice = "defaultToleranceGrade" + pascal(operation.stage().id());
      grade =
          isHole(operation.kind()) && capability != null
              ? capability.usualGrade()
              : (int) data.practice(practice);
      assumptions.assume(
          "/feature/toleranceGrade",
          "IT" + grade,
          "usual-for-operation",
          capability == null ? "accuracy-practice" : capability.sourceKey());
    }
    return assumptions.assume(
        "/feature/toleranceBandUm",
        data.itToleranceM().bandM(Math.min(nominal, 0.5), grade),
        "tolerance-table",
        data.itToleranceM().sourceKey());
  }

  private double spindleSpeed(
      Intent.Operation asked,
      Job.Workpiece workpiece,
      Job.Tool tool,
      Job.Machine machine,
      StartingValue start,
      Assumptions assumptions) {
    if (asked.spindleSpeedRadPerS() != null) {
      return asked.spindleSpeedRadPerS();
    }
    if (asked.cuttingSpeedMPerS() != null) {
      return asked.cuttingSpeedMPerS() / (tool.diameterM() / 2);
    }
    double cuttingSpeed = start.cuttingSpeedMPerS() * shareForHardness(workpiece);
    double wanted = cuttingSpeed / (tool.diameterM() / 2);
    double top =
        Math.min(machine.maxSpindleSpeedRadPerS(), tool.maxSpindleSpeedRadPerS())
            * data.practice("startSpeedShareOfTop");
    double speed = Math.min(wanted, Math.min(top, machine.guideSpeedRadPerS()));
    assumptions.assume(
        "/operation/cuttingSpeedMPerMin",
        speed * tool.diameterM() / 2,
        speed < wanted
            ? "held-by-top-speed"
            : cuttingSpeed < start.cuttingSpeedMPerS() ? "lowered-for-hardness" : START,
        start.sourceKey());
    return speed;
  }

  /**
   * Share of the starting speed that a workpiece harder than its reference state bears: (HB₀/HB)^k.
   * A softer one is given no more than the starting value, which was not chosen for it.
   */
  private double shareForHardness(Job.Workpiece workpiece) {
    Material material = workpiece.material();
    if (material == null || workpiece.hardnessHb() <= material.hardnessHb()) {
      return 1;
    }
    return Math.pow(
        material.hardnessHb() / workpiece.hardnessHb(),
        data.practice("startSpeedHardnessExponent"));
  }

  private double feedPerTooth(
      Intent.Operation asked,
      OperationKind kind,
      Job.Tool tool,
      double radial,
      StartingValue start,
      Assumptions assumptions) {
    if (kind == OperationKind.TAPPING) {
      return HoleCompletion.tapFeedPerTooth(asked, tool, assumptions);
    }
    if (asked.feedPerToothM() != null) {
      return asked.feedPerToothM();
    }
    if (asked.feedPerRevM() != null) {
      return asked.feedPerRevM() / tool.teeth();
    }
    double feed = start.feedPerDiameter() * tool.diameterM();
    feed = Math.max(start.minFeedM(), Math.min(start.maxFeedM(), feed));
    if (kind == OperationKind.DRILLING || kind == OperationKind.BORING) {
      feed /= tool.teeth();
    }
    if (kind == OperationKind.THREAD_MILLING) {
      feed *= data.practice("threadMillFeedShare");
    }
    if (kind == OperationKind.HIGH_EFFICIENCY_MILLING && radial < tool.diameterM() / 2) {
      double ratio = radial / tool.diameterM();
      // keeps the thickest chip: a small radial depth thins it by 2·√(r(1−r))
      feed = Math.min(start.maxFeedM(), feed / (2 * Math.sqrt(ratio * (1 - ratio))));
    }
    return assumptions.assume("/operation/feedPerToothMm", feed, START, start.sourceKey());
  }

  private StartingValue start(Job.Workpiece workpiece, Job.Tool tool) {
    ToolClass toolClass =
        switch (tool.kind()) {
          case END_MILL, BALL_END_MILL, BULL_NOSE_END_MILL, THREAD_MILL, CHAMFER_MILL ->
              ToolClass.SOLID_MILL;
          case FACE_MILL, SHELL_MILL, DISC_CUTTER -> ToolClass.INDEXABLE_MILL;
          case DRILL -> ToolClass.DRILL;
          case REAMER -> ToolClass.REAMER;
          case TAP -> ToolClass.TAP;
          case BORING_TOOL -> ToolClass.BORING;
        };
    Substrate substrate = tool.substrate() == Substrate.HSS ? Substrate.HSS : Substrate.CARBIDE;
    String machinability =
        workpiece.material() == null
            ? data.groupMachinability(workpiece.isoGroup())
            : workpiece.material().machinability();
    return data.startingValue(machinability, toolClass, substrate);
  }

  private static Stage usualStage(Intent intent, ReferenceData data) {
    Intent.Feature feature = intent.feature();
    Integer grade = feature.toleranceGrade();
    Double ra = feature.raM();
    if ((grade != null && grade <= data.practice("finishingToleranceGrade"))
        || (ra != null && ra <= data.practice("finishingRaM"))) {
      return Stage.FINISHING;
    }
    return switch (intent.operation().kind()) {
      case REAMING, PROFILING, BORING, CHAMFERING -> Stage.FINISHING;
      case TAPPING, THREAD_MILLING -> Stage.SEMI_FINISHING;
      case SIDE_MILLING,
          SLOTTING,
          FACE_MILLING,
          HIGH_EFFICIENCY_MILLING,
          PLUNGE_MILLING,
          RAMPING,
          DRILLING ->
          Stage.ROUGHING;
    };
  }

  private double depthRatio(String direction, OperationKind kind, Stage stage) {
    return data.practice(direction + "DepthPerDiameter" + pascal(kind.id()) + pascal(stage.id()));
  }

  static String pascal(String kebab) {
    StringBuilder joined = new StringBuilder();
    for (String word : kebab.split("-")) {
      joined.append(Character.toUpperCase(word.charAt(0))).append(word, 1, word.length());
    }
    return joined.toString();
  }

  /** Whether the operation works along the axis of a hole. */
  public static boolean isHole(OperationKind kind) {
    return switch (kind) {
      case DRILLING, REAMING, BORING, TAPPING -> true;
      case SIDE_MILLING,
          SLOTTING,
          FACE_MILLING,
          HIGH_EFFICIENCY_MILLING,
          PROFILING,
          PLUNGE_MILLING,
          RAMPING,
          CHAMFERING,
          THREAD_MILLING ->
          false;
    };
  }
}
