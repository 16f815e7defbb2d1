package styloid.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import styloid.model.ItemId;
import styloid.model.ItemRef;
import styloid.model.TestId;
import styloid.spi.FindingRule;
import styloid.spi.ModuleNotice;
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;

/** The modules and rules at hand, and what is wrong with those that cannot be used. */
final class ModuleBook {
  private final ModuleGuard guard;
  private final Map<TestModule, TestDefinition> modules = new LinkedHashMap<>();
  private final Map<Object, ModuleFault> refused = new LinkedHashMap<>();
  private final Set<FindingRule> rules = new LinkedHashSet<>();
  private final Set<ModuleNotice> notices = new LinkedHashSet<>();

  ModuleBook(ModuleGuard guard) {
    this.guard = guard;
  }

  /** Takes a module in once it has said what it is. Runs module code: call it on a worker. */
  void add(TestModule module) {
    String name = module.getClass().getName();
    ModuleGuard.Answer<TestDefinition> answer = guard.call(name, "definition", module::definition);
    synchronized (this) {
      if (answer.failed()) {
        refused.put(module, answer.fault());
      } else if (find(answer.value().id()).isPresent()) {
        refused.put(
            module,
            new ModuleFault(
                name, "definition", "TAKEN", "claims the id " + answer.value().id(), false));
      } else {
        modules.put(module, answer.value());
      }
    }
  }

  synchronized void remove(TestModule module) {
    modules.remove(module);
    refused.remove(module);
  }

  synchronized void add(FindingRule rule) {
    rules.add(rule);
  }

  synchronized void remove(FindingRule rule) {
    rules.remove(rule);
  }

  void add(ModuleNotice notice, Listeners listeners) {
    synchronized (this) {
      notices.add(notice);
    }
    listeners.tell(Session.Change.MODULES);
  }

  void remove(ModuleNotice notice, Listeners listeners) {
    synchronized (this) {
      notices.remove(notice);
    }
    listeners.tell(Session.Change.MODULES);
  }

  synchronized List<FindingRule> rules() {
    return List.copyOf(rules);
  }

  /** The definitions of all usable modules, in the order they are shown. */
  synchronized List<TestDefinition> definitions() {
    return modules.values().stream()
        .sorted(Comparator.comparingInt(TestDefinition::order).thenComparing(TestDefinition::id))
        .toList();
  }

  synchronized Optional<TestModule> find(TestId id) {
    return modules.entrySet().stream()
        .filter(entry -> entry.getValue().id().equals(id))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /** The definitions in the order they are calculated: what a test reads comes before it. */
  List<TestDefinition> calculationOrder() {
    ArrayList<TestDefinition> ordered = new ArrayList<>();
    LinkedHashSet<TestId> done = new LinkedHashSet<>();
    List<TestDefinition> waiting = new ArrayList<>(definitions());
    Set<TestId> present = new LinkedHashSet<>();
    waiting.forEach(d -> present.add(d.id()));
    boolean moved = true;
    while (moved) {
      moved = false;
      for (TestDefinition definition : List.copyOf(waiting)) {
        if (definition.reads().stream().allMatch(r -> done.contains(r) || !present.contains(r))) {
          ordered.add(definition);
          done.add(definition.id());
          waiting.remove(definition);
          moved = true;
        }
      }
    }
    return ordered;
  }

  /**
   * Modules that cannot be used, tests that wait for each other or for one that is missing, and
   * what is to be told of files.
   */
  List<ModuleFault> faults() {
    ArrayList<ModuleFault> faults = new ArrayList<>();
    synchronized (this) {
      faults.addAll(refused.values());
      notices.forEach(n -> faults.add(ModuleFault.of(n)));
    }
    Set<TestId> present = new LinkedHashSet<>();
    definitions().forEach(d -> present.add(d.id()));
    List<TestDefinition> calculable = calculationOrder();
    for (TestDefinition definition : definitions()) {
      String id = definition.id().value();
      if (!calculable.contains(definition)) {
        faults.add(new ModuleFault(id, "definition", "CYCLE", "reads in a circle", true));
      }
      for (TestId read : definition.reads()) {
        if (!present.contains(read)) {
          faults.add(
              new ModuleFault(
                  id, "definition", "READS", "reads " + read + ", which is not here", false));
        }
      }
    }
    return faults;
  }

  /** What the modules say may leave in a de-identified export; nothing of one that fails. */
  Set<ItemRef> safeItems() {
    LinkedHashSet<ItemRef> safe = new LinkedHashSet<>();
    for (TestDefinition test : definitions()) {
      Set<ItemId> textless = test.itemsWithoutText();
      find(test.id())
          .map(module -> guard.call(test.id().value(), "safe items", module::safeItems))
          .filter(answer -> !answer.failed())
          .ifPresent(
              answer ->
                  answer.value().stream()
                      .filter(textless::contains)
                      .forEach(item -> safe.add(new ItemRef(test.id(), item))));
    }
    return safe;
  }
}
