package styloid.goniometry;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import styloid.model.Codes;
import styloid.model.Source;
import styloid.model.Unit;
import styloid.model.norm.NormRow;
import styloid.model.norm.NormTable;

/** The gathered normal values of {@code rom_normal_values.csv}, by reference and motion. */
final class References {
  private final Map<String, Map<String, Reference>> byCode = new HashMap<>();
  private final Map<String, Map<String, Printed>> printedOnly = new HashMap<>();

  /**
   * A normal value of one motion.
   *
   * @param low the value in degrees, or the lower end of a printed range or limit
   * @param printed as the source prints it
   */
  record Reference(BigDecimal low, String printed, Population population, Source source) {}

  /**
   * A value printed in a way that leaves open what it is of.
   *
   * @param degrees as the source prints it
   */
  record Printed(BigDecimal degrees, Source source) {}

  References() {
    NormTable table =
        NormTable.beside(References.class, "rom_normal_values.csv", Unit.Dimension.ANGLE);
    for (NormRow row : table.rows()) {
      Motion motion = Planes.motion(row.keys().get("motion"));
      String code = row.keys().get("reference");
      if (row.mean().isPresent()) {
        of(byCode, code).put(motion.id(), reference(table, row));
      } else {
        BigDecimal printed = new BigDecimal(row.others().get("printed"));
        of(printedOnly, code).put(motion.id(), new Printed(printed, source(table, row)));
      }
    }
  }

  private static <T> Map<String, T> of(Map<String, Map<String, T>> byCode, String code) {
    return byCode.computeIfAbsent(code, c -> new HashMap<>());
  }

  private static Reference reference(NormTable table, NormRow row) {
    Optional<Mode> mode =
        Optional.ofNullable(row.others().get("mode")).map(m -> Codes.parse(Mode.class, m));
    return new Reference(
        row.mean().orElseThrow(),
        row.others().get("printed"),
        Population.of(row, mode),
        source(table, row));
  }

  private static Source source(NormTable table, NormRow row) {
    String citation = table.headers().get("source." + row.others().get("source"));
    return new Source(citation, row.status());
  }

  /** Codes the clinic may choose from. */
  TreeSet<String> codes() {
    return new TreeSet<>(byCode.keySet());
  }

  Optional<Reference> of(String code, Motion motion) {
    return Optional.ofNullable(byCode.getOrDefault(code, Map.of()).get(motion.id()));
  }

  /** What a reference prints for a motion without a value to compare with. */
  Optional<Printed> printedOnly(String code, Motion motion) {
    return Optional.ofNullable(printedOnly.getOrDefault(code, Map.of()).get(motion.id()));
  }
}
