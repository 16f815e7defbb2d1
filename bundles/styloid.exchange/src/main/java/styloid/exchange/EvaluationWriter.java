package styloid.exchange;

import java.io.IOException;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import styloid.model.DefinitionText;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.Evaluation;
import styloid.model.EvaluationRecord;
import styloid.model.InSpite;
import styloid.model.ItemKey;
import styloid.model.Patient;
import styloid.model.PatientRecord;
import styloid.model.Precaution;
import styloid.model.Side;
import styloid.model.TherapistId;
import styloid.model.Value;

/** Writes an evaluation file; what may be left out and says nothing is left out. */
final class EvaluationWriter {
  private static final Comparator<ItemKey> BY_PLACE =
      Comparator.comparing(ItemKey::test)
          .thenComparing(ItemKey::item)
          .thenComparing(ItemKey::side)
          .thenComparing(ItemKey::digit)
          .thenComparingInt(ItemKey::trial);

  private final JsonWriter out;
  private final LinkedHashMap<DefinitionText, String> names = new LinkedHashMap<>();

  EvaluationWriter(JsonWriter out) {
    this.out = out;
  }

  void record(PatientRecord record) throws IOException {
    out.object().key("format").number(EvaluationReader.FORMAT);
    patient(record.patient());
    if (!record.precautions().isEmpty()) {
      out.key("precautions").list();
      for (Precaution precaution : record.precautions()) {
        precaution(precaution);
      }
      out.end();
    }
    definitions(record);
    out.key("evaluations").list();
    for (EvaluationRecord evaluation : record.evaluations()) {
      evaluation(evaluation);
    }
    out.end().end();
  }

  private void patient(Patient patient) throws IOException {
    out.key("patient").object();
    out.key("id").text(patient.id().toString());
    out.key("recordNumber").text(patient.recordNumber());
    out.key("name").text(patient.name());
    maybe("birthDate", patient.birthDate());
    maybe("sex", patient.sex().map(Patient.Sex::code));
    maybe("dominance", patient.dominance().map(Patient.Dominance::code));
    if (!patient.involved().isEmpty()) {
      out.key("involved").inlineList();
      for (Side side : EnumSet.copyOf(patient.involved())) {
        out.text(side.code());
      }
      out.end();
    }
    words("diagnosis", patient.diagnosis());
    maybe("onset", patient.onset());
    maybe("surgery", patient.surgery());
    maybe("heightCm", patient.heightCm());
    out.end();
  }

  private void precaution(Precaution precaution) throws IOException {
    out.inlineObject();
    out.key("kind").text(precaution.kind().code());
    out.key("region").text(precaution.region().code());
    out.key("side").text(precaution.side().code());
    digit(precaution.digit());
    maybe("from", precaution.from());
    maybe("until", precaution.until());
    words("setBy", precaution.setBy());
    words("note", precaution.note());
    out.end();
  }

  private void definitions(PatientRecord record) throws IOException {
    record.evaluations().forEach(e -> e.definitions().forEach(this::name));
    if (names.isEmpty()) {
      return;
    }
    out.key("definitions").list();
    for (Map.Entry<DefinitionText, String> named : names.entrySet()) {
      DefinitionText definition = named.getKey();
      out.object();
      out.key("name").text(named.getValue());
      out.key("test").text(definition.test().value());
      out.key("version").text(definition.version());
      out.key("text").text(definition.text());
      out.end();
    }
    out.end();
  }

  private void name(DefinitionText definition) {
    String plain = definition.test() + "-" + definition.version();
    String name = plain;
    for (int i = 2; names.containsValue(name) && !names.containsKey(definition); i++) {
      name = plain + "#" + i;
    }
    names.putIfAbsent(definition, name);
  }

  private void evaluation(EvaluationRecord record) throws IOException {
    Evaluation head = record.evaluation();
    out.object();
    out.key("id").text(head.id().toString());
    out.key("date").text(head.date().toString());
    out.key("therapist").text(head.therapist().value());
    out.key("state").text(head.state().code());
    TreeMap<String, String> versions = new TreeMap<>();
    head.versions().forEach((test, version) -> versions.put(test.value(), version));
    map("versions", versions);
    map("choices", new TreeMap<>(head.choices()));
    definitionsUsed(record.definitions());
    out.key("entries").list();
    for (Entry entry : record.ledger().entries()) {
      entry(entry, head.therapist());
    }
    out.end();
    drafts(record.drafts());
    out.end();
  }

  private void definitionsUsed(List<DefinitionText> definitions) throws IOException {
    if (definitions.isEmpty()) {
      return;
    }
    out.key("definitions").inlineList();
    for (DefinitionText definition : definitions) {
      out.text(names.get(definition));
    }
    out.end();
  }

  private void entry(Entry entry, TherapistId therapist) throws IOException {
    out.inlineObject();
    out.key("id").text(entry.id().toString());
    place(entry.key());
    out.key("value");
    if (entry.value().isPresent()) {
      value(entry.value().get());
    } else {
      out.nothing();
    }
    out.key("at").text(entry.at().toString());
    if (!entry.by().equals(therapist)) {
      out.key("by").text(entry.by().value());
    }
    if (entry.confirmed()) {
      out.key("confirmed").truth(true);
    }
    if (entry.override().isPresent()) {
      override(entry.override().get());
    }
    out.end();
  }

  private void override(InSpite override) throws IOException {
    out.key("override").text(override.reason());
    if (!override.precautions().isEmpty()) {
      out.key("overrode").inlineList();
      for (Precaution precaution : override.precautions()) {
        precaution(precaution);
      }
      out.end();
    }
  }

  /** A step of writing that can fail. */
  private interface Step {
    void run() throws IOException;
  }

  private void value(Value value) throws IOException {
    out.inlineObject();
    Step step =
        value.match(
            q ->
                () ->
                    out.key("amount").text(q.amount().toString()).key("unit").text(q.unit().ucum()),
            c -> () -> out.key("choice").text(c.code()),
            t -> () -> out.key("text").text(t.text()),
            a ->
                () -> {
                  out.key("absent").text(a.reason().code());
                  words("note", a.note());
                });
    step.run();
    out.end();
  }

  private void drafts(Map<ItemKey, String> drafts) throws IOException {
    if (drafts.isEmpty()) {
      return;
    }
    TreeMap<ItemKey, String> sorted = new TreeMap<>(BY_PLACE);
    sorted.putAll(drafts);
    out.key("drafts").list();
    for (Map.Entry<ItemKey, String> draft : sorted.entrySet()) {
      out.inlineObject();
      place(draft.getKey());
      out.key("text").text(draft.getValue()).end();
    }
    out.end();
  }

  private void place(ItemKey key) throws IOException {
    out.key("item").text(key.test() + "/" + key.item());
    out.key("side").text(key.side().code());
    digit(key.digit());
    if (key.trial() != 1) {
      out.key("trial").number(key.trial());
    }
  }

  private void digit(Digit digit) throws IOException {
    if (digit != Digit.NONE) {
      out.key("digit").text(digit.code());
    }
  }

  private void map(String key, TreeMap<String, String> map) throws IOException {
    if (map.isEmpty()) {
      return;
    }
    out.key(key).inlineObject();
    for (Map.Entry<String, String> one : map.entrySet()) {
      out.key(one.getKey()).text(one.getValue());
    }
    out.end();
  }

  private void maybe(String key, Optional<?> value) throws IOException {
    if (value.isPresent()) {
      out.key(key).text(value.get().toString());
    }
  }

  private void words(String key, String text) throws IOException {
    if (!text.isEmpty()) {
      out.key(key).text(text);
    }
  }
}
