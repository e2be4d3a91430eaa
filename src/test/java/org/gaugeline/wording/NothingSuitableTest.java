package org.gaugeline.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.gaugeline.advice.Bench;
import org.gaugeline.advice.Intents;
import org.gaugeline.advice.Recommendation;
import org.gaugeline.advice.Recommendation.Change;
import org.gaugeline.assessment.Caution;
import org.gaugeline.quantity.SixDigits;
import org.gaugeline.quantity.UnitSuffix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A machine too weak or too slow for every assembly: the caution names what of the cut would do,
 * and it does when it is asked, as number and as read from the text in either units.
 */
class NothingSuitableTest {
  private static final Spoken WORDS = new Spoken(TemplateWords.load());
  private static final Pattern TOLD = Pattern.compile(" to ([0-9.]+) (mm|in|m/min|ft/min|1/min)");

  /** What is left of the power or torque that the cut takes, or of its speed. */
  private static final double LEFT = 0.6;

  /**
   * A job that nothing meets.
   *
   * @param starved what the machine lacks
   */
  record Starved(String job, String starved, Intents intents) {
    @Override
    public String toString() {
      return job + " without " + starved;
    }
  }

  static Stream<Starved> starved() {
    List<Starved> jobs = new ArrayList<>();
    for (String name : Intents.demoNames()) {
      Intents demo = Intents.demo(name);
      Recommendation answer = Bench.ask(demo);
      if (answer.assemblies().isEmpty()) {
        continue;
      }
      double power = UnitSuffix.KW.fromSi(answer.loads().powerW());
      double torque = answer.loads().torqueNm();
      double speed = UnitSuffix.RPM.fromSi(answer.loads().spindleSpeedRadPerS());
      Intents units = demo.with("/textUnits", jobs.size() % 2 == 0 ? "metric" : "inch");
      Intents atSpeed = units.atSpeedRpm(SixDigits.round(speed));
      jobs.add(new Starved(name, "power", units.with("/machine/powerKw", round(LEFT * power))));
      jobs.add(new Starved(name, "torque", weak(units, LEFT * torque)));
      jobs.add(
          new Starved(
              name, "speed", atSpeed.with("/tool/maxSpindleSpeedRpm", round(LEFT * speed))));
    }
    return jobs.stream();
  }

  private static Intents weak(Intents intents, double torqueNm) {
    return intents.without("/machine/torqueCurve").with("/machine/torqueNm", round(torqueNm));
  }

  private static double round(double value) {
    return SixDigits.round(value);
  }

  /** A change that helps is nearly always found; one starved job needs two at once. */
  @Test
  void aChangeIsToldForNearlyAll() {
    long without = starved().filter(s -> Bench.ask(s.intents()).wouldFitIf().isEmpty()).count();
    assertThat(without).isLessThanOrEqualTo(1);
  }

  @ParameterizedTest
  @MethodSource("starved")
  void whatIsToldHoldsWhenItIsAsked(Starved starved) {
    Recommendation answer = Bench.ask(starved.intents());
    assertThat(answer.assemblies()).as("%s", starved).isEmpty();
    Caution caution = nothingSuitable(answer);
    if (answer.wouldFitIf().isEmpty()) {
      // No single change helps: then none is told, and the next test holds how often that is.
      return;
    }
    assertThat(WORDS.caution(caution, answer.job())).contains(caution.subject());
    assertThat(Bench.told(answer)).anyMatch(a -> a.id().equals(caution.subject()));
    for (Change change : answer.wouldFitIf()) {
      UnitSuffix unit = Objects.requireNonNull(UnitSuffix.findOf(change.pointer()));
      double sent = SixDigits.round(unit.fromSi(((Number) change.to()).doubleValue()));
      meets(starved, change, sent);
      meets(starved, change, unit.fromSi(read(WORDS.change(change, answer.job()))));
    }
  }

  private static void meets(Starved starved, Change change, double value) {
    Intents changed = starved.intents().with(change.pointer(), value);
    assertThat(Bench.ask(changed).assemblies())
        .as("%s: %s set to %s", starved, change.pointer(), value)
        .isNotEmpty();
  }

  /** The number of a sentence, in SI. */
  private static double read(String sentence) {
    Matcher told = TOLD.matcher(sentence);
    assertThat(told.find()).as(sentence).isTrue();
    double value = Double.parseDouble(told.group(1));
    return switch (told.group(2)) {
      case "mm" -> UnitSuffix.MM.toSi(value);
      case "in" -> UnitSuffix.IN.toSi(value);
      case "m/min" -> UnitSuffix.M_PER_MIN.toSi(value);
      case "ft/min" -> UnitSuffix.FT_PER_MIN.toSi(value);
      case "1/min" -> UnitSuffix.RPM.toSi(value);
      default -> throw new AssertionError(sentence);
    };
  }

  private static Caution nothingSuitable(Recommendation answer) {
    return answer.cautions().stream()
        .filter(caution -> caution.code().equals(Recommendation.NOTHING_SUITABLE))
        .findFirst()
        .orElseThrow();
  }

  /** Milling torque falls with feed and depth, power with speed as well: each has a way out. */
  @Test
  void everyMillingCutThatOnlyLacksPowerOrSpeedHasAWayOut() {
    List<Starved> mills =
        starved()
            .filter(job -> !job.starved().equals("torque"))
            .filter(job -> job.intents().text("/operation/kind").endsWith("milling"))
            .toList();
    assertThat(mills).hasSizeGreaterThan(10);
    assertThat(mills)
        .allSatisfy(job -> assertThat(Bench.ask(job.intents()).wouldFitIf()).isNotEmpty());
  }

  @Test
  void theSpeedIsNamedWhereTheCutterIsMarkedForLess() {
    Intents fast =
        Intents.of("side-milling", "end-mill", 16, "EN AW-6082", "HSK-A63")
            .with("/operation/spindleSpeedRpm", 8000)
            .with("/tool/maxSpindleSpeedRpm", 5000);
    Recommendation answer = Bench.ask(fast);
    assertThat(answer.wouldFitIf())
        .anySatisfy(
            change -> {
              assertThat(change.pointer()).isEqualTo("/operation/spindleSpeedRpm");
              assertThat(WORDS.change(change, answer.job()))
                  .isEqualTo("Set spindle speed to 5000 1/min instead of 8000 1/min.");
            });
  }

  @Test
  void nothingIsNamedWhereNoCutWouldDo() {
    Recommendation answer =
        Bench.ask(
            Intents.of("side-milling", "end-mill", 16, "C45", "HSK-A63")
                .with("/machine/toolChanger/maxMassKg", 0.1));
    assertThat(answer.wouldFitIf()).isEmpty();
    assertThat(WORDS.caution(nothingSuitable(answer), answer.job()))
        .doesNotContain("reckoned anew");
  }
}
