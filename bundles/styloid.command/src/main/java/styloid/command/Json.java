package styloid.command;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.Writer;
import java.util.Collection;

/** JSON as all commands write it: indented, and the same bytes on every system and terminal. */
final class Json {
  private Json() {}

  /** What is written. */
  interface Content {
    void to(JsonGenerator json) throws IOException;
  }

  static void write(Writer out, Content content) throws IOException {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(indenter);
    printer.indentArraysWith(indenter);
    JsonFactory factory =
        JsonFactory.builder()
            .enable(JsonWriteFeature.ESCAPE_NON_ASCII)
            .disable(com.fasterxml.jackson.core.StreamWriteFeature.AUTO_CLOSE_TARGET)
            .enable(com.fasterxml.jackson.core.StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();
    try (JsonGenerator json = factory.createGenerator(out)) {
      json.setPrettyPrinter(printer);
      content.to(json);
      json.writeRaw('\n');
    }
  }

  static void strings(JsonGenerator json, String name, Collection<?> values) throws IOException {
    json.writeArrayFieldStart(name);
    for (Object value : values) {
      json.writeString(value.toString());
    }
    json.writeEndArray();
  }
}
