package styloid.model;

/** Stable name of a item: lower-case letters, digits and single hyphens. */
public record ItemId(String value) implements Comparable<ItemId> {
  public ItemId {
    Codes.slug("item id", value);
  }

  @Override
  public int compareTo(ItemId other) {
    return value.compareTo(other.value);
  }

  @Override
  public boolean equals(Object other) {
    return this == other || other instanceof ItemId that && value.equals(that.value);
  }

  @Override
  public int hashCode() {
    return value.hashCode();
  }

  @Override
  public String toString() {
    return value;
  }
}
