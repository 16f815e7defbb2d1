package styloid.session;

/**
 * What went wrong in a module.
 *
 * @param module id of the test, or the class name where the module could not say its id
 * @param stage what it was asked for: definition, results, sheets, findings
 * @param code short code; the same fault gives the same code
 * @param reason kind of fault in plain words
 * @param muted whether it is no longer called until someone tries again
 */
public record ModuleFault(String module, String stage, String code, String reason, boolean muted) {}
