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
  private final Map<String, String> choices = new LinkedHashMap<>();
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

  synchronized void choose(String key, String code) {
    choices.put(key, code);
    schedule(0);
  }

  synchronized void retry() {
    schedule(0);
  }

  /** Whether nothing waits to be stored. */
  synchronized boolean idle() {
    return waiting.isEmpty() && drafts.isEmpty() && definitions.isEmpty() && choices.isEmpty();
  }

  /** Whether waiting longer would change nothing. */
  boolean atRest() {
    return idle() || failing();
  }

  /**
   * Makes sure that nothing would be lost by closing.
   *
   * @throws StoreException when something could not be stored
   */
  synchronized void requireStored() throws StoreException {
    if (!idle() && fault.isPresent()) {
      throw new StoreException(
          StoreException.Cause.OTHER,
          "The last entries are not saved: "
              + fault.get()
              + " They are kept while this stays open, and saving is tried again.",
          null);
    }
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
    Map<String, String> chosen;
    synchronized (this) {
      scheduled = false;
      batch = new ArrayList<>(waiting);
      tests = new ArrayList<>(definitions);
      texts = new LinkedHashMap<>(drafts);
      chosen = new LinkedHashMap<>(choices);
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
      for (Map.Entry<String, String> choice : chosen.entrySet()) {
        store.choose(evaluation, choice.getKey(), choice.getValue());
      }
      done(batch, tests, texts, chosen);
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
      List<Entry> batch,
      List<DefinitionText> tests,
      Map<ItemKey, String> texts,
      Map<String, String> chosen) {
    fault = Optional.empty();
    batch.forEach(waiting::remove);
    tests.forEach(definitions::remove);
    // Only what has not been typed over since.
    texts.forEach(drafts::remove);
    chosen.forEach(choices::remove);
    if (!idle()) {
      schedule(0);
    }
  }
}
