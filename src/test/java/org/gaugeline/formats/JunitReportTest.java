package org.gaugeline.formats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.gaugeline.assessment.Severity;
import org.gaugeline.toollist.FailOn;
import org.gaugeline.toollist.LineResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** JUnit reports against the common schema, and what a build server reads in them. */
class JunitReportTest {
  private static byte[] bytes(List<LineResult> lines, FailOn failOn) throws IOException {
    return SampleLines.written(
        out -> new JunitReport(out, SampleLines.WORDS, failOn), lines, failOn);
  }

  private static void validate(byte[] report) throws IOException, SAXException {
    URL schema =
        Objects.requireNonNull(
            JunitReportTest.class.getResource("/schemas/junit-test-report-3.0.2.xsd"));
    SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI)
        .newSchema(schema)
        .newValidator()
        .validate(new StreamSource(new ByteArrayInputStream(report)));
  }

  private static Element suite(List<LineResult> lines, FailOn failOn)
      throws IOException, SAXException, ParserConfigurationException {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(bytes(lines, failOn)))
        .getDocumentElement();
  }

  private static Element only(Element suite, String testCase) {
    NodeList cases = suite.getElementsByTagName("testcase");
    for (int i = 0; i < cases.getLength(); i++) {
      if (cases.item(i) instanceof Element each && each.getAttribute("name").equals(testCase)) {
        return each;
      }
    }
    throw new AssertionError("no test case " + testCase);
  }

  private static Element child(Element testCase, String name) {
    NodeList found = testCase.getElementsByTagName(name);
    assertThat(found.getLength()).as("%s of %s", name, testCase.getAttribute("name")).isEqualTo(1);
    return (Element) found.item(0);
  }

  @ParameterizedTest
  @EnumSource(FailOn.class)
  void isValidByTheCommonSchema(FailOn failOn) throws IOException, SAXException {
    validate(bytes(SampleLines.all(), failOn));
    validate(bytes(List.of(), failOn));
    byte[] wrong =
        SampleLines.utf8(bytes(List.of(), failOn))
            .replace("tests=", "texts=")
            .getBytes(StandardCharsets.UTF_8);
    assertThatThrownBy(() -> validate(wrong)).isInstanceOf(SAXException.class);
  }

  @Test
  void aFailedLineNamesItsHardestFinding() throws Exception {
    Element suite =
        suite(
            List.of(SampleLines.found("T1", 1, Severity.NOTE, Severity.ERROR, Severity.WARNING)),
            FailOn.ERROR);
    Element failure = child(only(suite, "T1"), "failure");
    assertThat(failure.getAttribute("type")).isEqualTo("runout");
    assertThat(failure.getAttribute("message")).isNotBlank();
    assertThat(failure.getTextContent())
        .contains("error runout: ", "warning pull-out: ", "note slip: ");
  }

  @Test
  void warningsFailWhereTheCallerSaysSo() throws Exception {
    List<LineResult> lines = List.of(SampleLines.found("T1", 1, Severity.NOTE, Severity.WARNING));
    Element told = child(only(suite(lines, FailOn.ERROR), "T1"), "system-out");
    assertThat(told.getTextContent()).contains("warning runout: ", "note slip: ");
    assertThat(child(only(suite(lines, FailOn.WARNING), "T1"), "failure").getAttribute("type"))
        .isEqualTo("runout");
  }

  @Test
  void refusedLinesAreErrors() throws Exception {
    Element error = child(only(suite(SampleLines.all(), FailOn.ERROR), "T05"), "error");
    assertThat(error.getAttribute("type")).isEqualTo("invalid-request");
    assertThat(error.getTextContent()).contains("/tool/diameterMm", "-4 mm", "0 teeth");
  }

  @ParameterizedTest
  @EnumSource(FailOn.class)
  void countsAddUpAndFailWhenTheListFails(FailOn failOn) throws Exception {
    List<List<LineResult>> lists =
        List.of(
            SampleLines.all(),
            List.of(SampleLines.found("T1", 1, Severity.WARNING)),
            List.of(SampleLines.found("T1", 1), SampleLines.found("T2", 2, Severity.NOTE)),
            List.of(SampleLines.found("T1", 1), SampleLines.found("T1", 2)),
            List.of(
                SampleLines.found("A", 1), SampleLines.found("B", 2), SampleLines.found("C", 3)),
            List.of(SampleLines.refused("T1", 1)));
    for (List<LineResult> lines : lists) {
      Element suite = suite(lines, failOn);
      int failures = suite.getElementsByTagName("failure").getLength();
      int errors = suite.getElementsByTagName("error").getLength();
      assertThat(suite.getAttribute("failures")).isEqualTo(Integer.toString(failures));
      assertThat(suite.getAttribute("errors")).isEqualTo(Integer.toString(errors));
      assertThat(suite.getAttribute("tests"))
          .isEqualTo(Integer.toString(suite.getElementsByTagName("testcase").getLength()));
      assertThat(failures + errors == 0)
          .as("%s of %s", failOn, lines.get(0).place().id())
          .isEqualTo(SampleLines.summary(lines, failOn).passed());
    }
  }

  @Test
  void awkwardIdsAreCarriedButForControls() throws Exception {
    Element suite = suite(SampleLines.all(), FailOn.ERROR);
    assertThat(only(suite, "T\"1\" <&> 'x', ;  \uD83D\uDD27[a](0){1}]]>")).isNotNull();
    assertThat(SampleLines.utf8(bytes(SampleLines.all(), FailOn.ERROR)))
        .doesNotContain("timestamp");
  }

  @Test
  void sameBytesTwice() throws IOException {
    assertThat(bytes(SampleLines.all(), FailOn.ERROR))
        .isEqualTo(bytes(SampleLines.all(), FailOn.ERROR));
  }
}
