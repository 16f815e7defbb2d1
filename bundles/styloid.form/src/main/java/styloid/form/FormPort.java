package styloid.form;

import java.util.Optional;
import org.osgi.annotation.versioning.ConsumerType;
import styloid.model.ItemKey;
import styloid.model.Value;
import styloid.spi.Timer;

/** What a form asks of whoever shows it. All calls come on the JavaFX thread and return at once. */
@ConsumerType
public interface FormPort {

  /**
   * Takes a value into the record.
   *
   * @param confirmed whether the therapist was asked about it and kept it
   */
  void record(ItemKey key, Value value, boolean confirmed);

  /**
   * Takes a value that a precaution withholds into the record, with the reason why.
   *
   * @param reason as the therapist wrote it, 1 to {@value styloid.model.InSpite#LONGEST_REASON}
   *     characters
   */
  void recordInSpite(ItemKey key, Value value, boolean confirmed, String reason);

  /** Whether who works may record what a precaution withholds; nobody may until it is known. */
  default boolean mayOverride() {
    return false;
  }

  /** Somebody who may not override wanted to; whoever shows the form may ask who works. */
  default void askWhoWorks() {
    // nothing can be asked
  }

  /** How long a timer runs here, in seconds; its usual length unless the user set another. */
  default int seconds(Timer timer) {
    return timer.seconds();
  }

  /** The keys of the user's foot pedals. */
  default Pedals pedals() {
    return Pedals.NONE;
  }

  /** Keeps text under way in a field; blank drops it. */
  void draft(ItemKey key, String text);

  /** Takes back the latest recording, wherever it was made, and shows that place. */
  void undo();

  /** Brings back what was taken back last, and shows that place. */
  void redo();

  /**
   * Enter is about to go on from one place to another. Whoever shows the form may lead elsewhere
   * instead.
   *
   * @param to empty at the end of what the form shows
   * @return whether entry was led elsewhere
   */
  default boolean leads(ItemKey from, Optional<ItemKey> to) {
    return false;
  }

  /** The walk has come to the end of what the form shows, or to its beginning. */
  void leavePage(boolean forward);

  /** Shows how the results beside the form came about, or hides it again. */
  void showWhy();

  /** Shows the keys of the place one is in. */
  void showKeys();
}
