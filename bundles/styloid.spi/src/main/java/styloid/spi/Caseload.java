package styloid.spi;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import styloid.model.Absence;
import styloid.model.Evaluation;
import styloid.model.Unit;

/**
 * Many evaluations in a row, to be written one after the other; never all in memory.
 *
 * @param identified whether record numbers, days, therapists and diagnoses stand in it
 * @param visits gives the visits, those of one patient together and oldest first
 */
public record Caseload(boolean identified, Source visits, Texts texts) {
  public Caseload {
    Objects.requireNonNull(visits, "visits");
    Objects.requireNonNull(texts, "texts");
  }

  /** Where the visits come from. */
  public interface Source {
    /** Gives every visit to the sink, in order. */
    void to(Sink sink) throws IOException;
  }

  /** Takes one visit after the other. */
  public interface Sink {
    void visit(Visit visit) throws IOException;
  }

  /**
   * One evaluation. Texts are empty where nothing is known or may be said.
   *
   * @param patient record number, or the code that stands for it
   * @param day empty when only the year may be said
   * @param age completed years, {@code 90+} for those above 89 where identity is kept back
   * @param number of the visit among those of the patient here, from 1
   * @param absences how many values are absent, by reason
   */
  public record Visit(
      String patient,
      Optional<LocalDate> day,
      int year,
      String therapist,
      Evaluation.State state,
      int number,
      String age,
      String sex,
      String dominance,
      String involved,
      String diagnosis,
      int values,
      Map<Absence.Reason, Integer> absences,
      List<Measure> measures) {
    public Visit {
      absences = Map.copyOf(absences);
      measures = List.copyOf(measures);
    }
  }

  /**
   * What one item came to at one side and digit.
   *
   * @param trials how many were taken
   * @param number the value, or the mean of all trials; empty unless every trial has a number
   * @param unit of the number and of the change
   * @param answer an answer, a text or the reason of an absence in words; empty for a number
   * @param change this number minus that of the visit before, where both are there
   */
  public record Measure(
      String test,
      String item,
      String side,
      String digit,
      int trials,
      OptionalDouble number,
      Unit unit,
      String answer,
      OptionalDouble change) {}
}
