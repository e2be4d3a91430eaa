package org.gaugeline.http;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is sent, the answer says what is wrong with it, and where. */
@QuarkusTest
class BadInputTest {
  private static final String ADDRESS = "/v1/recommendations";
  private static final String LEAST =
      "{'workpiece':{'material':'C45'},'operation':{'kind':'side-milling'},"
          + "'tool':{'kind':'end-mill','diameterMm':12},'machine':{'interface':'BT40'}}";

  /** The test server's address, known once it runs. */
  private static URI address() {
    return URI.create("http://localhost:" + RestAssured.port + ADDRESS);
  }

  @Test
  void answersTheLeastIntent() {
    assertThat(post(json(LEAST)).statusCode()).isEqualTo(200);
  }

  /** Bodies that are not I-JSON (RFC 7493, RFC 8259). */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "empty | ``",
        "blank | ` `",
        "truncated | {'workpiece':{'material':",
        "no JSON | hello",
        "two documents | {} {}",
        "trailing comma | {'label':'a',}",
        "NaN | {'tool':{'diameterMm':NaN}}",
        "Infinity | {'tool':{'diameterMm':Infinity}}",
        "-Infinity | {'tool':{'diameterMm':-Infinity}}",
        "leading zero | {'tool':{'diameterMm':012}}",
        "hexadecimal | {'tool':{'diameterMm':0x12}}",
        "duplicate member | {'label':'a','label':'b'}",
        "comment | {/* a */}",
        "lone surrogate | {'label':'\\ud800'}",
        "lone surrogate in a name | {'\\udc00':1}",
        "raw control character | {'label':'a\u0001b'}"
      })
  void refusesWhatIsNotIJson(String name, String body) {
    Response response = post(json(body));
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(400);
    JsonNode problem = Problems.problem(response);
    assertThat(problem.path("type").asText()).endsWith(":malformed-body");
    assertThat(problem.at("/errors/0/pointer").asText("missing")).isEmpty();
  }

  @Test
  void refusesBytesThatAreNotUtf8() {
    for (byte[] body :
        List.of(
            new byte[] {'{', '"', (byte) 0xC3, '"', ':', '1', '}'},
            new byte[] {'{', '"', (byte) 0xED, (byte) 0xA0, (byte) 0x80, '"', ':', '1', '}'},
            json(LEAST).replace("C45", "Ä").getBytes(StandardCharsets.ISO_8859_1),
            json(LEAST).getBytes(StandardCharsets.UTF_16LE))) {
      Response response = given().contentType("application/json").body(body).post(ADDRESS);
      assertThat(response.statusCode()).as(response.asString()).isEqualTo(400);
      Problems.problem(response);
    }
  }

  @Test
  void refusesDeepNesting() {
    for (int depth : new int[] {33, 10_000}) {
      Response response = post("[".repeat(depth) + "]".repeat(depth));
      assertThat(response.statusCode()).as("depth " + depth).isEqualTo(400);
      assertThat(Problems.problem(response).path("detail").asText()).contains("deeper than 32");
    }
    assertThat(post("[".repeat(32) + "]".repeat(32)).statusCode()).isEqualTo(422);
  }

  /** Well-formed bodies with one fault: member set to a value, pointer and code of the fault. */
  @ParameterizedTest(name = "{0} = {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "/tool/diameterMm | 0 | out-of-range",
        "/tool/diameterMm | -0 | out-of-range",
        "/tool/diameterMm | -0.0 | out-of-range",
        "/tool/diameterMm | -12 | out-of-range",
        "/tool/diameterMm | 1e308 | out-of-range",
        "/tool/diameterMm | 1e999 | not-finite",
        "/tool/diameterMm | -1e999 | not-finite",
        "/tool/diameterMm | 1e-320 | out-of-range",
        "/tool/diameterMm | null | null",
        "/tool/diameterMm | '12' | wrong-type",
        "/tool/diameterMm | true | wrong-type",
        "/tool/diameterMm | [12] | wrong-type",
        "/tool/diameterMm | {} | wrong-type",
        "/tool/teeth | 3.5 | wrong-type",
        "/tool/teeth | 4.0 | wrong-type",
        "/tool/teeth | 0 | out-of-range",
        "/tool/teeth | 99999999999 | out-of-range",
        "/tool/teeth | 1e999 | not-finite",
        "/tool/helixDeg | 69 | out-of-range",
        "/tool/fluteLengthMm | 1e-300 | out-of-range",
        "/tool/neckLengthMm | 1e-300 | out-of-range",
        "/tool/lifeMinutes | 1e-300 | out-of-range",
        "/operation/axialDepthMm | 5e-324 | out-of-range",
        "/operation/radialDepthMm | 5e-324 | out-of-range",
        "/operation/radialDepthMm | 1e-9 | out-of-range",
        "/operation/partsPerYear | 1e-300 | out-of-range",
        "/operation/minutesPerPart | 1e-300 | out-of-range",
        "/tool/teeth | 99999999999999999999999999 | out-of-range",
        "/tool/kind | 'endmill' | unknown-value",
        "/tool/kind | 7 | wrong-type",
        "/tool/kind | null | null",
        "/tool/fluteLengthMm | 1001 | out-of-range",
        "/tool/theeth | 4 | unknown-field",
        "/tool/shank | [] | wrong-type",
        "/tool/shank | null | null",
        "/operation/stage | 'rouhging' | unknown-value",
        "/operation/coolant | '' | unknown-value",
        "/label | 'a\\u0001b' | control-character",
        "/label | 'a\\nb' | control-character",
        "/workpiece/material | '' | too-short",
        "/tool/shank | {'tolerance':'H6'} | wrong-form",
        "/tool/shank | {'tolerance':'h19'} | wrong-form",
        "/tool/shank | {'tolerance':'-0.011'} | wrong-form",
        "/shop | {'stock':[{'ref':'g-none'}]} | unknown-holder",
        "/workpiece | {'material':'C45','hardnessHb':900} | hardness-outside-material",
        "/workpiece | {'material':'own','kc11NPerMm2':1800,'mc':0.2} | iso-group-needed",
        "/workpiece/material | 'C4X' | unknown-material",
        "/workpiece/material | 'Unobtainium' | unknown-material",
        "/machine/interface | 'BT-4O' | unknown-interface",
        "/shop | {'currency':'Euro'} | too-long",
        "/shop | {'excludedFamilies':['er-colet']} | unknown-value",
        "/shop | {'excludedFamilies':[null]} | null",
        "/shop | {'stock':[{}]} | required",
        "/shop | {'stock':[{'count':-1,'ref':'x'}]} | out-of-range",
        "/shop | {'stock':[{'ref':'x','family':'er-collet'}]} | contradiction",
        "/preferences | {'weights':{'accuracy':0,'grip':0,'reach':0,'speed':0}} | contradiction",
        "/preferences | {'confidence':95} | out-of-range"
      })
  void pointsAtTheFault(String pointer, String value, String code) {
    Response response = post(with(pointer, value));
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(422);
    JsonNode fault = Problems.problem(response).path("errors").get(0);
    assertThat(fault.path("code").asText()).isEqualTo(code);
    assertThat(fault.path("pointer").asText()).startsWith(pointer);
    assertThat(fault.path("detail").asText()).isNotBlank();
  }

  /** Pairs that cannot be true together: both members are named. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "/operation | {'kind':'side-milling','cuttingSpeedMPerMin':100,'spindleSpeedRpm':3000}"
            + " | /operation/cuttingSpeedMPerMin | /operation/spindleSpeedRpm",
        "/operation | {'kind':'side-milling','feedPerToothMm':0.1,'feedPerRevMm':0.2}"
            + " | /operation/feedPerToothMm | /operation/feedPerRevMm",
        "/tool | {'kind':'end-mill','diameterMm':12,'fluteLengthMm':90,'overallLengthMm':83}"
            + " | /tool/fluteLengthMm | /tool/overallLengthMm",
        "/tool | {'kind':'end-mill','diameterMm':12,'neckLengthMm':90,'overallLengthMm':83}"
            + " | /tool/neckLengthMm | /tool/overallLengthMm",
        "/tool | {'kind':'end-mill','diameterMm':12,'cornerRadiusMm':7}"
            + " | /tool/cornerRadiusMm | /tool/diameterMm",
        "/operation | {'kind':'side-milling','radialDepthMm':13}"
            + " | /operation/radialDepthMm | /tool/diameterMm",
        "/operation | {'kind':'reaming','preDrilledDiameterMm':12}"
            + " | /operation/preDrilledDiameterMm | /tool/diameterMm",
        "/operation | {'kind':'reaming','preDrilledDiameterMm':0}"
            + " | /operation/preDrilledDiameterMm | /tool/diameterMm",
        "/operation | {'kind':'reaming','preDrilledDiameterMm':0.2}"
            + " | /operation/preDrilledDiameterMm | /tool/diameterMm",
        "/operation | {'kind':'boring','preDrilledDiameterMm':12}"
            + " | /operation/preDrilledDiameterMm | /tool/diameterMm",
        "/operation | {'kind':'boring','preDrilledDiameterMm':0}"
            + " | /operation/preDrilledDiameterMm | /tool/diameterMm",
        "/operation | {'kind':'boring','radialDepthMm':6}"
            + " | /operation/radialDepthMm | /tool/diameterMm",
        "/operation | {'kind':'boring','radialDepthMm':1,'preDrilledDiameterMm':11}"
            + " | /operation/radialDepthMm | /operation/preDrilledDiameterMm",
        "/operation | {'kind':'tapping'} | /operation/kind | /tool/kind",
        "/tool | {'kind':'tap','diameterMm':12} | /operation/kind | /tool/kind",
        "/tool | {'kind':'thread-mill','diameterMm':12,'pitchMm':12}"
            + " | /tool/pitchMm | /tool/diameterMm",
        "/workpiece | {'material':'C45','isoGroup':'N'}"
            + " | /workpiece/isoGroup | /workpiece/material",
        "/feature | {'pocketWidthMm':6} | /tool/diameterMm | /feature/pocketWidthMm",
        "/machine | {'interface':'BT40','toolChanger':{'maxDiameterMm':100,'maxDiameterNeighboursEmptyMm':80}}"
            + " | /machine/toolChanger/maxDiameterMm | /machine/toolChanger/maxDiameterNeighboursEmptyMm"
      })
  void namesBothSidesOfAContradiction(String member, String value, String one, String other) {
    Response response = post(with(member, value));
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(422);
    assertThat(Problems.problem(response).path("errors").findValuesAsText("pointer"))
        .containsExactly(one, other);
  }

  @Test
  void tiltTakesFiveAxes() {
    String tilted = LEAST.replace("'BT40'}", "'BT40','axes':%d},'feature':{'tiltDeg':%d}");
    Response refused = post(json(String.format(Locale.ROOT, tilted, 3, -5)));
    assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(422);
    JsonNode errors = Problems.problem(refused).path("errors");
    assertThat(errors.findValuesAsText("pointer"))
        .containsExactly("/feature/tiltDeg", "/machine/axes");
    assertThat(errors.path(0).path("detail").asText())
        .contains("tiltDeg (-5)", "axes (3)", "wallDraftDeg");
    assertThat(post(json(String.format(Locale.ROOT, tilted, 5, -5))).statusCode()).isEqualTo(200);
    assertThat(post(json(String.format(Locale.ROOT, tilted, 3, 0))).statusCode()).isEqualTo(200);
  }

  @Test
  void listsAllFaultsAtOnce() {
    Response response =
        post(
            json(
                "{'lable':'a','workpiece':{'hardnessHb':5},'operation':{'kind':'side-miling',"
                    + "'cuttingSpeedMPerMin':100,'spindleSpeedRpm':3000},"
                    + "'tool':{'kind':'end-mill','diameterMm':'12','shank':null},"
                    + "'machine':{'interface':'BT40','axes':0.5}}"));
    JsonNode problem = Problems.problem(response);
    assertThat(problem.path("errors").findValuesAsText("pointer"))
        .containsExactlyInAnyOrder(
            "/lable",
            "/workpiece/material",
            "/workpiece/hardnessHb",
            "/operation/kind",
            "/operation/cuttingSpeedMPerMin",
            "/operation/spindleSpeedRpm",
            "/tool/diameterMm",
            "/tool/shank",
            "/machine/axes");
  }

  @Test
  void addsWhatOnlyTheTablesKnow() {
    Response response =
        post(
            json(LEAST)
                .replace("C45", "C4X")
                .replace("BT40", "BT4")
                .replace("{\"kind\":\"side", "{\"stage\":\"ruffing\",\"kind\":\"side"));
    assertThat(Problems.problem(response).path("errors").findValuesAsText("code"))
        .containsExactlyInAnyOrder("unknown-value", "unknown-material", "unknown-interface");
  }

  /** Names are looked up even where the rest of the body cannot be read. */
  @Test
  void addsUnknownNamesToFaultsOfOtherMembers() {
    Response response =
        post(
            json(LEAST)
                .replace("C45", "C4X")
                .replace("BT40", "BT4")
                .replace("\"diameterMm\":12", "\"diameterMm\":-1"));
    assertThat(Problems.problem(response).path("errors").findValuesAsText("pointer"))
        .containsExactlyInAnyOrder("/workpiece/material", "/machine/interface", "/tool/diameterMm");
  }

  /** Every name of a body is looked up, whatever else is wrong with it. */
  @Test
  void listsWhatTheTablesLackTogetherWithOtherFaults() {
    Response response =
        post(
            json(LEAST)
                .replace("C45", "C4X")
                .replace("\"diameterMm\":12", "\"diameterMm\":-1")
                .replace(
                    "\"machine\"",
                    json(
                        "'shop':{'stock':[{'ref':'g-none'},{'family':'er-collet','count':-1,"
                            + "'interface':'BT4'}]},'machine'")));
    assertThat(Problems.problem(response).path("errors"))
        .extracting(fault -> fault.path("pointer").asText() + " " + fault.path("code").asText())
        .containsExactlyInAnyOrder(
            "/workpiece/material unknown-material",
            "/tool/diameterMm out-of-range",
            "/shop/stock/0/ref unknown-holder",
            "/shop/stock/1/count out-of-range",
            "/shop/stock/1/interface unknown-interface");
  }

  @Test
  void asksForThePitchOfAThreadThatNoTableHas() {
    String tap =
        json(LEAST)
            .replace("side-milling", "tapping")
            .replace("end-mill", "tap")
            .replace("\"diameterMm\":12", "\"diameterMm\":11");
    JsonNode fault = Problems.problem(post(tap)).path("errors").path(0);
    assertThat(fault.path("pointer").asText()).isEqualTo("/tool/pitchMm");
    assertThat(fault.path("code").asText()).isEqualTo("pitch-needed");
  }

  @Test
  void listsTheRequiredLeavesOfAnEmptyBody() {
    assertThat(Problems.problem(post("{}")).path("errors").findValuesAsText("pointer"))
        .containsExactly(
            "/workpiece/material",
            "/operation/kind",
            "/tool/kind",
            "/tool/diameterMm",
            "/machine/interface");
  }

  @Test
  void namesWhatIsNear() {
    assertThat(near("/workpiece/material", "'42CrMo5'")).contains("42CrMo4");
    assertThat(near("/machine/interface", "'HSKA63'")).contains("HSK-A63");
    assertThat(near("/tool/kind", "'endmill'")).contains("end-mill");
    assertThat(near("/operation/axialDepth", "18")).contains("axialDepthMm");
    assertThat(near("/machine/interface", "'HSK63A'")).startsWith("HSK-A63");
    assertThat(near("/machine/interface", "'hsk a 63'")).startsWith("HSK-A63");
    assertThat(near("/machine/interface", "'Morse 4'")).isEmpty();
    assertThat(near("/workpiece/material", "'Unobtainium'")).isEmpty();
  }

  private static List<String> near(String pointer, String value) {
    List<String> names = new ArrayList<>();
    Problems.problem(post(with(pointer, value)))
        .at("/errors/0/parameters/nearest")
        .forEach(name -> names.add(name.asText()));
    return names;
  }

  @Test
  void refusesOtherMethodsTypesAndAddresses() {
    assertThat(status(given().put(ADDRESS))).isEqualTo(405);
    assertThat(given().put(ADDRESS).header("Allow")).contains("POST");
    assertThat(given().post("/v1/catalogue/materials").header("Allow")).contains("GET");
    assertThat(status(given().get(ADDRESS))).isEqualTo(405);
    assertThat(status(given().contentType("text/plain").body("{}").post(ADDRESS))).isEqualTo(415);
    assertThat(status(given().contentType("application/xml").body("<a/>").post(ADDRESS)))
        .isEqualTo(415);
    assertThat(
            status(
                given()
                    .contentType("application/json")
                    .accept("image/png")
                    .body(json(LEAST))
                    .post(ADDRESS)))
        .isEqualTo(406);
    for (String nowhere : List.of("/v1", "/v1/nothing", "/v1/catalogue/luck", "/nothing")) {
      assertThat(status(given().get(nowhere))).as(nowhere).isEqualTo(404);
    }
    assertThat(status(given().contentType("application/json").body("{}").post("/v1/nothing")))
        .isEqualTo(404);
    assertThat(status(given().get("/v1/stability-charts"))).isEqualTo(405);
    assertThat(
            status(
                given()
                    .contentType("application/json")
                    .accept("image/png")
                    .body(json(LEAST))
                    .post("/v1/stability-charts")))
        .isEqualTo(406);
  }

  private static int status(Response response) {
    Problems.problem(response);
    return response.statusCode();
  }

  @Test
  void refusesEncodedBodies() throws IOException, InterruptedException {
    HttpResponse<String> response =
        send(
            HttpRequest.newBuilder(address())
                .header("Content-Type", "application/json")
                .header("Content-Encoding", "gzip")
                .POST(HttpRequest.BodyPublishers.ofByteArray(new byte[] {31, -117, 8})));
    assertThat(response.statusCode()).isEqualTo(415);
    assertThat(response.headers().firstValue("Content-Type")).hasValue(Problem.MEDIA_TYPE);
  }

  @Test
  void refusesLongBodiesAnnouncedOrNot() throws IOException, InterruptedException {
    byte[] body = new byte[3 * 1024 * 1024];
    java.util.Arrays.fill(body, (byte) ' ');
    for (HttpRequest.BodyPublisher publisher :
        List.of(
            HttpRequest.BodyPublishers.ofByteArray(body),
            HttpRequest.BodyPublishers.ofInputStream(
                () -> new java.io.ByteArrayInputStream(body)))) {
      HttpResponse<String> response =
          send(
              HttpRequest.newBuilder(address())
                  .header("Content-Type", "application/json")
                  .POST(publisher));
      assertThat(response.statusCode()).isEqualTo(413);
      assertThat(response.body()).contains("body-too-large", "2097152");
    }
  }

  /** ISO 286-1: capitals name holes, small letters shafts. */
  @Test
  void teachesHowAToleranceIsWritten() {
    assertThat(detail("/tool/shank", "{'tolerance':'H6'}")).contains("Maybe h6 was meant");
    assertThat(detail("/tool/shank", "{'tolerance':'-0.011'}")).contains("a size or deviation");
    for (String sound : List.of("h6", "h5", "g6", "js7", "zc01")) {
      assertThat(post(with("/tool/shank", "{'tolerance':'" + sound + "'}")).statusCode())
          .as(sound)
          .isEqualTo(200);
    }
  }

  private static String detail(String pointer, String value) {
    return Problems.problem(post(with(pointer, value))).at("/errors/0/detail").asText();
  }

  /** The server itself refuses these, as the document says without a problem. */
  @Test
  void refusesChunksBeyondWhatTheServerReads() throws IOException, InterruptedException {
    byte[] body = new byte[33 * 1024 * 1024];
    java.util.Arrays.fill(body, (byte) ' ');
    HttpResponse<String> response =
        send(
            HttpRequest.newBuilder(address())
                .header("Content-Type", "application/json")
                .POST(
                    HttpRequest.BodyPublishers.ofInputStream(
                        () -> new java.io.ByteArrayInputStream(body))));
    assertThat(response.statusCode()).isEqualTo(413);
  }

  @ParameterizedTest
  @ValueSource(strings = {"/v1/%zz", "/v1/catalogue/materials/%", "/%"})
  void refusesBrokenAddresses(String address) throws IOException {
    String answer = raw("GET " + address + " HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n");
    assertThat(answer).startsWith("HTTP/1.1 400");
  }

  @Test
  void refusesLongAddresses() throws IOException {
    for (int length : new int[] {4100, 9000, 60_000}) {
      String path = "/v1/recommendations?x=" + "a".repeat(length);
      String answer = raw("GET " + path + " HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n");
      assertThat(answer).as("%d", length).startsWith("HTTP/1.1 414").contains(Problem.MEDIA_TYPE);
    }
  }

  /** Sent as it stands: clients would mend or refuse it. */
  private static String raw(String request) throws IOException {
    try (java.net.Socket socket = new java.net.Socket("localhost", RestAssured.port)) {
      socket.setSoTimeout(20_000);
      socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static HttpResponse<String> send(HttpRequest.Builder request)
      throws IOException, InterruptedException {
    return HttpClient.newBuilder()
        .version(HttpClient.Version.HTTP_1_1)
        .build()
        .send(request.build(), HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
  }

  @Test
  void readsTenThousandStockEntriesAndRefusesOneMore() {
    assertThat(post(stock(10_000)).statusCode()).isIn(200, 422);
    Response refused = post(stock(10_001));
    assertThat(refused.statusCode()).isEqualTo(422);
    JsonNode fault = Problems.problem(refused).at("/errors/0");
    assertThat(fault.path("pointer").asText()).isEqualTo("/shop/stock");
    assertThat(fault.path("code").asText()).isEqualTo("too-many");
  }

  @Test
  void listsTheFaultsOfTenThousandStockEntries() {
    Response refused = post(stock(10_000).replace("\"boreMm\":20", "\"boreMm\":-1"));
    assertThat(refused.statusCode()).isEqualTo(422);
    JsonNode problem = Problems.problem(refused);
    assertThat(problem.path("detail").asText()).contains("10000 faults");
    assertThat(problem.path("errors")).hasSize(1000);
  }

  private static String stock(int count) {
    String entries =
        IntStream.range(0, count)
            .mapToObj(
                i -> "{'family':'side-lock','boreMm':20,'projectionMm':" + (60 + i % 90) + "}")
            .collect(Collectors.joining(","));
    return with("/shop", "{'stock':[" + entries + "]}");
  }

  private static Response post(String body) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.writeBytes(body.getBytes(StandardCharsets.UTF_8));
    return given().contentType("application/json").body(bytes.toByteArray()).post(ADDRESS);
  }

  /** The least intent with a member set to the given JSON. */
  private static String with(String pointer, String value) {
    String placeholder = "\"@\"";
    com.fasterxml.jackson.databind.node.ObjectNode root =
        (com.fasterxml.jackson.databind.node.ObjectNode) ContractSchemas.parse(json(LEAST));
    int slash = pointer.lastIndexOf('/');
    com.fasterxml.jackson.databind.node.ObjectNode owner =
        slash == 0
            ? root
            : (com.fasterxml.jackson.databind.node.ObjectNode) root.at(pointer.substring(0, slash));
    owner.put(pointer.substring(slash + 1), "@");
    return root.toString().replace(placeholder, json(value));
  }

  private static String json(String singleQuoted) {
    return singleQuoted.replace('\'', '"');
  }
}
