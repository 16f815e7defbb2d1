package styloid.command;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import styloid.model.Digit;
import styloid.model.Evaluation;
import styloid.model.Finding;
import styloid.model.Outcome;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.Source;
import styloid.model.Value;
import styloid.session.ModuleFault;
import styloid.session.OpenEvaluation;
import styloid.spi.ResultDefinition;
import styloid.spi.TestDefinition;
import styloid.spi.Texts;

/** Results of evaluations as JSON, laid out in docs/commands.md. */
final class ResultsJson {
  private static final int FORMAT = 1;

  private final Texts texts;

  ResultsJson(Texts texts) {
    this.texts = texts;
  }

  void write(List<OpenEvaluation> evaluations, PrintWriter out) throws IOException {
    Json.write(
        out,
        json -> {
          json.writeStartObject();
          json.writeNumberField("format", FORMAT);
          json.writeArrayFieldStart("evaluations");
          for (OpenEvaluation one : evaluations) {
            evaluation(json, one);
          }
          json.writeEndArray();
          json.writeEndObject();
        });
  }

  private void evaluation(JsonGenerator json, OpenEvaluation open) throws IOException {
    Evaluation head = open.context().evaluation();
    json.writeStartObject();
    json.writeStringField("id", head.id().toString());
    json.writeStringField("recordNumber", open.context().patient().recordNumber());
    json.writeStringField("date", head.date().toString());
    json.writeStringField("therapist", head.therapist().value());
    json.writeStringField("state", head.state().code());
    json.writeArrayFieldStart("tests");
    for (TestDefinition test : open.tests()) {
      json.writeStartObject();
      json.writeStringField("id", test.id().value());
      json.writeStringField("version", test.version());
      json.writeBooleanField("module", !open.withoutModule().contains(test.id()));
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("results");
    for (Result result : open.context().results().all()) {
      result(json, result, definition(open, result));
    }
    json.writeEndArray();
    json.writeArrayFieldStart("findings");
    for (Finding finding : open.findings()) {
      finding(json, finding);
    }
    json.writeEndArray();
    if (open.order().isPresent()) {
      json.writeFieldName("order");
      new OrderJson(texts).write(json, open.order().get());
    }
    json.writeArrayFieldStart("faults");
    for (ModuleFault fault : open.faults()) {
      fault(json, fault);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static Optional<ResultDefinition> definition(OpenEvaluation open, Result result) {
    return open.tests().stream()
        .filter(test -> test.id().equals(result.key().test()))
        .findFirst()
        .flatMap(test -> test.result(result.key()));
  }

  private void result(JsonGenerator json, Result result, Optional<ResultDefinition> definition)
      throws IOException {
    json.writeStartObject();
    json.writeStringField("test", result.key().test().value());
    json.writeStringField("result", result.key().result().value());
    json.writeStringField(
        "name", texts.label(result.key().test().value(), "result." + result.key().result()));
    json.writeStringField("side", result.key().side().code());
    if (result.key().digit() != Digit.NONE) {
      json.writeStringField("digit", result.key().digit().code());
    }
    outcome(json, result, definition);
    json.writeArrayFieldStart("steps");
    for (var step : result.why().steps()) {
      json.writeString(texts.text(step));
    }
    json.writeEndArray();
    json.writeArrayFieldStart("sources");
    for (Source source : result.why().sources()) {
      json.writeStartObject();
      json.writeStringField("citation", source.citation());
      json.writeStringField("status", source.status().code());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeStringField("status", result.why().status().code());
    json.writeStringField("rule", result.why().rule());
    json.writeEndObject();
  }

  private void outcome(JsonGenerator json, Result result, Optional<ResultDefinition> definition)
      throws IOException {
    if (result.outcome() instanceof Outcome.Computed computed) {
      json.writeStringField("state", "computed");
      value(json, result, computed.value(), definition);
    } else if (result.outcome() instanceof Outcome.Incomplete incomplete) {
      json.writeStringField("state", "incomplete");
      json.writeStringField("reason", texts.text(incomplete.reason()));
      Json.strings(json, "missing", incomplete.missing());
    } else if (result.outcome() instanceof Outcome.Unavailable unavailable) {
      json.writeStringField("state", "unavailable");
      json.writeStringField("reason", texts.text(unavailable.reason()));
    }
  }

  private void value(
      JsonGenerator json, Result result, Value value, Optional<ResultDefinition> definition)
      throws IOException {
    if (value instanceof Quantity quantity) {
      json.writeNumberField("value", quantity.amount());
      json.writeStringField("unit", quantity.unit().ucum());
      int decimals = definition.map(ResultDefinition::decimals).orElse(quantity.amount().scale());
      json.writeStringField("shown", texts.quantity(quantity, Math.max(0, decimals)));
      return;
    }
    String code = value.match(Quantity::toString, c -> c.code(), t -> t.text(), a -> a.note());
    json.writeStringField("value", code);
    String test = result.key().test().value();
    String key = "choice." + result.key().result() + "." + code;
    json.writeStringField("shown", texts.find(test, key).orElse(code));
  }

  private void finding(JsonGenerator json, Finding finding) throws IOException {
    json.writeStartObject();
    json.writeStringField("rule", finding.rule());
    json.writeStringField("text", texts.text(finding.text()));
    json.writeStringField("side", finding.side().code());
    Json.strings(json, "entries", finding.entries());
    Json.strings(json, "results", finding.results());
    json.writeEndObject();
  }

  private static void fault(JsonGenerator json, ModuleFault fault) throws IOException {
    json.writeStartObject();
    json.writeStringField("module", fault.module());
    json.writeStringField("stage", fault.stage());
    json.writeStringField("code", fault.code());
    json.writeStringField("reason", fault.reason());
    json.writeBooleanField("muted", fault.muted());
    json.writeEndObject();
  }
}
