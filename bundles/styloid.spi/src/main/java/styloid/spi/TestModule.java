package styloid.spi;

import java.util.List;
import java.util.Set;
import org.osgi.annotation.versioning.ConsumerType;
import styloid.model.ItemId;
import styloid.model.PatientContext;
import styloid.model.Result;

/**
 * A test, offered as an OSGi service. Both functions are pure: same input, same output, no clock,
 * no files, no threads. They are called on worker threads, through a guard with a time limit of one
 * second; the context they get is limited to the items and results the definition declares.
 */
@ConsumerType
public interface TestModule {

  /** What can be recorded and derived. The same object, or an equal one, at every call. */
  TestDefinition definition();

  /**
   * What follows from the entries: for each key the definition's results name a value or the reason
   * why there is none. A result of something nobody began may be left out.
   */
  List<Result> results(PatientContext context);

  /**
   * Items whose values say nothing of who the patient is, so that they may leave in a de-identified
   * export. None unless the module says so; never free text.
   */
  default Set<ItemId> safeItems() {
    return Set.of();
  }

  /** The test's part of the workbook; made from the items unless a module draws its own. */
  default List<Sheet> sheets(PatientContext context, List<Result> results) {
    return Sheets.fromItems(definition(), context, results);
  }
}
