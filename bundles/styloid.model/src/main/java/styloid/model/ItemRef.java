package styloid.model;

import java.util.Objects;

/** An item of a test, whichever side, digit or trial. */
public record ItemRef(TestId test, ItemId item) {
  public ItemRef {
    Objects.requireNonNull(test, "test");
    Objects.requireNonNull(item, "item");
  }
}
