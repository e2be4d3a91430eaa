package org.gaugeline.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.gaugeline.assessment.Criterion;
import org.gaugeline.assessment.Severity;
import org.gaugeline.assessment.Standing;
import org.gaugeline.assessment.Tone;
import org.gaugeline.quantity.UnitSuffix;
import org.gaugeline.wording.Codes;
import org.junit.jupiter.api.Test;

/** Documents written, against what an independent reader finds in them. */
class JsonBytesTest {
  private static final long SEED = 20_814;
  private static final ObjectMapper READER = new ObjectMapper();

  private final JsonBytes json = new JsonBytes(1);

  @Test
  void writesMembersAndItemsInOrder() {
    json.object();
    json.text("word", "as it is");
    json.object("empty");
    json.endObject();
    json.array("items");
    json.object();
    json.whole("least", Integer.MIN_VALUE);
    json.flag("no", false);
    json.endObject();
    json.number(0.5);
    json.text("b");
    json.endArray();
    json.texts("none", List.of());
    json.number("lengthMm", 0.012345678, UnitSuffix.MM);
    json.number("absent", Double.NaN);
    json.number("unbounded", Double.POSITIVE_INFINITY);
    json.flag("yes", true);
    json.endObject();
    assertThat(json)
        .hasToString(
            "{\"word\":\"as it is\",\"empty\":{},\"items\":[{\"least\":-2147483648,\"no\":false},"
                + "0.5,\"b\"],\"none\":[],\"lengthMm\":12.3457,\"yes\":true}");
  }

  @Test
  void isReadAsItWasWritten() throws IOException {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 20_000; round++) {
      String text = text(random);
      json.clear();
      json.object();
      json.text("text", text);
      json.endObject();
      JsonNode read = READER.readTree(json.toByteArray());
      assertThat(read.path("text").textValue())
          .as("seed %d, round %d", SEED, round)
          .isEqualTo(text);
    }
  }

  /** Every kind of character, those that need an escape more often. */
  private static String text(SplittableRandom random) {
    StringBuilder text = new StringBuilder();
    int length = random.nextInt(30);
    for (int i = 0; i < length; i++) {
      switch (random.nextInt(12)) {
        case 0 -> text.append('"');
        case 1 -> text.append('\\');
        case 2 -> text.append((char) random.nextInt(0x20));
        case 3 -> text.append((char) random.nextInt(0x7F, 0x800));
        case 4 -> text.append((char) random.nextInt(0x800, 0xD800));
        case 5 -> text.appendCodePoint(random.nextInt(0x10000, 0x110000));
        default -> text.append((char) random.nextInt(0x20, 0x7F));
      }
    }
    return text.toString();
  }

  /** RFC 8259, section 7: control characters, quotation mark and reverse solidus alone. */
  @Test
  void escapesWhatMustBe() {
    json.text("\"\\/\b\f\n\r\t\u0000\u001f\u007f µ");
    assertThat(json).hasToString("\"\\\"\\\\/\\b\\f\\n\\r\\t\\u0000\\u001F\u007f µ\"");
  }

  /** What is written as a word is copied as it is. */
  @Test
  void wordsNeedNoEscape() {
    Stream<String> codes =
        Stream.of(Codes.reasons(), Codes.limits(), Codes.CAUTIONS, Codes.STEPS)
            .flatMap(List::stream);
    Stream<String> ids =
        Stream.of(
                Arrays.stream(Criterion.values()).map(Criterion::id),
                Arrays.stream(Tone.values()).map(Tone::id),
                Arrays.stream(Severity.values()).map(Severity::id),
                Arrays.stream(Standing.values()).map(Standing::id))
            .flatMap(each -> each);
    assertThat(Stream.concat(codes, ids).toList()).allMatch(word -> word.matches("[a-z0-9-]+"));
  }

  @Test
  void keepsAllDigitsWhereAsked() throws IOException {
    for (double value : new double[] {1e9, 1e14, -3, 0.1, 2e-3, 1e300, Math.PI}) {
      json.clear();
      json.exact(value);
      assertThat(READER.readTree(json.toByteArray()).doubleValue()).isEqualTo(value);
    }
    json.clear();
    json.exact(1e9);
    assertThat(json).hasToString("1000000000");
  }
}
