package styloid.model;

import java.util.Objects;

/** An item of a test, whichever side, digit or trial. */
public record ItemRef(TestId test, ItemId item) {
  public ItemRef {
    Objects.requireNonNull(test, "test");
    Objects.requireNonNull(item, "item");
  }

  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof ItemRef that && item.equals(that.item) && test.equals(that.test);
  }

  @Override
  public int hashCode() {
    return test.hashCode() * 31 + item.hashCode();
  }
}
