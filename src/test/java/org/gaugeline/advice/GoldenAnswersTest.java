package org.gaugeline.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;
import org.gaugeline.assessment.Limit;
import org.gaugeline.assessment.Limits;
import org.gaugeline.assessment.Loads;
import org.gaugeline.assessment.Scores;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Answers of this engine version to the demonstration intents, to five digits. They are not right
 * because they stand in a file; they are there so that no number changes unnoticed.
 *
 * <p>Write them anew: {@code mvn test -Dtest=GoldenAnswersTest -Dgaugeline.golden.write=true}
 */
class GoldenAnswersTest {
  private static final Path FOLDER =
      Path.of("src", "test", "resources", "golden", EngineVersion.CURRENT);
  private static final boolean WRITE = Boolean.getBoolean("gaugeline.golden.write");

  static Stream<String> names() {
    return Intents.demoNames().stream();
  }

  @BeforeAll
  static void writeWhereAsked() throws IOException {
    if (!WRITE) {
      return;
    }
    Files.createDirectories(FOLDER);
    try (Stream<Path> old = Files.list(FOLDER)) {
      for (Path file : old.toList()) {
        Files.delete(file);
      }
    }
    for (String name : Intents.demoNames()) {
      Files.writeString(file(name), answer(name), StandardCharsets.UTF_8);
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void answerIsThatOfThisEngineVersion(String name) throws IOException {
    assertThat(answer(name))
        .as(
            "answer to %s: a changed number needs a new EngineVersion (%s now) and new files:"
                + " -Dgaugeline.golden.write=true",
            name, EngineVersion.CURRENT)
        .isEqualTo(Files.readString(file(name), StandardCharsets.UTF_8));
  }

  @Test
  void everyDemonstrationIntentHasAnAnswerOnFileAndNoOther() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrderElementsOf(names().map(name -> name + ".txt").toList());
    }
  }

  private static Path file(String name) {
    return FOLDER.resolve(name + ".txt");
  }

  private static String answer(String name) {
    Recommendation answer = Bench.ask(Intents.demo(name));
    StringBuilder text = new StringBuilder();
    loads(text, answer.loads());
    for (RankedAssembly assembly : Bench.told(answer)) {
      text.append('\n')
          .append(assembly.id())
          .append(' ')
          .append(assembly.assembly().holder().ref())
          .append(' ')
          .append(assembly.standing().id())
          .append('\n');
      scores(text, assembly.scores());
      limits(text, assembly.limits());
    }
    return text.toString();
  }

  private static void loads(StringBuilder text, Loads loads) {
    line(text, "spindleSpeedRadPerS", loads.spindleSpeedRadPerS());
    line(text, "specificForcePa", loads.specificForcePa());
    line(text, "torqueNm", loads.torqueNm());
    line(text, "peakTorqueNm", loads.peakTorqueNm());
    line(text, "peakRadialForceN", loads.peakRadialForceN());
    line(text, "axialPullN", loads.axialPullN());
    line(text, "axialPushN", loads.axialPushN());
  }

  private static void scores(StringBuilder text, Scores scores) {
    line(text, "  accuracy", scores.accuracy());
    line(text, "  grip", scores.grip());
    line(text, "  reach", scores.reach());
    line(text, "  speed", scores.speed());
    line(text, "  overall", scores.overall());
  }

  private static void limits(StringBuilder text, Limits limits) {
    limit(text, "  spindleSpeedRadPerS", limits.spindleSpeedRadPerS());
    limit(text, "  torqueNm", limits.torqueNm());
    limit(text, "  axialForceN", limits.axialForceN());
    limit(text, "  axialDepthM", limits.axialDepthM());
    limit(text, "  feedPerToothM", limits.feedPerToothM());
    limit(text, "  stickOutM", limits.stickOutM());
    limit(text, "  featureDepthM", limits.featureDepthM());
  }

  private static void limit(StringBuilder text, String name, Limit limit) {
    line(text, name + " (" + limit.governedBy() + ")", limit.value());
  }

  private static void line(StringBuilder text, String name, double value) {
    text.append(name).append(' ').append(fiveDigits(value)).append('\n');
  }

  private static String fiveDigits(double value) {
    return Double.isFinite(value) ? String.format(Locale.ROOT, "%.4e", value) : "" + value;
  }
}
