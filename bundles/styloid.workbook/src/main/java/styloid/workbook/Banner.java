package styloid.workbook;

import java.util.stream.Collectors;
import styloid.model.Digit;
import styloid.model.Evaluation;
import styloid.model.InSpite;
import styloid.model.Patient;
import styloid.model.Precaution;
import styloid.model.Side;
import styloid.spi.Report;

/**
 * Who and which visit: at the head of every sheet and at the edge of every printed page.
 *
 * @param person name, birth date with age, record number
 * @param visit date, therapist, dominant hand, involved side, precautions, draft or signed
 * @param edge short form of both for the edge of a page
 */
record Banner(String person, String visit, String edge) {
  /** The file format allows 255 characters for the whole edge. */
  private static final int LONGEST_NAME = 60;

  static Banner of(Report report, Say say) {
    Patient patient = report.context().patient();
    String person =
        say.own("banner.person", patient.name(), born(report, say), patient.recordNumber());
    String visit =
        say.own(
            "banner.visit",
            say.date(report.context().evaluation().date()),
            report.context().evaluation().therapist().value(),
            dominance(patient, say),
            involved(patient, say),
            precautions(report, say),
            state(report, say));
    String edge =
        SafeText.forPageEdge(patient.name(), LONGEST_NAME)
            + ", "
            + SafeText.forPageEdge(say.dateOrUnknown(patient.birthDate()), 20)
            + ", "
            + SafeText.forPageEdge(patient.recordNumber(), 30);
    return new Banner(person, visit, edge);
  }

  static String born(Report report, Say say) {
    String date = say.dateOrUnknown(report.context().patient().birthDate());
    return report.context().age().map(age -> say.own("born-age", date, age)).orElse(date);
  }

  static String dominance(Patient patient, Say say) {
    return patient.dominance().map(say.texts()::word).orElseGet(() -> say.own("not-recorded"));
  }

  static String involved(Patient patient, Say say) {
    if (patient.involved().isEmpty()) {
      return say.own("not-recorded");
    }
    boolean both = patient.involved().size() > 1;
    return both
        ? say.own("and", say.side(Side.RIGHT), say.side(Side.LEFT))
        : say.side(patient.involved().iterator().next());
  }

  static String state(Report report, Say say) {
    boolean draft = report.context().evaluation().state() == Evaluation.State.DRAFT;
    return say.own(draft ? "state.draft" : "state.signed");
  }

  static String precautions(Report report, Say say) {
    return report.inForce().isEmpty()
        ? say.own("precautions.none")
        : report.inForce().stream().map(p -> precaution(p, say)).collect(Collectors.joining("; "));
  }

  /** "no resistance, left wrist". */
  static String precaution(Precaution precaution, Say say) {
    return say.texts().word(precaution.kind()) + ", " + place(precaution, say);
  }

  /** "no resistance, left wrist; until: Apr 6, 2026; set by: Dr Example". */
  static String limit(Precaution precaution, Say say) {
    String until = precaution.until().map(say::date).orElseGet(() -> say.own("until-lifted"));
    String by = say.orUnknown(precaution.setBy());
    return say.own("summary.precaution", precaution(precaution, say), until, by);
  }

  /**
   * The precautions an entry overrode, a line each; "unknown" in entries that did not keep them.
   */
  static String overridden(InSpite override, Say say) {
    return override.precautions().isEmpty()
        ? say.own("overridden.unknown")
        : override.precautions().stream().map(p -> limit(p, say)).collect(Collectors.joining("\n"));
  }

  /** "left index finger", "wrist, both sides". */
  static String place(Precaution precaution, Say say) {
    String part =
        precaution.digit() == Digit.NONE
            ? say.texts().word(precaution.region())
            : say.texts().word(precaution.digit());
    return precaution.side() == Side.UNSIDED
        ? say.own("place.both", part)
        : say.own("place.side", say.side(precaution.side()), part);
  }
}
