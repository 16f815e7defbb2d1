package styloid.session;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import styloid.model.DefinitionText;
import styloid.model.Entry;
import styloid.model.EvaluationId;
import styloid.model.ItemKey;
import styloid.store.PatientStore;
import styloid.store.StoreException;

/**
 * Brings the entries of one evaluation to the store, in order, off the caller's thread. What cannot
 * be stored is kept and tried again, so a full disk costs time and not entries.
 */
final class Saver {
  /** How long to wait before trying again by itself. */
  static final long RETRY_SECONDS = 5;

  /** Told what is on disk and what is not. Called on the store worker. */
  interface Watcher {
    void saved(List<Entry> entries);

    void failed(String reason);
  }

  private final EvaluationId evaluation;
  private final PatientStore store;
  private final ScheduledExecutorService worker;
  private final Watcher watcher;
  private final ArrayDeque<Entry> waiting = new ArrayDeque<>();
  private final ArrayDeque<DefinitionText> definitions = new ArrayDeque<>();
  private final Map<ItemKey, String> drafts = new LinkedHashMap<>();
  private boolean scheduled;
  private Optional<String> fault = Optional.empty();

  Saver(
      EvaluationId evaluation,
      PatientStore store,
      ScheduledExecutorService worker,
      Watcher watcher) {
    this.evaluation = evaluation;
    this.store = store;
    this.worker = worker;
    this.watcher = watcher;
  }

  synchronized void add(Entry entry) {
    waiting.add(entry);
    drafts.remove(entry.key());
    schedule(0);
  }

  synchronized void add(DefinitionText definition) {
    definitions.add(definition);
  }

  synchronized void draft(ItemKey key, String text) {
    drafts.put(key, text);
    schedule(0);
  }

  synchronized void retry() {
    schedule(0);
  }

  /** Whether nothing waits to be stored. */
  synchronized boolean idle() {
    return waiting.isEmpty() && drafts.isEmpty() && definitions.isEmpty();
  }

  synchronized boolean failing() {
    return fault.isPresent();
  }

  private void schedule(long seconds) {
    if (!scheduled || seconds == 0 && fault.isPresent()) {
      scheduled = true;
      worker.schedule(this::work, seconds, TimeUnit.SECONDS);
    }
  }

  private void work() {
    List<Entry> batch;
    List<DefinitionText> tests;
    Map<ItemKey, String> texts;
    synchronized (this) {
      scheduled = false;
      batch = new ArrayList<>(waiting);
      tests = new ArrayList<>(definitions);
      texts = new LinkedHashMap<>(drafts);
    }
    try {
      for (DefinitionText test : tests) {
        store.addDefinition(evaluation, test);
      }
      if (!batch.isEmpty()) {
        store.append(evaluation, batch);
      }
      for (Map.Entry<ItemKey, String> draft : texts.entrySet()) {
        store.draft(evaluation, draft.getKey(), draft.getValue());
      }
      done(batch, tests, texts);
      watcher.saved(batch);
    } catch (StoreException | RuntimeException e) {
      String reason = e instanceof StoreException ? e.getMessage() : "The store failed: " + e;
      synchronized (this) {
        fault = Optional.of(reason);
        schedule(RETRY_SECONDS);
      }
      watcher.failed(reason);
    }
  }

  private synchronized void done(
      List<Entry> batch, List<DefinitionText> tests, Map<ItemKey, String> texts) {
    fault = Optional.empty();
    batch.forEach(waiting::remove);
    tests.forEach(definitions::remove);
    // Only what has not been typed over since.
    texts.forEach(drafts::remove);
    if (!idle()) {
      schedule(0);
    }
  }
}
