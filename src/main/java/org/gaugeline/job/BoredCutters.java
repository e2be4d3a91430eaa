package org.gaugeline.job;

import org.gaugeline.reference.ArborSize;
import org.gaugeline.reference.Hand;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.ShankForm;
import org.gaugeline.reference.Solid;
import org.gaugeline.reference.Substrate;
import org.gaugeline.reference.TapForm;
import org.gaugeline.reference.ToolKind;
import org.jspecify.annotations.Nullable;

/** Completes a cutter that is screwed onto an arbor: a body with a bore instead of a shank. */
public final class BoredCutters {
  private static final String PRACTICE = "cutting-practice";

  private final ReferenceData data;

  BoredCutters(ReferenceData data) {
    this.data = data;
  }

  /** Whether a cutter has a bore: shell mills and disc cutters do where nothing else is said. */
  public static boolean isBored(ToolKind kind, @Nullable ShankForm form) {
    return form == null
        ? kind == ToolKind.SHELL_MILL || kind == ToolKind.DISC_CUTTER
        : form == ShankForm.PILOT_BORE;
  }

  /** Mass of a full cylinder of heavy metal around a cutter, which none exceeds, kg. */
  public static double heaviestKg(
      ToolKind kind, double diameterM, @Nullable Double bodyLengthM, ReferenceData data) {
    double length =
        bodyLengthM == null
            ? usualLengthM(kind, diameterM, data.arborOfCutter(diameterM), data)
            : bodyLengthM;
    return data.practice("heaviestBodyKgPerM3") * Math.PI / 4 * diameterM * diameterM * length;
  }

  private static double usualLengthM(
      ToolKind kind, double diameterM, ArborSize usual, ReferenceData data) {
    return kind == ToolKind.DISC_CUTTER
        ? data.practice("discWidthPerDiameter") * diameterM
        : usual.bodyLengthM();
  }

  Job.Tool complete(Intent intent, Assumptions assumptions) {
    Intent.Tool asked = intent.tool();
    double diameter = asked.diameterM();
    ShankForm form =
        assumptions.given(
            asked.shankForm(),
            "/tool/shank/form",
            ShankForm.PILOT_BORE,
            "usual-for-tool",
            PRACTICE);
    Substrate substrate =
        assumptions.given(
            asked.substrate(), "/tool/substrate", Substrate.STEEL, "usual-for-tool", PRACTICE);
    Solid solid = ToolCompletion.solid(substrate, data);
    ArborSize usual = data.arborOfCutter(diameter);
    double bore =
        assumptions.given(
            asked.shankDiameterM(),
            "/tool/shank/diameterMm",
            usual.boreM(),
            "bore-of-cutter",
            usual.sourceKey());
    double body = bodyLengthM(asked, usual, assumptions);
    double flute =
        assumptions.given(
            asked.fluteLengthM(),
            "/tool/fluteLengthMm",
            usualFluteM(asked.kind(), diameter, body),
            "usual-for-tool",
            PRACTICE);
    double neck = asked.neckLengthM() == null ? flute : Math.max(flute, asked.neckLengthM());
    int teeth =
        assumptions.given(
            asked.teeth(),
            "/tool/teeth",
            ToolCompletion.usualTeeth(asked.kind(), diameter, data),
            "usual-for-tool",
            PRACTICE);
    Double lead = asked.leadAngleRad();
    return new Job.Tool(
        asked.kind(),
        diameter,
        teeth,
        assumptions.given(asked.helixRad(), "/tool/helixDeg", 0.0, "usual-for-tool", PRACTICE),
        asked.hand() == null ? Hand.RIGHT : asked.hand(),
        asked.helixHand() == null ? Hand.RIGHT : asked.helixHand(),
        asked.cornerRadiusM() == null ? 0 : asked.cornerRadiusM(),
        Math.min(flute, body),
        asked.neckDiameterM() == null ? diameter : asked.neckDiameterM(),
        Math.min(neck, body),
        body,
        substrate,
        solid,
        bore,
        form,
        asked.shankTolerance() == null ? "" : asked.shankTolerance(),
        ToolCompletion.pitchM(intent, data, assumptions),
        asked.tapForm() == null ? TapForm.CUT : asked.tapForm(),
        asked.throughCoolant() != null && asked.throughCoolant(),
        false,
        lead == null ? Math.PI / 2 : lead,
        ToolCompletion.pointAngleRad(intent, substrate, data),
        orUnlimited(asked.maxSpindleSpeedRadPerS()),
        assumptions.given(
            asked.price(),
            "/tool/price",
            teeth * data.practice("insertEdgePrice"),
            "practice-value",
            data.practiceRow("insertEdgePrice").sourceKey()),
        assumptions.given(
            asked.lifeMinutes(),
            "/tool/lifeMinutes",
            data.practice("usualLifeS") / 60,
            "practice-value",
            data.practiceRow("usualLifeS").sourceKey()),
        massKg(asked, body, solid, assumptions));
  }

  private double bodyLengthM(Intent.Tool asked, ArborSize usual, Assumptions assumptions) {
    Double overall = asked.overallLengthM();
    Double body = asked.cutterBodyLengthM();
    boolean disc = asked.kind() == ToolKind.DISC_CUTTER;
    return assumptions.given(
        body == null ? overall : body,
        "/tool/cutterBodyLengthMm",
        usualLengthM(asked.kind(), asked.diameterM(), usual, data),
        disc ? "usual-for-tool" : "bore-of-cutter",
        disc ? PRACTICE : usual.sourceKey());
  }

  /** Edges of a disc reach over its whole width, those of a mill over half of its body at most. */
  private double usualFluteM(ToolKind kind, double diameterM, double bodyM) {
    return kind == ToolKind.DISC_CUTTER
        ? bodyM
        : Math.min(data.practice("fluteLengthPerDiameter") * diameterM, bodyM / 2);
  }

  private double massKg(Intent.Tool asked, double bodyM, Solid solid, Assumptions assumptions) {
    double d = asked.diameterM();
    return assumptions.given(
        asked.massKg(),
        "/tool/massKg",
        data.practice("cutterBodyFillShare") * solid.densityKgPerM3() * Math.PI / 4 * d * d * bodyM,
        "usual-for-tool",
        data.practiceRow("cutterBodyFillShare").sourceKey());
  }

  private static double orUnlimited(@Nullable Double marked) {
    return marked == null ? Double.POSITIVE_INFINITY : marked;
  }
}
