package org.cotyla.testcases.dmn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.ByteArrayInputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.cotyla.dmn.DmnExport;
import org.cotyla.protocol.Protocol;
import org.cotyla.testcases.generated.RandomProtocol;
import org.cotyla.testcases.house.House;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.xml.sax.SAXException;

@DisplayName("The file of an exported model")
class ExportFormTest {

  /** The schema of DMN 1.5 as the OMG publishes it, which Drools' jars carry. */
  private static final String SCHEMA = "/org/omg/spec/DMN/20230324/DMN15.xsd";

  private static Schema schema() throws SAXException {
    URL schema = Objects.requireNonNull(ExportFormTest.class.getResource(SCHEMA));
    return SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI).newSchema(schema);
  }

  private static void valid(Schema schema, String name, Protocol protocol) {
    byte[] file = DmnExport.of(protocol).bytes();
    assertThatCode(
            () -> schema.newValidator().validate(new StreamSource(new ByteArrayInputStream(file))))
        .as(name)
        .doesNotThrowAnyException();
  }

  @Test
  @DisplayName("is valid against the standard's schema, for the house protocol and 100 random ones")
  void validBySchema() throws SAXException {
    Schema schema = schema();
    valid(schema, "house", House.engine().protocol());
    for (long seed = 0; seed < 100; seed++) {
      valid(schema, "random " + seed, RandomProtocol.of(seed));
    }
  }

  @Test
  @DisplayName("is the same bytes each time")
  void sameBytes() {
    Protocol protocol = House.engine().protocol();
    assertThat(DmnExport.of(protocol).bytes()).isEqualTo(DmnExport.of(protocol).bytes());
  }

  @Test
  @DisplayName("carries the id, the reason and the sources of every row, and the caution")
  void annotations() {
    Protocol protocol = House.engine().protocol();
    String text = new String(DmnExport.of(protocol).bytes(), StandardCharsets.UTF_8);
    assertThat(text).contains(escaped(protocol.about().caution()));
    protocol
        .allRows()
        .forEach(
            row -> {
              assertThat(text).contains("<text>" + escaped(row.id()) + "</text>");
              assertThat(text).contains(">" + escaped(row.because()) + "<");
              assertThat(text).contains(">" + String.join(", ", row.sources()) + "<");
            });
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
