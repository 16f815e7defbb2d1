package styloid.shell.frame;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Node;
import styloid.form.FormView;
import styloid.model.Message;
import styloid.session.Session;
import styloid.shell.look.Displays;
import styloid.spi.Labels;
import styloid.spi.Texts;

/**
 * What every screen works with.
 *
 * @param screens shows another screen or a card over this one
 * @param displays how the user wants to see it
 * @param note a word about the clinic as a whole, such as that its patients are invented
 */
public record Shell(
    Session session,
    Work work,
    Clock clock,
    Locale locale,
    Therapists therapists,
    TimerLengths lengths,
    Optional<String> note,
    Displays displays,
    Screens screens) {
  public static final String SCOPE = "shell";

  /** Moves between screens. */
  public interface Screens {
    void caseload();

    void evaluation();

    /** Shows a card over the screen until {@link #uncover}. */
    void cover(Node card);

    void uncover();

    /** Shows the card that sets how the window looks. */
    void display();

    /** The user wants to see the window differently from now on. */
    void lookAnew();

    /** Begins the guided evaluation. */
    void guide();

    /** Says that something could not be done, and why. */
    void problem(Exception why);
  }

  /** Words of all scopes as they are now; modules may come and go. */
  public Texts texts() {
    return withOwn(session.texts(locale));
  }

  public static Texts withOwn(Texts texts) {
    return texts.with(FormView.SCOPE, FormView.labels()).with(SCOPE, Labels.beside(Shell.class));
  }

  /** Languages the window speaks, by their codes. */
  public static Set<String> languages() {
    return Labels.beside(Shell.class).languages();
  }

  public LocalDate today() {
    return LocalDate.now(clock);
  }

  /** The window's own words for a key. */
  public static String say(Texts texts, String key, Object... args) {
    return texts.text(Message.of(SCOPE, key, args));
  }
}
