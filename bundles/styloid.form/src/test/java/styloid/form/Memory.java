package styloid.form;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import styloid.model.Entry;
import styloid.model.EntryId;
import styloid.model.InSpite;
import styloid.model.ItemKey;
import styloid.model.PatientContext;
import styloid.model.TherapistId;
import styloid.model.Value;
import styloid.spi.TestDefinition;

/** A port that keeps what it is told, as the suite's session would. */
final class Memory implements FormPort {
  final List<Entry> entries = new ArrayList<>();
  final Map<ItemKey, String> drafts = new HashMap<>();
  final List<String> calls = new ArrayList<>();
  boolean licensed = true;
  private final TestDefinition test;
  private PatientContext context;
  private Runnable changed = () -> {};

  Memory(TestDefinition test, PatientContext context) {
    this.test = test;
    this.context = context;
  }

  void onChange(Runnable listener) {
    changed = listener;
  }

  FormState state() {
    return new FormState(test, context, Set.of(), drafts, false, false);
  }

  Optional<Value> value(ItemKey key) {
    return context.snapshot().value(key);
  }

  @Override
  public void record(ItemKey key, Value value, boolean confirmed) {
    add(key, Optional.of(value), confirmed);
  }

  @Override
  public void recordInSpite(ItemKey key, Value value, boolean confirmed, String reason) {
    add(key, Optional.of(value), confirmed, Optional.of(new InSpite(reason, List.of())));
  }

  @Override
  public boolean mayOverride() {
    return licensed;
  }

  @Override
  public void askWhoWorks() {
    calls.add("who works");
  }

  private void add(ItemKey key, Optional<Value> value, boolean confirmed) {
    add(key, value, confirmed, Optional.empty());
  }

  private void add(
      ItemKey key, Optional<Value> value, boolean confirmed, Optional<InSpite> override) {
    Entry entry =
        new Entry(
            new EntryId(new UUID(3, entries.size())),
            key,
            value,
            Instant.EPOCH,
            new TherapistId("T. Example"),
            confirmed,
            override);
    entries.add(entry);
    drafts.remove(key);
    context = context.withSnapshot(context.snapshot().with(entry));
    changed.run();
  }

  @Override
  public void draft(ItemKey key, String text) {
    if (text.isBlank()) {
      drafts.remove(key);
    } else {
      drafts.put(key, text);
    }
  }

  @Override
  public void undo() {
    calls.add("undo");
    if (!entries.isEmpty()) {
      add(entries.get(entries.size() - 1).key(), Optional.empty(), false);
    }
  }

  @Override
  public void redo() {
    calls.add("redo");
  }

  @Override
  public void leavePage(boolean forward) {
    calls.add(forward ? "next page" : "page before");
  }

  @Override
  public void showWhy() {
    calls.add("why");
  }

  @Override
  public void showKeys() {
    calls.add("keys");
  }
}
