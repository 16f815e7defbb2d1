package styloid.session;

import styloid.spi.ModuleNotice;

/**
 * What went wrong in a module.
 *
 * @param module id of the test, or the class name where the module could not say its id
 * @param stage what it was asked for: definition, results, sheets, findings, file
 * @param code short code; the same fault gives the same code
 * @param reason kind of fault in plain words
 * @param muted whether it is no longer called until someone tries again
 */
public record ModuleFault(String module, String stage, String code, String reason, boolean muted) {
  /** Stage of what is wrong with a module's file; calling the module again does not help. */
  public static final String FILE = "file";

  static ModuleFault of(ModuleNotice notice) {
    return new ModuleFault(notice.module(), FILE, notice.code(), notice.reason(), false);
  }
}
