package org.gaugeline.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.gaugeline.advice.Recommendation.Change;
import org.gaugeline.assessment.Caution;
import org.gaugeline.assessment.Criterion;
import org.gaugeline.assessment.Finding;
import org.gaugeline.assessment.Limit;
import org.gaugeline.assessment.Measure;
import org.gaugeline.assessment.Reason;
import org.gaugeline.assessment.SetUpStep;
import org.gaugeline.assessment.Severity;
import org.gaugeline.assessment.Tone;
import org.gaugeline.job.Assumption;
import org.gaugeline.job.Job;
import org.gaugeline.quantity.TextUnits;
import org.gaugeline.reference.ShankForm;
import org.junit.jupiter.api.Test;

class TemplateWordsTest {
  private static final double NONE = Double.NaN;

  private final Spoken words = new Spoken(TemplateWords.load());
  private final Job metric = Jobs.of(TextUnits.METRIC);
  private final Job inch = Jobs.of(TextUnits.INCH);

  private static Reason reason(
      String code, Tone tone, double demand, double capacity, Measure measure) {
    return new Reason(Criterion.GRIP, code, tone, demand, capacity, measure, "", List.of());
  }

  @Test
  void saysAReasonInMetricAndInch() {
    Reason grips = reason("slip-margin", Tone.FOR, 6_200, 9_800, Measure.FORCE);
    assertThat(words.reason(grips, metric))
        .isEqualTo("Grips with 9800 N at the 5 % point; the cut asks 6200 N, safety included.");
    assertThat(words.reason(grips, inch))
        .isEqualTo("Grips with 2203 lbf at the 5 % point; the cut asks 1394 lbf, safety included.");
    Reason runsTrue = reason("runout-margin", Tone.FOR, 6e-6, 28e-6, Measure.SMALL_LENGTH);
    assertThat(words.reason(runsTrue, metric))
        .isEqualTo("Runs out 6 µm at the tip (95 %); this cut tolerates 28 µm.");
    assertThat(words.reason(runsTrue, inch))
        .isEqualTo("Runs out 2.36 tenths at the tip (95 %); this cut tolerates 11 tenths.");
  }

  @Test
  void saysAFindingInItsOwnWordsOrInThoseOfItsReason() {
    Reason slow =
        reason(
            "holder-speed",
            Tone.AGAINST,
            2 * Math.PI * 300,
            2 * Math.PI * 200,
            Measure.SPINDLE_SPEED);
    assertThat(words.finding(finding("holder-speed", slow), metric))
        .startsWith("The cut turns at 18000 1/min; this kind of holder")
        .contains("usually good for 12000 1/min.");
    Reason nose = reason("nose-collides", Tone.AGAINST, 1e-3, -2.54e-3, Measure.LENGTH);
    assertThat(words.finding(finding("nose-collides", nose), inch))
        .startsWith("The nose hits a wall, step or floor: 0.1 in too thick");
    Reason slips = reason("slip-margin", Tone.AGAINST, 9_000, 4_000, Measure.FORCE);
    assertThat(words.finding(finding("slip", slips), metric))
        .isEqualTo(words.reason(slips, metric));
    Reason unsaid = reason("nut-torque-missing", Tone.NEUTRAL, NONE, NONE, Measure.TORQUE);
    assertThat(words.finding(finding("nut-torque-missing", unsaid), metric))
        .startsWith("Nobody states the torque of the nut. Grip");
  }

  private static Finding finding(String code, Reason reason) {
    return new Finding(code, Severity.ERROR, reason, "");
  }

  @Test
  void speaksByToneAndNumbers() {
    Measure force = Measure.FORCE;
    assertThat(words.reason(reason("slip-margin", Tone.AGAINST, 9_000, 4_000, force), metric))
        .isEqualTo(
            "Grips with only 4000 N at the 5 % point; the cut asks 9000 N, safety included."
                + " The cutter can slip or walk out.");
    assertThat(
            words.reason(reason("gap-margin", Tone.AGAINST, 1e-3, -3.2e-3, Measure.LENGTH), metric))
        .startsWith("Hits a wall or obstruction: 3.2 mm too thick where 1 mm should stay free.");
    assertThat(
            words.reason(
                reason("gap-margin", Tone.FOR, 1e-3, Double.POSITIVE_INFINITY, Measure.LENGTH),
                metric))
        .isEqualTo("Nothing stands beside the tool: no wall or obstruction limits the reach.");
    assertThat(
            words.reason(
                reason("slip-margin", Tone.FOR, 70, Double.POSITIVE_INFINITY, force), metric))
        .isEqualTo("Nothing limits this here; the job asks 70 N.");
    assertThat(words.reason(reason("spindle-power", Tone.AGAINST, 9e3, 1e4, Measure.POWER), metric))
        .startsWith("The cut takes 9 kW; the spindle gives 10 kW for good. Forces scatter");
    assertThat(
            words.reason(
                reason("coolant-machine", Tone.AGAINST, NONE, NONE, Measure.COUNT), metric))
        .isEqualTo("Coolant through the tool is asked, and the machine has none.");
  }

