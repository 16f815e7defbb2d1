package styloid.launcher;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A part that did not start.
 *
 * @param part bundle or class
 * @param ofWindow whether it only lacks the window, as is right when none is open
 */
record Fault(Kind kind, String part, String detail, boolean ofWindow) {
  private static final Pattern PACKAGE = Pattern.compile("osgi\\.wiring\\.package=([\\w.]+)");

  /** What is wrong with it. */
  enum Kind {
    /** Listed, not in the folder. */
    FILE_MISSING,
    /** Detail: the package nobody exports. */
    NEEDS_PACKAGE,
    /** Detail: the service nobody offers. */
    WAITS_FOR,
    /** Its class does not load. */
    CANNOT_BE_MADE,
    /** Detail: what it said. */
    FAILED
  }

  static Fault fileMissing(String file) {
    return new Fault(Kind.FILE_MISSING, file, "", false);
  }

  static Fault waitsFor(String component, String service) {
    return new Fault(Kind.WAITS_FOR, component, service, service.startsWith("javafx."));
  }

  static Fault cannotBeMade(String component) {
    return new Fault(Kind.CANNOT_BE_MADE, component, "", false);
  }

  static Fault failed(String part, String reason) {
    return new Fault(Kind.FAILED, part, reason, false);
  }

  /** Why a bundle did not start; the framework's reason ends with the deepest cause. */
  static Fault ofBundle(String bundle, Throwable why) {
    String said = String.valueOf(why.getMessage());
    Matcher packages = PACKAGE.matcher(said);
    String missing = null;
    while (packages.find()) {
      missing = packages.group(1);
    }
    if (missing != null) {
      return new Fault(Kind.NEEDS_PACKAGE, bundle, missing, missing.startsWith("javafx."));
    }
    Throwable deepest = why;
    while (deepest.getCause() != null) {
      deepest = deepest.getCause();
    }
    return failed(bundle, deepest.toString());
  }

  String text(Words words) {
    return words.text(
        switch (kind) {
          case FILE_MISSING -> "fault.file-missing";
          case NEEDS_PACKAGE -> "fault.needs-package";
          case WAITS_FOR -> "fault.waits-for";
          case CANNOT_BE_MADE -> "fault.cannot-be-made";
          case FAILED -> "fault.failed";
        },
        part,
        detail);
  }
}
