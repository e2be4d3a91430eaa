package org.gaugeline.job;

import org.gaugeline.reference.Hand;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.ShankForm;
import org.gaugeline.reference.ShankSize;
import org.gaugeline.reference.Solid;
import org.gaugeline.reference.Substrate;
import org.gaugeline.reference.TapSize;
import org.gaugeline.reference.ToolKind;
import org.jspecify.annotations.Nullable;

/** Completes the cutting tool from its diameter and the shank standards. */
final class ToolCompletion {
  private static final String PRACTICE = "cutting-practice";
  private static final String STANDARD_TAP = "standard-tap";

  private final ReferenceData data;
  private final HoleTools holeTools;
  private final BoredCutters bored;

  ToolCompletion(ReferenceData data) {
    this.data = data;
    this.holeTools = new HoleTools(data);
    this.bored = new BoredCutters(data);
  }

  Job.Tool complete(Intent intent, Assumptions assumptions) {
    Intent.Tool asked = intent.tool();
    if (BoredCutters.isBored(asked.kind(), asked.shankForm())) {
      return bored.complete(intent, assumptions);
    }
    double diameter = asked.diameterM();
    boolean isTap = asked.kind() == ToolKind.TAP;
    boolean isBar = asked.kind() == ToolKind.BORING_TOOL;
    TapSize tap = isTap ? data.tapSize(diameter) : null;
    Substrate substrate =
        assumptions.given(
            asked.substrate(),
            "/tool/substrate",
            isTap ? Substrate.HSS : isBar ? Substrate.STEEL : Substrate.CARBIDE,
            "usual-for-tool",
            PRACTICE);
    ShankForm form =
        assumptions.given(
            asked.shankForm(),
            "/tool/shank/form",
            isTap ? ShankForm.SQUARE_DRIVE : ShankForm.CYLINDRICAL,
            isTap ? "usual-for-tool" : "plain-shank",
            PRACTICE);
    ShankSize size =
        isBar && asked.shankDiameterM() == null
            ? holeTools.barFor(diameter)
            : shankFor(diameter, asked.shankDiameterM());
    double shankDiameter =
        assumptions.given(
            asked.shankDiameterM(),
            "/tool/shank/diameterMm",
            tap == null ? size.diameterM() : tap.shankDiameterM(),
            tap != null ? STANDARD_TAP : isBar ? "usual-for-tool" : "next-standard-shank",
            tap == null ? size.sourceKey() : tap.sourceKey());
    double flute = flute(intent, diameter, shankDiameter, assumptions);
    double neckLength = asked.neckLengthM() == null ? flute : Math.max(flute, asked.neckLengthM());
    double neckDiameter =
        asked.neckDiameterM() != null
            ? asked.neckDiameterM()
            : asked.neckLengthM() == null || isBar
                ? isBar ? shankDiameter : diameter
                : diameter * data.practice("neckDiameterRatio");
    double overall =
        assumptions.given(
            asked.overallLengthM(),
            "/tool/overallLengthMm",
            holeTools.overall(intent, tap, neckLength, shankDiameter, size),
            tap != null ? STANDARD_TAP : isBar ? "bar-for-the-depth" : "neck-plus-standard-shank",
            tap == null ? size.sourceKey() : tap.sourceKey());
    Hand hand = asked.hand() == null ? Hand.RIGHT : asked.hand();
    Solid solid = solid(substrate, data);
    return new Job.Tool(
        asked.kind(),
        diameter,
        assumptions.given(
            asked.teeth(),
            "/tool/teeth",
            usualTeeth(asked.kind(), diameter, data),
            "usual-for-tool",
            PRACTICE),
        assumptions.given(
            asked.helixRad(),
            "/tool/helixDeg",
            usualHelix(asked.kind()),
            "usual-for-tool",
            PRACTICE),
        hand,
        asked.helixHand() == null ? Hand.RIGHT : asked.helixHand(),
        holeTools.cornerRadius(asked, assumptions),
        flute,
        neckDiameter,
        neckLength,
        overall,
        substrate,
        solid,
        shankDiameter,
        form,
        assumptions.given(
            asked.shankTolerance(),
            "/tool/shank/tolerance",
            tap == null ? "h6" : "h9",
            tap == null ? "standard-shank" : STANDARD_TAP,
            tap == null ? size.sourceKey() : tap.sourceKey()),
        pitchM(intent, data, assumptions),
        HoleTools.tapForm(asked, assumptions),
        asked.throughCoolant() != null && asked.throughCoolant(),
        asked.exchangeableHead() != null && asked.exchangeableHead(),
        asked.leadAngleRad() == null ? Math.PI / 2 : asked.leadAngleRad(),
        pointAngleRad(intent, substrate, data),
        asked.maxSpindleSpeedRadPerS() == null
            ? Double.POSITIVE_INFINITY
            : asked.maxSpindleSpeedRadPerS(),
        price(asked, diameter, assumptions),
        assumptions.given(
            asked.lifeMinutes(),
            "/tool/lifeMinutes",
            usualLifeMinutes(asked.kind()),
            "practice-value",
            data.practiceRow("usualLifeS").sourceKey()),
        asked.massKg() == null ? Double.NaN : asked.massKg());
  }

  static double pitchM(Intent intent, ReferenceData data, Assumptions assumptions) {
    if (intent.operation().kind() == OperationKind.THREAD_MILLING) {
      return ThreadCompletion.pitchM(intent, data, assumptions);
    }
    boolean tap = intent.tool().kind() == ToolKind.TAP;
    TapSize size = tap ? data.tapSize(intent.tool().diameterM()) : null;
    return HoleTools.pitch(intent, size, assumptions);
  }

