package org.gaugeline.formats;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.gaugeline.toollist.ListSummary;
import org.gaugeline.toollist.Totals;

/** Test cases as an XML document. */
final class JunitDocument {
  private static final String SUITE = "tool-list";

  private JunitDocument() {}

  static void write(OutputStream out, List<JunitCase> cases, ListSummary summary)
      throws IOException {
    try {
      XMLStreamWriter xml =
          XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out, "UTF-8");
      xml.writeStartDocument("UTF-8", "1.0");
      suite(xml, cases, summary);
      xml.writeEndDocument();
      xml.flush();
      xml.close();
    } catch (XMLStreamException e) {
      throw new IOException("the report could not be written", e);
    }
  }

  private static void suite(XMLStreamWriter xml, List<JunitCase> cases, ListSummary summary)
      throws XMLStreamException {
    xml.writeStartElement("testsuite");
    attribute(xml, "name", SUITE);
    attribute(xml, "tests", Integer.toString(cases.size()));
    attribute(xml, "failures", count(cases, JunitCase.Outcome.FAILURE));
    attribute(xml, "errors", count(cases, JunitCase.Outcome.ERROR));
    attribute(xml, "skipped", "0");
    properties(xml, summary);
    for (JunitCase each : cases) {
      testCase(xml, each);
    }
    xml.writeEndElement();
  }

  private static String count(List<JunitCase> cases, JunitCase.Outcome outcome) {
    return Long.toString(cases.stream().filter(each -> each.outcome() == outcome).count());
  }

  private static void properties(XMLStreamWriter xml, ListSummary summary)
      throws XMLStreamException {
    Totals totals = summary.totals();
    xml.writeStartElement("properties");
    property(xml, "verdict", summary.passed() ? "passed" : "failed");
    property(xml, "lines", Long.toString(totals.lines()));
    property(xml, "fit", Long.toString(totals.fit()));
    property(xml, "fitWithCautions", Long.toString(totals.fitWithCautions()));
    property(xml, "unfit", Long.toString(totals.unfit()));
    property(xml, "problems", Long.toString(totals.problems()));
    xml.writeEndElement();
  }

  private static void property(XMLStreamWriter xml, String name, String value)
      throws XMLStreamException {
    xml.writeEmptyElement("property");
    attribute(xml, "name", name);
    attribute(xml, "value", value);
  }

  /** The common schema asks for a time; that of a line is not measured, so that answers repeat. */
  private static void testCase(XMLStreamWriter xml, JunitCase each) throws XMLStreamException {
    xml.writeStartElement("testcase");
    attribute(xml, "name", each.name());
    attribute(xml, "classname", SUITE);
    attribute(xml, "time", "0");
    switch (each.outcome()) {
      case FAILURE -> broken(xml, "failure", each);
      case ERROR -> broken(xml, "error", each);
      case PASSED -> {
        if (!each.body().isEmpty()) {
          xml.writeStartElement("system-out");
          text(xml, each.body());
          xml.writeEndElement();
        }
      }
    }
    xml.writeEndElement();
  }

  private static void broken(XMLStreamWriter xml, String element, JunitCase each)
      throws XMLStreamException {
    xml.writeStartElement(element);
    attribute(xml, "message", each.message());
    attribute(xml, "type", each.type());
    text(xml, each.body());
    xml.writeEndElement();
  }

  /** Breaks are blanks in an attribute, as every reader makes them. */
  private static void attribute(XMLStreamWriter xml, String name, String value)
      throws XMLStreamException {
    String clean = Characters.printable(value);
    xml.writeAttribute(name, clean.replace('\t', ' ').replace('\r', ' ').replace('\n', ' '));
  }

  private static void text(XMLStreamWriter xml, String value) throws XMLStreamException {
    xml.writeCharacters(Characters.printable(value).replace("\r\n", "\n").replace('\r', '\n'));
  }
}
