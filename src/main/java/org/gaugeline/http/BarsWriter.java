package org.gaugeline.http;

import org.gaugeline.assessment.DamperTunings;
import org.gaugeline.assessment.Overhangs;
import org.gaugeline.assessment.StabilityChart;
import org.gaugeline.quantity.SixDigits;
import org.gaugeline.quantity.UnitSuffix;

/** What a stability chart says of the tuned mass, and of plain bars in place of the stack. */
final class BarsWriter {
  private BarsWriter() {}

  static void write(JsonBytes json, StabilityChart chart) {
    DamperTunings damper = chart.damper();
    if (damper != null) {
      damper(json, damper);
    }
    overhangs(json, chart.overhangs());
  }

  private static void damper(JsonBytes json, DamperTunings damper) {
    json.object("damper");
    json.number("massKg", damper.massKg());
    json.number("atMm", damper.atM(), UnitSuffix.MM);
    json.number("frequencyHz", damper.frequencyHz());
    json.word("frequencyOrigin", origin(damper.frequencyGiven()));
    json.number("dampingRatio", damper.dampingRatio());
    json.word("dampingRatioOrigin", origin(damper.dampingGiven()));
    json.number("hostFrequencyHz", damper.hostFrequencyHz());
    json.number("massRatio", damper.massRatio());
    json.array("tunings");
    for (DamperTunings.Tuned one : damper.tunings()) {
      json.object();
      json.word("tuning", one.tuning().id());
      json.number("frequencyHz", one.frequencyHz());
      json.number("dampingRatio", one.dampingRatio());
      StabilityChartWriter.depth(json, "guaranteedAxialDepthMm", one.guaranteedM());
      StabilityChartWriter.depth(json, "axialDepthMm", one.depthM());
      json.endObject();
    }
    json.endArray();
    json.number("detuningLoss", damper.detuningLoss());
    json.endObject();
  }

  private static String origin(boolean given) {
    return given ? "given" : "tuned";
  }

  private static void overhangs(JsonBytes json, Overhangs overhangs) {
    json.object("overhangs");
    json.word("origin", "predicted");
    json.word("slenderPart", overhangs.ofTool() ? "tool" : "body");
    json.number("diameterMm", overhangs.diameterM(), UnitSuffix.MM);
    json.number("overhangMm", overhangs.overhangM(), UnitSuffix.MM);
    json.number("lengthToDiameter", overhangs.overhangM() / overhangs.diameterM());
    json.number("dampingRatio", overhangs.dampingRatio());
    json.number("axialDepthMm", overhangs.depthM(), UnitSuffix.MM);
    json.number("shortestLengthToDiameter", overhangs.shortestPerDiameter());
    json.number("longestLengthToDiameter", overhangs.longestPerDiameter());
    json.array("bars");
    for (Overhangs.Bar bar : overhangs.bars()) {
      bar(json, overhangs, bar);
    }
    json.endArray();
    json.endObject();
  }

  private static void bar(JsonBytes json, Overhangs overhangs, Overhangs.Bar bar) {
    json.object();
    json.word("bar", bar.bar().id());
    json.word("loses", bar.loses().id());
    if (bar.loses() == Overhangs.Loses.WITHIN_RANGE) {
      double mm = UnitSuffix.MM.fromSi(bar.losesAtM());
      json.number("losesAtOverhangMm", SixDigits.roundDown(mm));
      json.number("losesAtLengthToDiameter", bar.losesAtM() / overhangs.diameterM());
    }
    StabilityChartWriter.depth(json, "guaranteedAxialDepthMm", bar.guaranteedM());
    json.number("margin", overhangs.margin(bar));
    json.endObject();
  }
}
