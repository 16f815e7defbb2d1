package styloid.checks.demo;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import styloid.model.Digit;
import styloid.model.EvaluationRecord;
import styloid.model.Patient;
import styloid.model.PatientId;
import styloid.model.PatientRecord;
import styloid.model.Precaution;
import styloid.model.Region;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.model.TherapistId;
import styloid.spi.TestDefinition;

/** One invented person of the demo clinic, built up fact by fact. */
final class Person {
  private final Map<TestId, TestDefinition> tests;
  private final String number;
  private final String name;
  private final PatientId id;
  private Optional<LocalDate> birth = Optional.empty();
  private Optional<Patient.Sex> sex = Optional.empty();
  private Optional<Patient.Dominance> hand = Optional.empty();
  private Set<Side> involved = Set.of();
  private String diagnosis = "";
  private Optional<LocalDate> onset = Optional.empty();
  private Optional<LocalDate> surgery = Optional.empty();
  private Optional<BigDecimal> height = Optional.empty();
  private final ArrayList<Precaution> precautions = new ArrayList<>();
  private final ArrayList<EvaluationRecord> visits = new ArrayList<>();

  Person(Map<TestId, TestDefinition> tests, int number, String name) {
    this.tests = tests;
    this.number = String.format(Locale.ROOT, "DEMO-%03d", number);
    this.name = name + " (invented)";
    this.id = new PatientId(Visit.named("patient " + number));
  }

  Person born(String day, Patient.Sex asGrouped, Patient.Dominance preferred) {
    birth = Optional.of(LocalDate.parse(day));
    sex = Optional.of(asGrouped);
    hand = Optional.of(preferred);
    return this;
  }

  Person tall(int cm) {
    height = Optional.of(BigDecimal.valueOf(cm));
    return this;
  }

  Person with(String what, Side... sides) {
    diagnosis = "Invented example: " + what;
    involved = Set.of(sides);
    return this;
  }

  Person onset(String day) {
    onset = Optional.of(LocalDate.parse(day));
    return this;
  }

  Person surgery(String day) {
    surgery = Optional.of(LocalDate.parse(day));
    return this;
  }

  Person limit(
      Precaution.Kind kind, Region region, Side side, Digit digit, String from, String until) {
    precautions.add(
        new Precaution(
            kind,
            region,
            side,
            digit,
            Optional.of(LocalDate.parse(from)),
            Optional.of(LocalDate.parse(until)),
            "operating surgeon (invented)",
            ""));
    return this;
  }

  Person visit(String day, String therapist, Consumer<Hands> what) {
    Visit visit = new Visit(tests, id, LocalDate.parse(day), new TherapistId(therapist));
    what.accept(new Hands(visit));
    visits.add(visit.record());
    return this;
  }

  PatientRecord record() {
    Patient patient =
        new Patient(
            id, number, name, birth, sex, hand, involved, diagnosis, onset, surgery, height);
    return new PatientRecord(patient, precautions, List.copyOf(visits));
  }
}
