package styloid.custom;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import styloid.model.FileProblem;
import styloid.model.TestId;
import styloid.spi.Formulas;
import styloid.spi.ModuleNotice;

/**
 * The declared tests in force, by file: a file that cannot be read leaves its last good version in
 * force. Tells what comes and goes; knows neither files nor services.
 */
final class Shelf {
  private static final String CODE = "FILE";
  private static final int MOST_TOLD = 3;

  private final Formulas formulas;
  private final Set<TestId> reserved;
  private final Port port;
  private final Map<String, DeclaredModule> inForce = new LinkedHashMap<>();
  private final Map<String, ModuleNotice> notices = new HashMap<>();

  /** Where what comes and goes is told. */
  interface Port {
    void comes(DeclaredModule module);

    void goes(DeclaredModule module);

    void comes(ModuleNotice notice);

    void goes(ModuleNotice notice);
  }

  /**
   * An empty shelf.
   *
   * @param reserved ids no file may claim
   */
  Shelf(Formulas formulas, Set<TestId> reserved, Port port) {
    this.formulas = formulas;
    this.reserved = Set.copyOf(reserved);
    this.port = port;
  }

  /**
   * Takes the text of a file in.
   *
   * @param text empty when the file could not be read as text
   */
  void put(String file, Optional<String> text, Function<String, Optional<String>> beside) {
    TreeSet<TestId> taken = new TreeSet<>(reserved);
    inForce.forEach(
        (other, module) -> {
          if (!other.equals(file)) {
            taken.add(module.definition().id());
          }
        });
    DeclaredFile.Read read =
        text.map(t -> new DeclaredFile(formulas, taken).read(t, beside))
            .orElseGet(
                () ->
                    new DeclaredFile.Read(
                        Optional.empty(),
                        List.of(
                            new FileProblem(
                                0, 0, "$", "the file cannot be read; save it as UTF-8 text"))));
    DeclaredModule before = inForce.get(file);
    if (read.module().isEmpty()) {
      tell(file, notice(file, before, read.problems()));
      return;
    }
    DeclaredModule now = read.module().get();
    silence(file);
    if (before != null) {
      inForce.remove(file);
      port.goes(before);
    }
    inForce.put(file, now);
    port.comes(now);
  }

  /** The file is gone, and its test with it. */
  void remove(String file) {
    silence(file);
    DeclaredModule before = inForce.remove(file);
    if (before != null) {
      port.goes(before);
    }
  }

  private void tell(String file, ModuleNotice notice) {
    silence(file);
    notices.put(file, notice);
    port.comes(notice);
  }

  private void silence(String file) {
    ModuleNotice told = notices.remove(file);
    if (told != null) {
      port.goes(told);
    }
  }

  private static ModuleNotice notice(
      String file, DeclaredModule before, List<FileProblem> problems) {
    String reasons =
        problems.stream()
            .limit(MOST_TOLD)
            .map(FileProblem::toString)
            .collect(Collectors.joining("; "));
    int more = problems.size() - MOST_TOLD;
    String kept =
        before == null
            ? "The test is not loaded"
            : "Version " + before.definition().version() + " stays in force";
    String module = before == null ? file : before.definition().id().value();
    return new ModuleNotice(
        module,
        file,
        CODE,
        file + ", " + reasons + (more > 0 ? "; and " + more + " more" : "") + ". " + kept + ".");
  }

  /** The modules in force by file. */
  Map<String, DeclaredModule> inForce() {
    return new TreeMap<>(inForce);
  }
}
