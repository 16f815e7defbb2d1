package styloid.session;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import styloid.model.PatientContext;
import styloid.model.Results;
import styloid.spi.TestModule;

/**
 * What each module last answered, and to what. Modules are pure, so the answer holds as long as
 * everything the module may see is the same; most entries are of one test and leave the others as
 * they were.
 */
final class Kept {
  private final Map<TestModule, Answer> answers = new IdentityHashMap<>();

  /**
   * An answer.
   *
   * @param asked what the module saw
   * @param past the earlier visits before they were limited to it
   */
  private record Answer(PatientContext asked, List<PatientContext.Past> past, Results given) {}

  /** The module's view of earlier visits, if they are still those it last saw. */
  Optional<List<PatientContext.Past>> past(TestModule module, PatientContext whole) {
    return Optional.ofNullable(answers.get(module))
        .filter(answer -> answer.past == whole.past())
        .map(answer -> answer.asked.past());
  }

  /** The answer to this very question, if it was the last one asked. */
  Optional<Results> answer(TestModule module, PatientContext question) {
    return Optional.ofNullable(answers.get(module))
        .filter(answer -> same(answer.asked, question))
        .map(Answer::given);
  }

  void keep(TestModule module, PatientContext question, PatientContext whole, Results given) {
    answers.put(module, new Answer(question, whole.past(), given));
  }

  void forget(TestModule module) {
    answers.remove(module);
  }

  /** Forgets every module but these. */
  void only(Set<TestModule> modules) {
    answers.keySet().removeIf(module -> !modules.contains(module));
  }

  private static boolean same(PatientContext one, PatientContext other) {
    return one.patient().equals(other.patient())
        && one.evaluation().equals(other.evaluation())
        && one.precautions().equals(other.precautions())
        && one.snapshot().sameAs(other.snapshot())
        && one.results().sameAs(other.results())
        && samePast(one.past(), other.past());
  }

  private static boolean samePast(List<PatientContext.Past> one, List<PatientContext.Past> other) {
    if (one == other) {
      return true;
    } else if (one.size() != other.size()) {
      return false;
    }
    for (int i = 0; i < one.size(); i++) {
      if (!one.get(i).evaluation().equals(other.get(i).evaluation())
          || !one.get(i).snapshot().sameAs(other.get(i).snapshot())) {
        return false;
      }
    }
    return true;
  }
}
