package styloid.store;

import java.time.LocalDate;
import java.util.Optional;
import styloid.model.Patient;

/**
 * A line of the caseload.
 *
 * @param lastVisit date of the newest evaluation
 * @param drafts evaluations not signed yet
 */
public record CaseloadRow(
    Patient patient, int evaluations, Optional<LocalDate> lastVisit, int drafts) {}
