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

  /**
   * A normal value of one motion.
   *
   * @param low the value in degrees, or the lower end of a printed range or limit
   * @param printed as the source prints it
   */
  record Reference(BigDecimal low, String printed, Population population, Source source) {}

  References() {
    NormTable table =
        NormTable.beside(References.class, "rom_normal_values.csv", Unit.Dimension.ANGLE);
    for (NormRow row : table.rows()) {
      Motion motion = Planes.motion(row.keys().get("motion"));
      byCode
          .computeIfAbsent(row.keys().get("reference"), code -> new HashMap<>())
          .put(motion.id(), reference(table, row));
    }
  }

  private static Reference reference(NormTable table, NormRow row) {
    Optional<Mode> mode =
        Optional.ofNullable(row.others().get("mode")).map(m -> Codes.parse(Mode.class, m));
    String citation = table.headers().get("source." + row.others().get("source"));
    return new Reference(
        row.mean().orElseThrow(),
        row.others().get("printed"),
        Population.of(row, mode),
        new Source(citation, row.status()));
  }

  /** Codes the clinic may choose from. */
  TreeSet<String> codes() {
    return new TreeSet<>(byCode.keySet());
  }

  Optional<Reference> of(String code, Motion motion) {
    return Optional.ofNullable(byCode.getOrDefault(code, Map.of()).get(motion.id()));
  }
}
