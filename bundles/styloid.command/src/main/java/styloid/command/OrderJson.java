package styloid.command;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import styloid.model.Message;
import styloid.plan.Changes;
import styloid.plan.Plan;
import styloid.plan.PlanStep;
import styloid.plan.PlannedStep;
import styloid.spi.Position;
import styloid.spi.Texts;

/** The order of the steps still to do as JSON, laid out in docs/commands.md. */
final class OrderJson {
  private final Texts texts;

  OrderJson(Texts texts) {
    this.texts = texts;
  }

  void write(JsonGenerator json, Plan plan) throws IOException {
    json.writeStartObject();
    json.writeStringField("summary", texts.text(plan.summary()));
    json.writeBooleanField("proven", plan.proven());
    changes(json, "changes", plan.changes());
    changes(json, "plain", plan.plain());
    changes(json, "saved", plan.saved());
    json.writeNumberField("done", plan.done().size());
    json.writeArrayFieldStart("steps");
    for (PlannedStep planned : plan.order()) {
      step(json, planned);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void changes(JsonGenerator json, String name, Changes changes) throws IOException {
    json.writeObjectFieldStart(name);
    json.writeNumberField("body", changes.body());
    json.writeNumberField("support", changes.support());
    json.writeNumberField("rotation", changes.rotation());
    json.writeNumberField("total", changes.total());
    json.writeEndObject();
  }

  private void step(JsonGenerator json, PlannedStep planned) throws IOException {
    PlanStep step = planned.step();
    json.writeStartObject();
    json.writeStringField("test", step.id().test().value());
    json.writeStringField("group", step.id().group());
    json.writeStringField("name", texts.text(step.label()));
    json.writeStringField("side", step.id().side().code());
    json.writeBooleanField("gravityReduced", step.id().gravityReduced());
    json.writeStringField("stage", step.stage().code());
    if (step.position().isPresent()) {
      position(json, step.position().get());
    }
    json.writeBooleanField("painful", step.painful());
    changes(json, "changes", planned.changes());
    json.writeArrayFieldStart("reasons");
    for (Message reason : planned.reasons()) {
      json.writeString(texts.text(reason));
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void position(JsonGenerator json, Position position) throws IOException {
    json.writeObjectFieldStart("position");
    json.writeStringField("body", position.body().code());
    json.writeStringField("support", position.support().code());
    json.writeStringField("rotation", position.rotation().code());
    json.writeStringField("shown", shown(position));
    json.writeEndObject();
  }

  private String shown(Position position) {
    return String.join(
        ", ",
        texts.word(position.body()),
        texts.word(position.support()),
        texts.word(position.rotation()));
  }
}
