package styloid.shell;

import java.lang.reflect.Method;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CancellationException;
import styloid.model.Capacity;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Patient;
import styloid.model.PatientId;
import styloid.model.Precaution;
import styloid.model.Region;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.model.Therapist;
import styloid.model.TherapistId;
import styloid.session.OpenEvaluation;
import styloid.session.Session;
import styloid.session.SessionService;
import styloid.shell.frame.Shell;
import styloid.shell.frame.Therapists;
import styloid.shell.frame.TimerLengths;
import styloid.shell.look.Display;
import styloid.shell.look.Displays;
import styloid.spi.Exporter;
import styloid.spi.Progress;
import styloid.spi.Report;
import styloid.spi.TestModule;
import styloid.spi.Texts;
import styloid.spi.Timer;
import styloid.spi.Withheld;
import styloid.store.PatientStore;
import styloid.store.StoreException;

/** The real session with the real test modules on invented patients, without OSGi. */
public final class Clinic {
  static final LocalDate DAY = LocalDate.of(2026, 3, 2);
  static final Clock CLOCK =
      Clock.fixed(DAY.atTime(10, 0).toInstant(ZoneOffset.UTC), ZoneOffset.UTC);
  public static final List<String> MODULES =
      List.of(
          "styloid.screen.Screen",
          "styloid.grading.Grading",
          "styloid.goniometry.Goniometry",
          "styloid.grip.GripModule");

  final MemoryStore store = new MemoryStore();
  final SessionService session = new SessionService();
  final Therapists therapists =
      new Therapists() {
        private List<Therapist> known =
            List.of(
                new Therapist(
                    new TherapistId("A. Therapist"),
                    Optional.empty(),
                    Optional.of(Capacity.LICENSED_THERAPIST)),
                new Therapist(
                    new TherapistId("B. Colleague"),
                    Optional.empty(),
                    Optional.of(Capacity.LEARNER_OR_ASSISTANT)));

        @Override
        public List<Therapist> known() {
          return known;
        }

        @Override
        public void used(Therapist who) {
          known = Therapists.first(who, known);
        }
      };

  final TimerLengths lengths =
      new TimerLengths() {
        private final Map<Timer.Kind, Integer> set = new EnumMap<>(Timer.Kind.class);

        @Override
        public int seconds(Timer timer) {
          return set.getOrDefault(timer.kind(), timer.seconds());
        }

        @Override
        public void set(Timer.Kind kind, int seconds) {
          set.put(kind, seconds);
        }
      };

  final Chosen displays = new Chosen();

  /** What a user chose, kept for as long as the test runs. */
  static final class Chosen implements Displays {
    private Display now = Display.USUAL;
    private boolean offered = true;

    /** As on a computer that has not seen the user before. */
    void firstTime() {
      offered = false;
    }

    @Override
    public Display now() {
      return now;
    }

    @Override
    public void set(Display display) {
      now = display;
    }

    @Override
    public boolean guideOffered() {
      boolean before = offered;
      offered = true;
      return before;
    }
  }

  Clinic() {
    give("setStore", PatientStore.class, store);
    for (String name : MODULES) {
      module(name).ifPresent(module -> give("addModule", TestModule.class, module));
    }
    give("addExporter", Exporter.class, new TextExporter());
    session.settle();
  }

  public static Optional<TestModule> module(String name) {
    try {
      var constructor = Class.forName(name).getDeclaredConstructor();
      constructor.setAccessible(true);
      return Optional.of((TestModule) constructor.newInstance());
    } catch (ReflectiveOperationException e) {
      return Optional.empty();
    }
  }

