package org.gaugeline.http;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.config.EncoderConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whole lists over HTTP: each format in and out, in place faults, streaming both ways. */
@QuarkusTest
class ToolListContractTest {
  private static final String PATH = "/v1/tool-list-checks";
  private static final String JSON = "application/json";
  private static final String NDJSON = "application/x-ndjson";
  private static final String CSV = "text/csv";
  private static final Path LISTS = Path.of("demo-data", "tool-lists");

  @TestHTTPResource
  @SuppressWarnings("NullAway.Init") // The framework fills it.
  URI server;

  private static String demo(String file) {
    try {
      return Files.readString(LISTS.resolve(file));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static Response post(String body, String type, String accept, String query) {
    return asSent()
        .header("Content-Type", type)
        .header("Accept", accept)
        .body(body.getBytes(StandardCharsets.UTF_8))
        .post(PATH + query);
  }

  /** The client shall not add an encoding of its own to the media type. */
  private static RequestSpecification asSent() {
    EncoderConfig plain =
        EncoderConfig.encoderConfig().appendDefaultContentCharsetToContentTypeIfUndefined(false);
    return given().config(RestAssuredConfig.config().encoderConfig(plain));
  }

  private static JsonNode check(String body) {
    Response response = post(body, JSON, JSON, "");
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(200);
    JsonNode answer = ContractSchemas.parse(response.asString());
    assertThat(ContractSchemas.faults("ToolListReport", answer)).isEmpty();
    assertThat(response.asString()).doesNotContain("null", "NaN", "Infinity");
    return answer;
  }

  private static List<JsonNode> ndjson(String text) {
    return text.lines().map(ContractSchemas::parse).toList();
  }

  private static List<String> codes(JsonNode findings, String severity) {
    List<String> codes = new ArrayList<>();
    findings.forEach(
        f -> {
          if (f.path("severity").asText().equals(severity)) {
            codes.add(f.path("code").asText());
          }
        });
    return codes;
  }

  @Test
  void findsThePlantedMistakes() {
    JsonNode answer = check(demo("pump-housing.json"));
    assertThat(answer.path("verdict").asText()).isEqualTo("failed");
    JsonNode lines = answer.path("lines");
    assertThat(lines.at("/0/verdict").asText()).isNotEqualTo("unfit");
    assertThat(codes(lines.at("/2/findings"), "error")).contains("bore-and-shank-differ");
    assertThat(lines.at("/3/verdict").asText()).isEqualTo("unfit");
    assertThat(lines.at("/4/problem/errors/0/pointer").asText()).isEqualTo("/operation/kind");
    assertThat(codes(answer.path("listFindings"), "error")).containsExactly("duplicate-id");
    assertThat(codes(answer.path("listFindings"), "warning"))
        .containsExactlyInAnyOrder("stock-missing", "stock-missing");
    assertThat(answer.at("/totals/lines").asInt()).isEqualTo(6);
    assertThat(answer.at("/totals/problems").asInt()).isEqualTo(1);
  }

  /** A line says the same alone as within a list, as one JSON object a line, and as a table. */
  @Test
  void saysTheSameOfALineInEveryFormat() {
    JsonNode body = ContractSchemas.parse(demo("pump-housing.json"));
    JsonNode whole = check(body.toString());
    StringBuilder text = new StringBuilder("{\"list\":" + body.path("list") + "}\n\n");
    body.path("lines").forEach(line -> text.append(line).append("\r\n"));
    List<JsonNode> answers = ndjson(post(text.toString(), NDJSON, "*/*", "").asString());
    assertThat(answers).hasSize(7);
    for (int i = 0; i < 6; i++) {
      JsonNode one = whole.path("lines").get(i);
      JsonNode other = answers.get(i);
      for (String member : List.of("id", "verdict", "findings", "limits", "problem")) {
        assertThat(other.path(member)).as("%s of line %d", member, i).isEqualTo(one.path(member));
      }
      assertThat(other.path("line").asInt()).isEqualTo(i + 3);
    }
    assertThat(answers.get(6).path("totals")).isEqualTo(whole.path("totals"));
    assertThat(answers.get(6).path("verdict")).isEqualTo(whole.path("verdict"));

    ObjectNode alone = body.path("list").deepCopy();
    alone.remove(List.of("failOn", "artifactUri"));
    ((ObjectNode) alone.path("machine")).remove("pockets");
    ((ObjectNode) alone.path("shop")).remove("stock");
    ObjectNode asked = body.path("lines").get(0).deepCopy();
    asked.remove("id");
    ((ObjectNode) asked.path("operation")).put("coolant", "flood");
    ((ObjectNode) asked.path("feature")).put("wallClearanceMm", 0.5);
    alone.setAll(asked);
    JsonNode assessed =
        ContractSchemas.parse(
            given().contentType(JSON).body(alone.toString()).post("/v1/assessments").asString());
    assertThat(assessed.path("findings")).isEqualTo(whole.at("/lines/0/findings"));
  }

  @Test
  void readsATableOfPeople() {
    Response response = post(demo("pump-housing.csv"), CSV, NDJSON, "?failOn=warning");
    List<JsonNode> answers = ndjson(response.asString());
    assertThat(answers).hasSize(7);
    assertThat(answers.get(0).path("line").asInt()).isEqualTo(2);
    assertThat(answers.get(2).path("line").asInt()).as("after a blank line").isEqualTo(5);
    assertThat(codes(answers.get(2).path("findings"), "error")).contains("bore-and-shank-differ");
    JsonNode fault = answers.get(4).at("/problem/errors/0");
    assertThat(fault.path("pointer").asText()).isEqualTo("/operation/axialDepthMm");
    assertThat(fault.path("code").asText()).isEqualTo("unreadable-cell");
    assertThat(fault.path("detail").asText()).contains("1.200,5", "thousands");
    JsonNode totals = answers.get(6);
    assertThat(codes(totals.path("listFindings"), "note")).containsExactly("unknown-column");
    assertThat(codes(totals.path("listFindings"), "error")).containsExactly("duplicate-id");
    assertThat(totals.path("verdict").asText()).isEqualTo("failed");
  }

  @Test
  void answersWhereInchAndMillimetreSayTheSame() {
    String metric =
        "id;workpiece.material;operation.kind;operation.cuttingSpeedMPerMin;feature.raUm;"
            + "feature.toleranceBandUm;tool.kind;tool.diameterMm;machine.interface;holder.family;"
            + "holder.massKg;stickOutMm\n"
            + "a;C45;side-milling;152,4;3,175;50,8;end-mill;12,7;BT40;hydraulic;1,81436948;50,8\n";
    String inch =
        "id,workpiece.material,operation.kind,operation.cuttingSpeedFtPerMin,feature.raMicroinch,"
            + "feature.toleranceBandTenths,tool.kind,tool.diameterIn,machine.interface,"
            + "holder.family,holder.massLb,stickOutIn\n"
            + "a,C45,side-milling,500,125,20,end-mill,0.5,BT40,hydraulic,4,2\n";
    String one = post(metric, CSV, NDJSON, "").asString().lines().findFirst().orElse("");
    String other = post(inch, CSV, NDJSON, "").asString().lines().findFirst().orElse("");
    assertThat(one).contains("verdict").isEqualTo(other);
  }

  @Test
  void readsSymbolsInJsonAndTables() {
    String json =
        "{'list':{'workpiece':{'material':'C45'},'machine':{'interface':'BT40'}},'lines':[{'id':'a',"
            + "'operation':{'kind':'side-milling'},'tool':{'kind':'end-mill'},'DC':12,'NOF':4,"
            + "'LCF':26,'OAL':83,'DMM':12,'CZCMS':'BT 40','LPR':100,'LF':140,"
            + "'assembly':{'components':[{'family':'er-collet'}]}}]}";
    JsonNode line = check(json.replace('\'', '"')).at("/lines/0");
    String table =
        "id,workpiece.material,operation.kind,tool.kind,DC [in],NOF,LCF,OAL,DMM,CZCMS,LPR,LF,"
            + "holder.family\n"
            + "a,C45,side-milling,end-mill,0.47244094488,4,26,83,12,BT 40,100,140,er-collet\n";
    JsonNode row = ndjson(post(table, CSV, NDJSON, "").asString()).get(0);
    assertThat(line.path("verdict").asText()).isNotEmpty();
    assertThat(row.path("findings").findValuesAsText("code"))
        .isEqualTo(line.path("findings").findValuesAsText("code"));
  }

  @ParameterizedTest
  @CsvSource({
    "application/sarif+json, {",
    "application/xml, <?xml",
    "text/csv, id",
    "application/json, {",
    "application/x-ndjson, {"
  })
  void answersInEachFormatTheSameBytesAgain(String accept, String start) {
    for (String[] in : new String[][] {{"pump-housing.json", JSON}, {"pump-housing.csv", CSV}}) {
      Response response = post(demo(in[0]), in[1], accept, "");
      assertThat(response.statusCode()).as(response.asString()).isEqualTo(200);
      assertThat(response.contentType()).startsWith(accept);
      assertThat(response.asString()).startsWith(start);
      assertThat(post(demo(in[0]), in[1], accept, "").asByteArray())
          .isEqualTo(response.asByteArray());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{} | application/json | /lines | required | 422",
        "{'lines':[]} | application/json | /lines | required | 422",
        "{'lines':[{}],'lst':{}} | application/json | /lst | unknown-field | 422",
        "{'lines':[{}],'list':{'machine':{'interface':'HSK-A64'}}} | application/json"
            + " | /list/machine/interface | unknown-interface | 422",
        "{'lines':[{}],'list':{'failOn':'never'}} | application/json | /list/failOn"
            + " | unknown-value | 422",
        "{'list':{'machine':{'pockets':0}}} | application/x-ndjson | /list/machine/pockets"
            + " | out-of-range | 422",
        "{'list':{}} | application/x-ndjson | `` | required | 422",
        "id;tool.diameterMm | text/csv | `` | required | 422",
        "[1 | application/json | `` | malformed | 400"
      })
  void refusesAListThatIsWrongAsAWhole(
      String body, String type, String pointer, String code, int status) {
    Response response = post(body.replace('\'', '"'), type, JSON, "");
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(status);
    assertThat(Problems.problem(response).path("errors"))
        .anySatisfy(
            fault -> {
              assertThat(fault.path("pointer").asText()).isEqualTo(pointer);
              assertThat(fault.path("code").asText()).isEqualTo(code);
            });
  }

  @Test
  void answersBadLinesInTheirPlace() {
    String lines =
        """
        {"id":"a"}
        {broken
        [1]
        null
        {"id":7,"tool":{"diameterMm":1e999}}
        \0
        {"id":"b","id":"c"}
        """;
    List<JsonNode> answers = ndjson(post(lines, NDJSON, NDJSON, "").asString());
    assertThat(answers).hasSize(8);
    for (int i = 0; i < 7; i++) {
      assertThat(answers.get(i).path("line").asInt()).isEqualTo(i + 1);
      assertThat(answers.get(i).path("problem").path("status").asInt()).isBetween(400, 422);
      assertThat(ContractSchemas.faults("LineReport", answers.get(i))).isEmpty();
    }
    assertThat(answers.get(7).at("/totals/problems").asInt()).isEqualTo(7);
    assertThat(answers.get(7).path("verdict").asText()).isEqualTo("failed");
  }

  /** A line that nobody would send stops no other. */
  @Test
  void goesOnAfterLinesThatBreakTheirOwnShape() {
    String lines =
        """
        {"id":"a","LPR":75,"LF":120,"assembly":"x"}
        {"id":"b","DMM":10,"DCONMS":10,"tool":[1]}
        {"label":"LABEL"}
        {"id":"d"}
        """
            .replace("LABEL", "x".repeat(300));
    List<JsonNode> answers = ndjson(post(lines, NDJSON, NDJSON, "").asString());
    assertThat(answers).hasSize(5);
    for (int i = 0; i < 4; i++) {
      assertThat(answers.get(i).at("/problem/status").asInt()).isEqualTo(422);
    }
    assertThat(answers.get(0).path("id").asText()).isEqualTo("a");
    assertThat(answers.get(2).path("id").asText()).as("a label too long").isEqualTo("line 3");
    String json = "{\"lines\":[" + lines.strip().replace("\n", ",") + "]}";
    assertThat(check(json).path("lines")).hasSize(4);
  }

  @Test
  void listsSomeFaultsOfALineAndCountsTheRest() {
    StringBuilder line = new StringBuilder("{\"id\":\"a\"");
    for (int i = 0; i < 100; i++) {
      line.append(",\"a").append(i).append("\":1");
    }
    JsonNode problem = check("{\"lines\":[" + line + "}]}").at("/lines/0/problem");
    assertThat(problem.path("errors")).hasSize(20);
    assertThat(problem.path("detail").asText()).contains("faults", "20 are listed");
  }

  @Test
  void saysWhyAHeaderCannotBeRead() {
    byte[] latin = "id;gr\u00f6\u00dfe\n1;2\n".getBytes(StandardCharsets.ISO_8859_1);
    Response response =
        asSent().header("Content-Type", CSV).header("Accept", JSON).body(latin).post(PATH);
    assertThat(response.statusCode()).isEqualTo(400);
    assertThat(Problems.problem(response).path("detail").asText()).contains("UTF-8");
    Response told =
        asSent()
            .header("Content-Type", CSV + ";charset=ISO-8859-1")
            .header("Accept", JSON)
            .body(latin)
            .post(PATH);
    assertThat(told.statusCode()).isEqualTo(200);
    assertThat(told.asString()).contains("gr\u00f6\u00dfe");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "application/json;q=0 | 406",
        "application/json;q=0, text/csv | text/csv",
        "application/json;q=0, application/* | application/x-ndjson",
        "text/csv;q=0.5, application/sarif+json | application/sarif+json",
        "*/* | application/json"
      })
  void answersInWhatIsAccepted(String accept, String expected) {
    Response response = post(demo("pump-housing.json"), JSON, accept, "");
    String got =
        response.statusCode() == 200
            ? response.contentType().split(";", -1)[0]
            : String.valueOf(response.statusCode());
    assertThat(got).isEqualTo(expected);
  }

  @Test
  void refusesWhatItCannotReadOrWrite() {
    assertThat(post("x", CSV + ";charset=utf-16", JSON, "").statusCode()).isEqualTo(415);
    assertThat(post("x", "text/plain", JSON, "").statusCode()).isEqualTo(415);
    assertThat(post(demo("pump-housing.json"), JSON, "image/png", "").statusCode()).isEqualTo(406);
    assertThat(post(demo("pump-housing.json"), JSON, JSON, "?failOn=x").statusCode())
        .isEqualTo(422);
    assertThat(given().get(PATH).statusCode()).isEqualTo(405);
  }

  /** The first answer arrives while the last line has not been sent yet. */
  @Test
  void answersTheFirstLineBeforeTheLastIsSent() throws IOException {
    try (Socket socket = new Socket(server.getHost(), server.getPort())) {
      socket.setSoTimeout(20_000);
      OutputStream out = socket.getOutputStream();
      out.write(
          ("POST "
                  + PATH
                  + " HTTP/1.1\r\nHost: test\r\nContent-Type: application/x-ndjson\r\n"
                  + "Accept: application/x-ndjson\r\nTransfer-Encoding: chunked\r\n"
                  + "Connection: close\r\n\r\n")
              .getBytes(StandardCharsets.US_ASCII));
      chunk(out, "{\"id\":\"first\"}\n{\"id\":\"second\"}\n");
      BufferedReader in =
          new BufferedReader(
              new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
      assertThat(in.readLine()).contains("200");
      String line = in.readLine();
      while (!line.startsWith("{")) {
        line = in.readLine();
      }
      assertThat(line).contains("\"id\":\"first\"");
      chunk(out, "{\"id\":\"last\"}\n");
      out.write("0\r\n\r\n".getBytes(StandardCharsets.US_ASCII));
      out.flush();
      List<String> rest = in.lines().filter(l -> l.startsWith("{")).toList();
      assertThat(rest).hasSize(3);
      assertThat(rest.get(2)).contains("\"totals\":{\"lines\":3");
    }
  }

  private static void chunk(OutputStream out, String text) throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    out.write((Integer.toHexString(bytes.length) + "\r\n").getBytes(StandardCharsets.US_ASCII));
    out.write(bytes);
    out.write("\r\n".getBytes(StandardCharsets.US_ASCII));
    out.flush();
  }
}