  /** 2.0004 mm against 2 mm must not read '2 mm; 2 mm is asked'. */
  @Test
  void tellsCloseNumbersApart() {
    assertThat(
            words.reason(
                reason("gap-margin", Tone.AGAINST, 2.0004e-3, 2e-3, Measure.LENGTH), metric))
        .startsWith("Comes within 2 mm of a wall or obstruction; 2.0004 mm is asked.");
  }

  @Test
  void saysStepsWithAndWithoutNumbers() {
    assertThat(words.setUp(new SetUpStep("tighten-nut", 80, Measure.TORQUE), metric))
        .startsWith("Tighten the nut with a torque wrench to 80 N·m, or as marked on the holder,");
    assertThat(words.setUp(new SetUpStep("tighten-nut", 80, Measure.TORQUE), inch))
        .contains("to 59 lbf·ft, or as marked");
    assertThat(words.setUp(new SetUpStep("tighten-nut", NONE, Measure.TORQUE), metric))
        .startsWith("Tighten the nut with a torque wrench, or as marked on the holder,");
    // a rise of 250 K is one of 450 °F: no offset
    assertThat(words.setUp(new SetUpStep("heat-nose", 250, Measure.TEMPERATURE_RISE), inch))
        .contains("about 450 °F above room temperature");
  }

  @Test
  void warnsPlainly() {
    assertThat(caution("hot-holder", NONE, Measure.COUNT)).contains("burn", "gloves", "guard");
    assertThat(caution("never-tighten-empty", NONE, Measure.COUNT))
        .contains("Never tighten", "without a shank", "throw");
    assertThat(caution("long-overhang", 6.25, Measure.RATIO))
        .contains("6.25 times its diameter", "thrown", "guard closed", "reduced speed");
    assertThat(caution("pull-out-possible", 430, Measure.FORCE)).contains("430 N", "thrown");
    assertThat(caution("markings-and-manuals-first", NONE, Measure.COUNT))
        .contains(
            "marking on holder", "machine builder's manual", "local rules", "qualified people");
  }

  private String caution(String code, double value, Measure measure) {
    return words.caution(new Caution(code, Severity.WARNING, value, measure, ""), metric);
  }

  @Test
  void saysWhatWasAssumedAndFromWhere() {
    assertThat(assumption("/operation/radialDepthMm", 6e-3, "usual-for-operation", metric))
        .isEqualTo("Took the radial depth of cut as 6 mm: usual for this operation.");
    assertThat(assumption("/operation/radialDepthMm", 6.35e-3, "usual-for-operation", inch))
        .isEqualTo("Took the radial depth of cut as 0.25 in: usual for this operation.");
    // 1 ksi = 6.894757 MPa, NIST SP 811 (2008), appendix B
    assertThat(assumption("/workpiece/kc11NPerMm2", 2000 * 6.894757e6, "material-table", inch))
        .startsWith("Took the specific cutting force kc1.1 as 2000 ksi, from the material table");
    assertThat(assumption("/tool/helixDeg", Math.toRadians(30), "usual-for-tool", metric))
        .isEqualTo("Took the helix angle as 30°: usual for such a tool.");
    assertThat(assumption("/tool/lifeMinutes", 60.0, "practice-value", inch))
        .startsWith("Took the tool life as 60 min:");
    assertThat(assumption("/tool/price", 68.0, "practice-value", metric))
        .startsWith("Took the price of the tool as 68 EUR:");
    assertThat(assumption("/shop/shrinkUnit", true, "equipment-assumed-present", metric))
        .isEqualTo(
            "Not said: took it that the shop has a heat-shrink unit. If it has none, say so.");
    assertThat(assumption("/machine/faceContact", false, "plain-form-of-interface", metric))
        .startsWith("Took face contact of the spindle as no: the plain form of HSK-A63");
    assertThat(assumption("/tool/shank/form", ShankForm.CYLINDRICAL, "plain-shank", metric))
        .isEqualTo("Took the form of the shank as cylindrical: the plain shank.");
  }

  private String assumption(String pointer, Object value, String reason, Job job) {
    return words.assumption(new Assumption(pointer, value, reason, ""), job);
  }

  @Test
  void saysWhatToChange() {
    assertThat(
            words.change(
                new Change("/tool/shank/form", ShankForm.CYLINDRICAL.id(), "flat"), metric))
        .isEqualTo("Take the tool with another form of shank: flat instead of cylindrical.");
    assertThat(words.change(new Change("/assembly/stickOutMm", 0.05, 0.042), inch))
        .isEqualTo("Set the stick-out to 1.654 in instead of 1.969 in.");
    assertThat(words.change(new Change("/operation/feedPerToothMm", null, 5e-5), metric))
        .isEqualTo("Set the feed per tooth to 0.05 mm.");
  }

  @Test
  void saysWhatStopsALimit() {
    assertThat(words.limit(new Limit(12, "flute-length"), metric))
        .isEqualTo("The length of the flutes.")
        .isEqualTo(words.limit(new Limit(13, "flute-length"), inch));
  }

  /** A later engine's code must not fail an answer. */
  @Test
  void saysAnUnknownCodeAsItIs() {
    assertThat(caution("mind-the-step", NONE, Measure.COUNT)).isEqualTo("mind the step");
  }
}
