package styloid.spi;

import java.util.List;
import java.util.Set;
import org.osgi.annotation.versioning.ConsumerType;
import styloid.model.Finding;
import styloid.model.PatientContext;
import styloid.model.TestId;

/** A pure rule that draws statements across tests, offered as an OSGi service. */
@ConsumerType
public interface FindingRule {
  /** Stable name, also its page in docs/rules. */
  String id();

  /** Tests whose entries and results it looks at. */
  Set<TestId> reads();

  /** Words of the findings it gives, under the scope of their messages. */
  Labels labels();

  /** The statements that hold; empty when none does. */
  List<Finding> findings(PatientContext context);
}
