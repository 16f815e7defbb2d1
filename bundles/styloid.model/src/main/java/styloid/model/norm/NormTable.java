package styloid.model.norm;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import styloid.model.Patient;
import styloid.model.Source;
import styloid.model.Unit;

/**
 * A published table of reference values, read from CSV.
 *
 * <p>The file begins with comment lines {@code # name: text}. {@code source} (citation), {@code
 * population}, {@code score} ({@code mean} of the trials, {@code maximum} of the trials or {@code
 * single} measurement) and {@code unit} (UCUM code) must be there. {@code keys} lists extra key
 * columns, separated by commas. {@code ages: points} says that the rows stand at single ages, not
 * in bands. Any other name is kept for the reader.
 *
 * <p>Then a line of column names and one line a row. {@code sex} (F, M, empty for both), {@code
 * age_min_years}, {@code age_max_years} (completed years, both included; empty means no limit) and
 * {@code status} (verified, memory, common practice) must be there; {@code hand} (R, L, or D and N
 * for dominant and not; empty for any), {@code height_min_cm}, {@code height_max_cm} (included),
 * {@code mean}, {@code sd}, {@code unit} (must repeat the table's) and centiles {@code p1} to
 * {@code p99} may be. Bands of one series (sex, hand, keys) may neither overlap nor leave a hole.
 *
 * @param name file name, for messages
 * @param headers every comment line, by name
 * @param points whether rows stand at single ages
 */
public record NormTable(
    String name,
    Score score,
    Unit unit,
    Map<String, String> headers,
    boolean points,
    List<NormRow> rows) {

  /** Which figure of a person's trials the table is made of. */
  public enum Score {
    MEAN,
    MAXIMUM,
    SINGLE
  }

  public NormTable {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(score, "score");
    Objects.requireNonNull(unit, "unit");
    headers = Map.copyOf(headers);
    rows = List.copyOf(rows);
  }

  /**
   * Reads a table.
   *
   * @param measures what its unit must measure
   * @throws NormTableException when the table breaks a rule of its form
   */
  public static NormTable parse(String name, String text, Unit.Dimension measures) {
    return new NormTableReader(name, measures).read(text);
  }

  /**
   * Reads a table that lies beside a class, in UTF-8.
   *
   * @throws NormTableException when the file is missing or breaks a rule of its form
   */
  public static NormTable beside(Class<?> owner, String file, Unit.Dimension measures) {
    try (InputStream in = owner.getResourceAsStream(file)) {
      if (in == null) {
        throw new NormTableException(file, 0, "is missing beside " + owner.getName());
      }
      return parse(file, new String(in.readAllBytes(), StandardCharsets.UTF_8), measures);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public String citation() {
    return headers.get("source");
  }

  public String population() {
    return headers.get("population");
  }

  /** The citation, with the status of one row. */
  public Source source(NormRow row) {
    return new Source(citation(), row.status());
  }

  /**
   * The row for a person. In a table of single ages it is the row at that age or the last before
   * it; ages before the first and after the last row are outside.
   *
   * @throws IllegalArgumentException when the query does not name the table's key columns
   */
  public NormLookup find(NormQuery query) {
    List<NormRow> left = keep(rows, r -> r.keys().equals(query.keys()));
    if (left.isEmpty()) {
      checkKeys(query);
      return new NormLookup.Missing(NormLookup.Reason.NOT_IN_TABLE);
    }
    if (left.stream().anyMatch(r -> r.sex().isPresent())) {
      if (query.sex().isEmpty()) {
        return new NormLookup.Missing(NormLookup.Reason.SEX_UNKNOWN);
      }
      Patient.Sex sex = query.sex().get();
      left = keep(left, r -> r.sex().map(sex::equals).orElse(true));
      if (left.isEmpty()) {
        return new NormLookup.Missing(NormLookup.Reason.SEX_NOT_COVERED);
      }
    }
    return byHand(left, query);
  }

  private void checkKeys(NormQuery query) {
    if (!rows.isEmpty() && !rows.get(0).keys().keySet().equals(query.keys().keySet())) {
      throw new IllegalArgumentException(
          name + " goes by " + rows.get(0).keys().keySet() + ", not " + query.keys().keySet());
    }
  }

  private NormLookup byHand(List<NormRow> rows, NormQuery query) {
    List<NormRow> left = rows;
    if (left.stream().anyMatch(r -> r.hand() != NormHand.ANY)) {
      boolean byDominance = left.stream().anyMatch(r -> r.hand().byDominance());
      Optional<NormHand> hand = query.hand(byDominance);
      if (hand.isEmpty()) {
        return new NormLookup.Missing(NormLookup.Reason.HAND_UNKNOWN);
      }
      left = keep(left, r -> r.hand() == NormHand.ANY || r.hand() == hand.get());
      if (left.isEmpty()) {
        return new NormLookup.Missing(NormLookup.Reason.HAND_NOT_COVERED);
      }
    }
    return byAge(left, query);
  }

  private NormLookup byAge(List<NormRow> rows, NormQuery query) {
    if (rows.stream().allMatch(r -> r.age().equals(Band.ALL))) {
      return byHeight(rows, query);
    }
    if (query.age().isEmpty()) {
      return new NormLookup.Missing(NormLookup.Reason.AGE_UNKNOWN);
    }
    int age = query.age().get();
    Band covered = span(rows, NormRow::age);
    List<NormRow> left =
        points && covered.holds(age) ? lastUpTo(rows, age) : keep(rows, r -> r.age().holds(age));
    if (left.isEmpty()) {
      return new NormLookup.Missing(NormLookup.Reason.AGE_OUTSIDE, Optional.of(covered));
    }
    return byHeight(left, query);
  }

  private static List<NormRow> lastUpTo(List<NormRow> rows, int age) {
    int last = rows.stream().mapToInt(r -> r.age().min()).filter(a -> a <= age).max().orElse(-1);
    return keep(rows, r -> r.age().min() == last);
  }

  private static NormLookup byHeight(List<NormRow> rows, NormQuery query) {
    if (rows.stream().allMatch(r -> r.height().equals(Band.ALL))) {
      return new NormLookup.Found(rows.get(0));
    }
    if (query.heightCm().isEmpty()) {
      return new NormLookup.Missing(NormLookup.Reason.HEIGHT_UNKNOWN);
    }
    int height = query.heightCm().get().setScale(0, RoundingMode.HALF_UP).intValueExact();
    List<NormRow> left = keep(rows, r -> r.height().holds(height));
    return left.isEmpty()
        ? new NormLookup.Missing(
            NormLookup.Reason.HEIGHT_OUTSIDE, Optional.of(span(rows, NormRow::height)))
        : new NormLookup.Found(left.get(0));
  }

  /** The row of the same series at the next age; empty after the last. */
  public Optional<NormRow> next(NormRow row) {
    return rows.stream()
        .filter(r -> r.series().equals(row.series()) && r.height().equals(row.height()))
        .filter(r -> r.age().min() > row.age().min())
        .min(Comparator.comparingInt(r -> r.age().min()));
  }

  private static Band span(List<NormRow> rows, Function<NormRow, Band> which) {
    ArrayList<Band> bands = new ArrayList<>(rows.stream().map(which).toList());
    bands.sort(Comparator.comparingInt(Band::min));
    return new Band(bands.get(0).min(), bands.get(bands.size() - 1).max());
  }

  private static List<NormRow> keep(List<NormRow> rows, Predicate<NormRow> which) {
    return rows.stream().filter(which).toList();
  }
}