  <T> void give(String method, Class<T> type, T service) {
    try {
      Method bind = SessionService.class.getDeclaredMethod(method, type);
      bind.setAccessible(true);
      bind.invoke(session, service);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  Session session() {
    return session;
  }

  Patient patient(int number, String name, String born, Set<Side> involved, String diagnosis) {
    return new Patient(
        new PatientId(new UUID(7, number)),
        String.format("%05d", number),
        name,
        Optional.of(LocalDate.parse(born)),
        Optional.of(number % 2 == 0 ? Patient.Sex.FEMALE : Patient.Sex.MALE),
        Optional.of(number % 5 == 0 ? Patient.Dominance.LEFT : Patient.Dominance.RIGHT),
        involved,
        diagnosis,
        Optional.of(LocalDate.of(2026, 1, 12)),
        Optional.empty(),
        Optional.of(BigDecimal.valueOf(170)));
  }

  /** Fills the caseload; the first patient has a visit behind and one open. */
  Patient fill() throws StoreException {
    Patient first =
        patient(
            412,
            "Imke Invented",
            "1968-04-23",
            Set.of(Side.LEFT),
            "Stiff wrist after a fracture of the distal radius, six weeks in plaster");
    List<Patient> others = new ArrayList<>();
    others.add(
        patient(87, "Moritz Madeup", "1990-11-02", Set.of(Side.RIGHT), "Flexor tendon repair"));
    others.add(patient(5, "Fenja Fictional", "1951-06-30", Set.of(), "Weak grip of age"));
    others.add(
        patient(
            233,
            "Nobody Realname-Verylong von und zu Sampletown",
            "2014-01-15",
            Set.of(Side.RIGHT, Side.LEFT),
            ""));
    for (int more = 500; more < 512; more++) {
      others.add(patient(more, "Sample Person " + more, "1980-02-" + (more - 489), Set.of(), ""));
    }
    for (Patient other : others) {
      session.savePatient(other, List.of());
    }
    session.savePatient(
        first,
        List.of(
            limit(Precaution.Kind.NO_RESISTANCE, Region.WRIST, "Dr Example", "2026-04-06"),
            limit(Precaution.Kind.NO_PASSIVE_MOTION, Region.FOREARM, "Dr Example", "2026-03-16")));
    session.begin(first.id(), DAY.minusDays(28), new TherapistId("B. Colleague"));
    visit("limited", 20, 35);
    session.begin(first.id(), DAY, new TherapistId("A. Therapist"));
    visit("full", 24, 45);
    session.close();
    return first;
  }

  private static Precaution limit(Precaution.Kind kind, Region region, String by, String until) {
    return new Precaution(
        kind,
        region,
        Side.LEFT,
        Digit.NONE,
        Optional.empty(),
        Optional.of(LocalDate.parse(until)),
        by,
        "");
  }

  private void visit(String motion, int power, int angle) {
    record("screen", "elbow-flexion", Side.RIGHT, "1");
    record("screen", "elbow-flexion", Side.LEFT, "1");
    record("screen", "elbow-extension", Side.RIGHT, "1");
    record("screen", "elbow-extension", Side.LEFT, "1");
    record("screen", "forearm-supination", Side.RIGHT, "1");
    record("screen", "forearm-supination", Side.LEFT, motion.equals("full") ? "2" : "3");
    record("screen", "wrist-flexion", Side.LEFT, "2");
    record("screen", "wrist-flexion", Side.RIGHT, "1");
    for (TestId test : session.tests().stream().map(t -> t.id()).toList()) {
      if (!test.value().equals("screen")) {
        typeNumbers(test, power, angle);
      }
    }
    session.settle();
  }

  /** Records a number for the first items of a test that take one. */
  private void typeNumbers(TestId id, int power, int angle) {
    var test = session.tests().stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
    int left = 40;
    for (ItemKey key : test.keys()) {
      var item = test.item(key.item()).orElseThrow();
      if (left > 0 && item.kind() instanceof styloid.model.ItemKind.Number n) {
        int number = n.unit() == styloid.model.Unit.DEGREE ? angle : power;
        var value = new styloid.model.Quantity(BigDecimal.valueOf(number + key.trial()), n.unit());
        boolean free =
            Withheld.by(
                    test.groupOf(key.item()).orElseThrow(),
                    item,
                    key,
                    session.current().orElseThrow().context().precautions(),
                    session.current().orElseThrow().context().evaluation().date())
                .isEmpty();
        if (free && styloid.spi.EntryCheck.check(item, value).accepted()) {
          session.record(key, value, false);
          left--;
        }
      }
    }
  }

  private void record(String test, String item, Side side, String place) {
    TestId id = new TestId(test);
    session.tests().stream()
        .filter(t -> t.id().equals(id))
        .flatMap(t -> t.item(new ItemId(item)).stream())
        .findFirst()
        .ifPresent(
            found -> {
              var choices = (styloid.model.ItemKind.Choices) found.kind();
              Choice choice = new Choice(choices.codes().get(Integer.parseInt(place) - 1));
              session.record(new ItemKey(id, found.id(), side, Digit.NONE, 1), choice, false);
            });
  }

  /** The newest evaluation of the first patient, open. */
  public static OpenEvaluation opened() {
    Clinic clinic = new Clinic();
    try {
      return clinic.openFirst(clinic.fill());
    } catch (StoreException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The same, with results and order. */
  public static OpenEvaluation settled() {
    Clinic clinic = new Clinic();
    try {
      clinic.openFirst(clinic.fill());
      clinic.session.settle();
      return clinic.session.current().orElseThrow();
    } catch (StoreException e) {
      throw new IllegalStateException(e);
    }
  }

  /** English words of all tests and of the window. */
  public static Texts words() {
    return Shell.withOwn(new Clinic().session.texts(Locale.ENGLISH));
  }

  OpenEvaluation openFirst(Patient patient) throws StoreException {
    return session.open(session.evaluations(patient.id()).get(0).id());
  }

  /** Writes the patient's name, in steps, so that progress and cancelling can be seen. */
  private static final class TextExporter implements Exporter {
    @Override
    public String format() {
      return "txt";
    }

    @Override
    public void write(Report report, Path target, Progress progress) throws java.io.IOException {
      for (int step = 0; step < 5; step++) {
        progress.step(step, 5);
        if (progress.cancelled()) {
          throw new CancellationException();
        }
      }
      Files.writeString(target, report.context().patient().name());
    }
  }
}
