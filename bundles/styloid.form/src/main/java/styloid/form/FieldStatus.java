package styloid.form;

import styloid.model.Codes;

/** How a field stands; its word is {@code status.<code>} of the labels. */
enum FieldStatus {
  EMPTY,
  /** Text is under way that is no entry yet. */
  UNFINISHED,
  SAVING,
  SAVED,
  /** Held by the session, refused by the disk. */
  NOT_SAVED,
  /** A precaution forbids it. */
  WITHHELD,
  /** Its condition does not hold now. */
  NOT_ASKED;

  String code() {
    return Codes.of(this);
  }
}
