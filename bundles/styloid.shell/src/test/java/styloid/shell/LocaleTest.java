package styloid.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import styloid.model.Entry;
import styloid.model.Quantity;
import styloid.model.Unit;
import styloid.shell.look.Display;
import styloid.store.StoreException;

/** Numbers and dates are the reader's; the record is the same for everybody. */
class LocaleTest {
  private static final Display GERMAN = Display.USUAL.withLanguage(Optional.of("de"));

  @Test
  void aCommaIsTypedAndShownAndThePointIsKept() throws StoreException {
    try (EveryScreen screens = new EveryScreen(GERMAN, 1366, 768, name -> {})) {
      screens.open();
      for (int page = 0; page < 60 && grip(screens).isEmpty(); page++) {
        screens.control(KeyCode.PAGE_DOWN);
      }
      Node field = grip(screens).orElseThrow();
      Window.run(field::requestFocus);
      Window.settle();
      screens.type("28,5");
      screens.key(KeyCode.ENTER);
      List<Entry> entries = screens.clinic.session.current().orElseThrow().ledger().entries();
      Entry last = entries.get(entries.size() - 1);
      assertEquals(Optional.of(Quantity.of("28.5", Unit.KILOGRAM_FORCE)), last.value());
      assertTrue(
          Window.on(
              () ->
                  screens.stage.getScene().getRoot().lookupAll(".number").stream()
                      .anyMatch(n -> ((TextField) n).getText().equals("28,5"))));
    }
  }

  private static Optional<Node> grip(EveryScreen screens) {
    return Window.on(
        () ->
            screens.stage.getScene().getRoot().lookupAll(".number").stream()
                .filter(n -> n.getAccessibleText().startsWith("Right, Grip, trial 1 of 3"))
                .findFirst());
  }

  @Test
  void datesAreWrittenAsTheReaderWritesThem() throws StoreException {
    try (EveryScreen screens = new EveryScreen(GERMAN, 1366, 768, name -> {})) {
      screens.open();
      Window.settle();
      assertTrue(
          Window.on(
              () ->
                  screens.stage.getScene().getRoot().lookupAll(".banner-fact").stream()
                      .anyMatch(n -> ((Labeled) n).getText().contains("23.04.1968"))));
    }
  }
}
