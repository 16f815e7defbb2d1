package styloid.shell.map;

import styloid.model.Codes;

/**
 * How one part of one limb stands.
 *
 * @param done places with an entry, an absence included
 * @param open places still to be filled: asked, not optional, put forward and not withheld
 * @param withheld places a precaution forbids, without an entry or with that absence
 * @param limited whether a precaution in force reaches the part
 * @param notable whether something out of the ordinary was recorded or follows
 */
record PartState(int done, int open, int withheld, boolean limited, boolean notable) {
  /** In one word; drawn as a shape beside it. */
  enum Stage {
    UNTOUCHED,
    IN_PROGRESS,
    DONE,
    /** All there is to do is forbidden. */
    WITHHELD,
    /** There is nothing that must be done. */
    NOTHING;

    String code() {
      return Codes.of(this);
    }
  }

  Stage stage() {
    if (open == 0 && withheld > 0 && done == 0) {
      return Stage.WITHHELD;
    } else if (done == 0) {
      return open == 0 ? Stage.NOTHING : Stage.UNTOUCHED;
    }
    return open == 0 ? Stage.DONE : Stage.IN_PROGRESS;
  }
}
