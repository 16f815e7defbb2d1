package styloid.command;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemKind;
import styloid.model.Side;
import styloid.model.Unit;
import styloid.spi.ResultDefinition;
import styloid.spi.TestDefinition;
import styloid.spi.Texts;

/** The modules as JSON, laid out in docs/commands.md. */
final class ModulesJson {
  private static final int FORMAT = 1;

  private final Texts texts;

  ModulesJson(Texts texts) {
    this.texts = texts;
  }

  static List<String> sides(Set<Side> sides) {
    return EnumSet.copyOf(sides).stream().map(Side::code).toList();
  }

  /** Codes of the digits; none when no digit is meant. */
  static List<String> digits(Set<Digit> digits) {
    return EnumSet.copyOf(digits).stream()
        .filter(digit -> digit != Digit.NONE)
        .map(Digit::code)
        .toList();
  }

  void write(JsonGenerator out, List<TestDefinition> tests) throws IOException {
    out.writeStartObject();
    out.writeNumberField("format", FORMAT);
    out.writeArrayFieldStart("modules");
    for (TestDefinition test : tests) {
      out.writeStartObject();
      out.writeStringField("id", test.id().value());
      out.writeStringField("version", test.version());
      out.writeStringField("title", label(test, "test.title"));
      Json.strings(out, "reads", test.reads().stream().sorted().toList());
      out.writeArrayFieldStart("items");
      for (Item item : test.items()) {
        write(out, test, item);
      }
      out.writeEndArray();
      out.writeArrayFieldStart("results");
      for (ResultDefinition result : test.results()) {
        write(out, test, result);
      }
      out.writeEndArray();
      out.writeEndObject();
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private String label(TestDefinition test, String key) {
    return texts.label(test.id().value(), key);
  }

  private void write(JsonGenerator out, TestDefinition test, Item item) throws IOException {
    out.writeStartObject();
    out.writeStringField("id", item.id().value());
    out.writeStringField("name", label(test, "item." + item.id()));
    kind(out, item.kind());
    Json.strings(out, "sides", sides(item.sides()));
    Json.strings(out, "digits", digits(item.digits()));
    out.writeNumberField("trials", item.trials());
    out.writeStringField("demand", item.demand().code());
    out.writeBooleanField("optional", item.optional());
    out.writeEndObject();
  }

  private static void kind(JsonGenerator out, ItemKind kind) throws IOException {
    if (kind instanceof ItemKind.Number number) {
      out.writeStringField("kind", "number");
      Json.strings(out, "units", number.units().stream().map(Unit::ucum).toList());
      out.writeNumberField("min", number.min());
      out.writeNumberField("max", number.max());
      out.writeNumberField("likelyMin", number.likelyMin());
      out.writeNumberField("likelyMax", number.likelyMax());
      out.writeNumberField("decimals", number.decimals());
    } else if (kind instanceof ItemKind.Choices choices) {
      out.writeStringField("kind", "choice");
      Json.strings(out, "choices", choices.codes());
    } else if (kind instanceof ItemKind.Words words) {
      out.writeStringField("kind", "text");
      out.writeNumberField("longest", words.longest());
    }
  }

  private void write(JsonGenerator out, TestDefinition test, ResultDefinition result)
      throws IOException {
    out.writeStartObject();
    out.writeStringField("id", result.id().value());
    out.writeStringField("name", label(test, "result." + result.id()));
    if (result.unit().isPresent()) {
      out.writeStringField("unit", result.unit().get().ucum());
    }
    Json.strings(out, "sides", sides(result.sides()));
    Json.strings(out, "digits", digits(result.digits()));
    out.writeEndObject();
  }
}