  static Solid solid(Substrate substrate, ReferenceData data) {
    Solid solid = data.solids().get(substrate.id());
    if (solid == null) {
      throw new IllegalStateException("no solid '" + substrate.id() + "' in the tables");
    }
    return solid;
  }

  /**
   * The point of a drill, or the cone of a chamfer: the chamfer's own where both legs are given.
   */
  static double pointAngleRad(Intent intent, Substrate substrate, ReferenceData data) {
    Double given = intent.tool().pointAngleRad();
    if (given != null) {
      return given;
    }
    if (intent.operation().kind() != OperationKind.CHAMFERING) {
      return data.practice(
          substrate == Substrate.HSS ? "defaultPointAngleHssRad" : "defaultPointAngleRad");
    }
    Double height = intent.operation().axialDepthM();
    Double width = intent.operation().radialDepthM();
    return height == null || width == null
        ? data.practice("defaultChamferAngleRad")
        : 2 * Math.atan(width / height);
  }

  private double flute(
      Intent intent, double diameter, double shankDiameter, Assumptions assumptions) {
    Intent.Tool asked = intent.tool();
    Double depth = intent.feature().depthM();
    double usual =
        diameter
            * data.practice(
                isHoleTool(asked.kind()) ? "holeFluteLengthPerDiameter" : "fluteLengthPerDiameter");
    if (asked.kind() == ToolKind.BORING_TOOL) {
      usual = data.practice("boringHeadLengthRatio") * shankDiameter;
    }
    if (depth != null && isHoleTool(asked.kind())) {
      // a hole tool is chosen for its hole: no longer than it needs to be
      usual = Math.min(usual, depth + diameter);
    }
    double room = asked.overallLengthM() == null ? usual : asked.overallLengthM() / 2;
    return assumptions.given(
        asked.fluteLengthM(),
        "/tool/fluteLengthMm",
        Math.min(usual, room),
        "usual-for-tool",
        PRACTICE);
  }

  private double price(Intent.Tool asked, double diameter, Assumptions assumptions) {
    double millimetres = diameter * 1e3;
    double carbide =
        data.practice("edgePriceBase")
            + data.practice("edgePricePerMm2") * millimetres * millimetres;
    double usual =
        asked.substrate() == Substrate.HSS
            ? carbide * data.practice("edgePriceHssFactor")
            : carbide;
    return assumptions.given(
        asked.price(),
        "/tool/price",
        usual,
        "practice-value",
        data.practiceRow("edgePriceBase").sourceKey());
  }

  private double usualLifeMinutes(ToolKind kind) {
    return data.practice(isHoleTool(kind) ? "usualLifeDrillingS" : "usualLifeS") / 60;
  }

  /** The standard shank of that diameter, or the next larger one than the tool. */
  private ShankSize shankFor(double diameterM, @Nullable Double shankM) {
    double wanted =
        shankM == null ? Math.min(diameterM, data.practice("largestUsualShankM")) : shankM;
    ShankSize best = null;
    for (ShankSize size : data.shankSizes()) {
      boolean exact = Math.abs(size.diameterM() - wanted) < 5e-6;
      if (exact) {
        return size;
      }
      // an inch shank is taken where it is the tool's own size, never as the next larger one
      boolean metric = !size.id().endsWith(" in");
      if (metric
          && size.diameterM() > wanted
          && (best == null || size.diameterM() < best.diameterM())) {
        best = size;
      }
    }
    if (best == null) {
      best = data.shankSizes().get(data.shankSizes().size() - 1);
    }
    return best;
  }

  static boolean isHoleTool(ToolKind kind) {
    return kind == ToolKind.DRILL || kind == ToolKind.REAMER || kind == ToolKind.TAP;
  }

  static int usualTeeth(ToolKind kind, double diameterM, ReferenceData data) {
    return switch (kind) {
      case END_MILL, BULL_NOSE_END_MILL, CHAMFER_MILL, THREAD_MILL ->
          (int) data.practice("usualTeethMill");
      case BALL_END_MILL -> (int) data.practice("usualTeethBallMill");
      case DRILL -> (int) data.practice("usualTeethDrill");
      case FACE_MILL, SHELL_MILL ->
          Math.max(
              (int) data.practice("leastTeethFaceMill"),
              (int) Math.round(diameterM / data.practice("faceMillDiameterPerToothM")));
      case DISC_CUTTER ->
          Math.max(
              (int) data.practice("leastTeethDiscCutter"),
              (int) Math.round(diameterM / data.practice("discCutterDiameterPerToothM")));
      case REAMER -> (int) data.practice("usualTeethReamer");
      case TAP -> (int) data.practice("usualTeethTap");
      case BORING_TOOL -> (int) data.practice("usualTeethBoringTool");
    };
  }

  double usualHelix(ToolKind kind) {
    return switch (kind) {
      case END_MILL, BULL_NOSE_END_MILL, BALL_END_MILL -> data.practice("defaultHelixRad");
      case DRILL -> data.practice("defaultDrillHelixRad");
      case FACE_MILL,
          SHELL_MILL,
          DISC_CUTTER,
          REAMER,
          TAP,
          THREAD_MILL,
          BORING_TOOL,
          CHAMFER_MILL ->
          0;
    };
  }
}
