package styloid.shell.help;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import styloid.model.Patient;
import styloid.model.PatientId;
import styloid.model.Side;
import styloid.model.TherapistId;
import styloid.session.OpenEvaluation;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.shell.frame.Spread;
import styloid.spi.Texts;

/**
 * One line over the screen with the next thing to do and why, while a newcomer tries the suite on
 * an invented patient. Takes the focus never, and nobody has to follow it.
 */
public final class GuideStrip extends VBox {
  /** Always the same, so that there is never more than one. */
  private static final PatientId PRACTICE = new PatientId(new UUID(0x57AL, 1));

  private static final System.Logger LOG = System.getLogger(GuideStrip.class.getName());

  private final Shell shell;
  private final Texts texts;
  private final Label words = Make.text("", "guide-words");
  private final Label why = Make.text("", "guide-why");
  private final Button begin;
  private final Button skip;
  private final AtomicBoolean told = new AtomicBoolean();
  private Optional<Guide> guide = Optional.empty();
  private AutoCloseable listening = () -> {};

  public GuideStrip(Shell shell, Texts texts) {
    this.shell = shell;
    this.texts = texts;
    getStyleClass().add("guide-strip");
    begin = Make.button(say("guide.begin"), this::begin);
    skip = Make.button(say("guide.skip"), this::skip);
    words.setMinHeight(USE_PREF_SIZE);
    why.setMinHeight(USE_PREF_SIZE);
    getChildren().add(new Spread(270, new VBox(1, words, why), begin, skip));
    Make.shown(this, false);
  }

  /** Offers the guide, the first time this user sees the window. */
  public void offerOnce() {
    if (!shell.displays().guideOffered()) {
      words.setText(say("guide.offer"));
      why.setText(say("guide.offer.why"));
      skip.setText(say("guide.skip"));
      Make.shown(begin, true);
      Make.shown(this, true);
    }
  }

  /** Begins an evaluation of the invented patient and says step by step what to do. */
  public void begin() {
    skip();
    LocalDate today = shell.today();
    // Nobody is taken for working here without having said so.
    TherapistId by = new TherapistId(say("guide.therapist"));
    shell
        .work()
        .run(
            () -> {
              shell.session().savePatient(practice(), List.of());
              return shell.session().begin(PRACTICE, today, by);
            },
            this::start,
            shell.screens()::problem);
  }

  private Patient practice() {
    return new Patient(
        PRACTICE,
        say("guide.patient-record"),
        say("guide.patient"),
        Optional.of(LocalDate.of(1980, 1, 1)),
        Optional.of(Patient.Sex.FEMALE),
        Optional.of(Patient.Dominance.RIGHT),
        Set.of(Side.LEFT),
        say("guide.diagnosis"),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private void start(OpenEvaluation open) {
    guide = Optional.of(new Guide());
    Make.shown(begin, false);
    listening = shell.session().listen(change -> tell());
    update();
    shell.screens().evaluation();
  }

  private void tell() {
    if (told.compareAndSet(false, true)) {
      Platform.runLater(
          () -> {
            told.set(false);
            update();
          });
    }
  }

  private void update() {
    Optional<OpenEvaluation> open =
        shell.session().current().filter(now -> now.context().patient().id().equals(PRACTICE));
    if (open.isEmpty()) {
      skip();
    } else if (guide.isPresent()) {
      guide.get().see(open.get());
      Guide.Step step = guide.get().next();
      int of = Guide.Step.values().length;
      skip.setText(say("guide.end"));
      words.setText(say("guide.step", step.ordinal() + 1, of, say("guide." + step.code())));
      why.setText(say("guide." + step.code() + ".why"));
      Make.shown(this, true);
    }
  }

  /** Whether it is on the screen. */
  public boolean isOn() {
    return isVisible();
  }

  /** Takes it off the screen; what was recorded stays. */
  public void skip() {
    guide = Optional.empty();
    Make.shown(this, false);
    try {
      listening.close();
    } catch (Exception e) {
      LOG.log(System.Logger.Level.WARNING, "the session still tells a closed guide", e);
    }
    listening = () -> {};
  }

  private String say(String key, Object... args) {
    return Shell.say(texts, key, args);
  }
}
