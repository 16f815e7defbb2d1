package styloid.model.norm;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import styloid.model.Codes;

/** What a table has for a person: a row, or the reason why not. */
public sealed interface NormLookup permits NormLookup.Found, NormLookup.Missing {

  /** The row. */
  record Found(NormRow row) implements NormLookup {
    public Found {
      Objects.requireNonNull(row, "row");
    }
  }

  /**
   * No row.
   *
   * @param covered the ages or heights the table has, where the reason is that it lacks this one
   */
  record Missing(Reason reason, Optional<Band> covered) implements NormLookup {
    public Missing {
      Objects.requireNonNull(reason, "reason");
      Objects.requireNonNull(covered, "covered");
    }

    Missing(Reason reason) {
      this(reason, Optional.empty());
    }
  }

  /** Why a table has no row for a person, in the order in which it is found out. */
  enum Reason {
    /** No row of the table has these extra keys. */
    NOT_IN_TABLE,
    SEX_UNKNOWN,
    SEX_NOT_COVERED,
    /** The side, or the dominant hand where the table goes by it, is not known. */
    HAND_UNKNOWN,
    HAND_NOT_COVERED,
    AGE_UNKNOWN,
    AGE_OUTSIDE,
    HEIGHT_UNKNOWN,
    HEIGHT_OUTSIDE;

    public String code() {
      return Codes.of(this);
    }
  }

  /** Handles both answers. */
  default <T> T match(Function<NormRow, T> found, Function<Missing, T> missing) {
    return this instanceof Found f ? found.apply(f.row()) : missing.apply((Missing) this);
  }
}
