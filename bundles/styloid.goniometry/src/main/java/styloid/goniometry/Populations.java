package styloid.goniometry;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import styloid.model.Message;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.Source;
import styloid.model.Unit;
import styloid.model.norm.Band;
import styloid.model.norm.NormRow;
import styloid.model.norm.NormTable;

/** Means of a studied population by motion, sex and age, all of one mode. */
final class Populations {
  private final NormTable table;
  private final Mode mode;
  private final Source whole;
  private final Map<String, List<NormRow>> byMotion = new HashMap<>();

  private Populations(String file, Mode mode) {
    this.table = NormTable.beside(Populations.class, file, Unit.Dimension.ANGLE);
    this.mode = mode;
    this.whole =
        table.rows().stream()
            .max(Comparator.comparing(NormRow::status))
            .map(table::source)
            .orElseThrow();
    Planes.motions()
        .map(Motion::id)
        .forEach(
            id ->
                byMotion.put(
                    id,
                    table.rows().stream()
                        .filter(row -> row.keys().get("motion").equals(id))
                        .sorted(Comparator.comparingInt(Populations::years))
                        .toList()));
  }

  /** Active motion of males with standard deviations. */
  static Populations active() {
    return new Populations("rom_boone_azen_1979.csv", Mode.ACTIVE);
  }

  /** Passive motion of both sexes, means only. */
  static Populations passive() {
    return new Populations("rom_soucie_2011.csv", Mode.PASSIVE);
  }

  private static int years(NormRow row) {
    return row.age().max().orElseThrow() - row.age().min();
  }

  boolean has(Motion motion) {
    return !byMotion.get(motion.id()).isEmpty();
  }

  /** The row of the narrowest age band the patient belongs to, with an SD where one is needed. */
  Optional<NormRow> row(Motion motion, PatientContext context, boolean withSd) {
    return byMotion.get(motion.id()).stream()
        .filter(row -> !withSd || row.sd().isPresent())
        .filter(row -> Population.of(row, Optional.of(mode)).refuses(context, mode).isEmpty())
        .findFirst();
  }

  /** Why the patient belongs to none of the rows; empty when to one of them. */
  Optional<Message> refusal(Motion motion, PatientContext context) {
    List<NormRow> rows = byMotion.get(motion.id());
    Optional<Patient.Sex> sex =
        rows.stream()
            .map(NormRow::sex)
            .filter(context.patient().sex()::equals)
            .findFirst()
            .orElse(rows.get(0).sex());
    int from = rows.stream().mapToInt(row -> row.age().min()).min().orElseThrow();
    int to = rows.stream().mapToInt(row -> row.age().max().orElseThrow()).max().orElseThrow();
    Band ages = new Band(from, Optional.of(to));
    return new Population(sex, ages, Optional.of(mode)).refuses(context, mode);
  }

  Source source(NormRow row) {
    return table.source(row);
  }

  /** The table as a whole, with its weakest status. */
  Source source() {
    return whole;
  }
}
