package styloid.figure;

import java.util.Objects;

/**
 * How a part of a limb stands, as it is drawn.
 *
 * @param limited whether a precaution reaches it
 * @param notable whether something is out of the ordinary
 */
public record MapMark(Progress progress, boolean limited, boolean notable) {
  /** An empty ring, a half-filled ring, a full one with a tick, a ring with a bar, a dot. */
  public enum Progress {
    UNTOUCHED,
    IN_PROGRESS,
    DONE,
    WITHHELD,
    NOTHING
  }

  public MapMark {
    Objects.requireNonNull(progress, "progress");
  }
}
