package styloid.shell.evaluation;

import java.util.List;
import java.util.Optional;
import styloid.form.FormState;
import styloid.model.Evaluation;
import styloid.model.ItemKey;
import styloid.session.OpenEvaluation;
import styloid.spi.TestDefinition;

/** The open evaluation with its pages, as one moment shows it. */
record Stand(OpenEvaluation open, List<Page> pages) {

  static Stand of(OpenEvaluation open) {
    return new Stand(open, Page.of(open.tests()));
  }

  /** The same pages, where the tests are still the same. */
  Stand next(OpenEvaluation newer) {
    return newer.tests().equals(open.tests()) ? new Stand(newer, pages) : of(newer);
  }

  FormState form(TestDefinition test) {
    return new FormState(
        test,
        open.context(),
        open.unsaved(),
        open.drafts(),
        open.savingFault().isPresent(),
        readOnly(test));
  }

  boolean readOnly(TestDefinition test) {
    return open.context().evaluation().state() == Evaluation.State.SIGNED
        || open.withoutModule().contains(test.id());
  }

  Optional<Page> pageOf(ItemKey key) {
    return pages.stream().filter(p -> p.has(key)).findFirst();
  }

  /** The page at the place of another one, else the first. */
  Page placeOf(Optional<Page> other) {
    return pages.stream()
        .filter(page -> other.filter(page::isPlaceOf).isPresent())
        .findFirst()
        .orElse(pages.get(0));
  }

  /** The page before or after; empty at either end. */
  Optional<Page> beside(Page page, boolean after) {
    for (int at = 0; at < pages.size(); at++) {
      int wanted = after ? at + 1 : at - 1;
      if (pages.get(at).isPlaceOf(page) && wanted >= 0 && wanted < pages.size()) {
        return Optional.of(pages.get(wanted));
      }
    }
    return Optional.empty();
  }
}
