package styloid.model.norm;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import styloid.model.Patient;
import styloid.model.SourceStatus;
import styloid.model.Unit;

/** Reads the text of one norm table and refuses what breaks the form of {@link NormTable}. */
final class NormTableReader {
  private static final List<String> HEADERS = List.of("source", "population", "score", "unit");
  private static final List<String> COLUMNS =
      List.of("sex", "age_min_years", "age_max_years", "status");
  private static final Set<String> OWN =
      Set.of(
          "sex",
          "age_min_years",
          "age_max_years",
          "status",
          "hand",
          "height_min_cm",
          "height_max_cm",
          "mean",
          "sd",
          "unit");
  private static final Pattern CENTILE = Pattern.compile("p[1-9][0-9]?");
  private static final Pattern NUMBER = Pattern.compile("-?\\d{1,9}(\\.\\d{1,9})?");
  private static final Pattern WHOLE = Pattern.compile("\\d{1,4}");

  private final String file;
  private final Unit.Dimension measures;
  private final LinkedHashMap<String, String> headers = new LinkedHashMap<>();
  private final ArrayList<NormRow> rows = new ArrayList<>();
  private List<String> columns = List.of();
  private Set<String> keys = Set.of();
  private Unit unit;
  private int line;

  NormTableReader(String file, Unit.Dimension measures) {
    this.file = file;
    this.measures = measures;
  }

  NormTable read(String text) {
    for (String one : text.split("\r?\n", -1)) {
      line++;
      if (one.startsWith("#") && columns.isEmpty()) {
        header(one.substring(1));
      } else if (!one.isBlank() && columns.isEmpty()) {
        columns(one);
      } else if (!one.isBlank()) {
        rows.add(row(new Cells(split(one))));
      }
    }
    if (rows.isEmpty()) {
      throw refuse("the table has no rows");
    }
    boolean points = "points".equals(headers.get("ages"));
    new BandCheck(file, points).check(rows);
    return new NormTable(file, score(), unit, headers, points, rows);
  }

  private void header(String text) {
    int colon = text.indexOf(':');
    if (colon < 0) {
      throw refuse("a comment line must be \"# name: text\"");
    }
    String name = text.substring(0, colon).strip();
    if (headers.put(name, text.substring(colon + 1).strip()) != null) {
      throw refuse("\"# " + name + ":\" stands twice");
    }
  }

  private void columns(String text) {
    for (String needed : HEADERS) {
      if (headers.getOrDefault(needed, "").isBlank()) {
        throw refuse("\"# " + needed + ":\" must stand above the columns");
      }
    }
    score();
    unit = unit(headers.get("unit"));
    if (unit.dimension() != measures) {
      throw refuse("the unit " + unit.ucum() + " does not measure " + measures);
    }
    columns = split(text);
    if (new HashSet<>(columns).size() != columns.size()) {
      throw refuse("a column name stands twice");
    }
    keys = new HashSet<>();
    for (String key : headers.getOrDefault("keys", "").split(",")) {
      if (!key.isBlank()) {
        keys.add(key.strip());
      }
    }
    for (String needed : COLUMNS) {
      needColumn(needed);
    }
    keys.forEach(this::needColumn);
  }

  private void needColumn(String name) {
    if (!columns.contains(name)) {
      throw refuse("the column " + name + " is missing");
    }
  }

  private NormTable.Score score() {
    String score = headers.get("score");
    for (NormTable.Score known : NormTable.Score.values()) {
      if (known.name().equalsIgnoreCase(score)) {
        return known;
      }
    }
    throw refuse("the score \"" + score + "\" must be mean, maximum or single");
  }

  private Unit unit(String code) {
    try {
      return Unit.ofUcum(code);
    } catch (IllegalArgumentException unknown) {
      throw refuse(unknown.getMessage());
    }
  }

  private NormRow row(Cells cells) {
    String rowUnit = cells.text("unit");
    if (!rowUnit.isEmpty() && unit(rowUnit) != unit) {
      throw refuse("the unit " + rowUnit + " is not that of the table, " + unit.ucum());
    }
    LinkedHashMap<String, String> keyed = new LinkedHashMap<>();
    keys.forEach(key -> keyed.put(key, cells.text(key)));
    TreeMap<Integer, BigDecimal> centiles = new TreeMap<>();
    LinkedHashMap<String, String> others = new LinkedHashMap<>();
    for (String column : columns) {
      if (OWN.contains(column) || keys.contains(column)) {
        continue;
      }
      if (CENTILE.matcher(column).matches()) {
        cells.number(column).ifPresent(c -> centiles.put(Integer.parseInt(column.substring(1)), c));
      } else if (!cells.text(column).isEmpty()) {
        others.put(column, cells.text(column));
      }
    }
    checkRising(centiles);
    return new NormRow(
        line,
        sex(cells.text("sex")),
        cells.band("age_min_years", "age_max_years"),
        cells.band("height_min_cm", "height_max_cm"),
        hand(cells.text("hand")),
        keyed,
        cells.number("mean"),
        sd(cells),
        centiles,
        status(cells.text("status")),
        others);
  }

  private Optional<BigDecimal> sd(Cells cells) {
    Optional<BigDecimal> sd = cells.number("sd");
    if (sd.isPresent() && sd.get().signum() <= 0) {
      throw refuse("the SD " + sd.get() + " must be above zero");
    }
    if (sd.isPresent() && cells.number("mean").isEmpty()) {
      throw refuse("an SD needs a mean");
    }
    return sd;
  }

  private void checkRising(Map<Integer, BigDecimal> centiles) {
    BigDecimal before = null;
    for (BigDecimal centile : centiles.values()) {
      if (before != null && centile.compareTo(before) <= 0) {
        throw refuse("the centiles must rise");
      }
      before = centile;
    }
  }

  private Optional<Patient.Sex> sex(String text) {
    return switch (text) {
      case "F" -> Optional.of(Patient.Sex.FEMALE);
      case "M" -> Optional.of(Patient.Sex.MALE);
      case "" -> Optional.empty();
      default -> throw refuse("the sex \"" + text + "\" must be F, M or empty");
    };
  }

  private NormHand hand(String text) {
    for (NormHand hand : NormHand.values()) {
      if (hand.letter().equals(text)) {
        return hand;
      }
    }
    throw refuse("the hand \"" + text + "\" must be R, L, D, N or empty");
  }

  private SourceStatus status(String text) {
    String code = text.replace(' ', '-');
    for (SourceStatus status : SourceStatus.values()) {
      if (status.code().equals(code)) {
        return status;
      }
    }
    throw refuse("the status \"" + text + "\" must be verified, memory or common practice");
  }

  private List<String> split(String text) {
    ArrayList<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' && quoted && i + 1 < text.length() && text.charAt(i + 1) == '"') {
        cell.append(c);
        i++;
      } else if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        cells.add(cell.toString().strip());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    if (quoted) {
      throw refuse("a quotation mark is not closed");
    }
    cells.add(cell.toString().strip());
    return cells;
  }

  private NormTableException refuse(String what) {
    return new NormTableException(file, line, what);
  }

  /** The cells of one line, by column. */
  private final class Cells {
    private final List<String> cells;

    Cells(List<String> cells) {
      this.cells = cells;
      if (cells.size() != columns.size()) {
        throw refuse(cells.size() + " cells stand under " + columns.size() + " columns");
      }
    }

    /** The text of a column; empty when the table has no such column. */
    String text(String column) {
      int at = columns.indexOf(column);
      return at < 0 ? "" : cells.get(at);
    }

    Optional<BigDecimal> number(String column) {
      String text = text(column);
      if (text.isEmpty()) {
        return Optional.empty();
      }
      if (!NUMBER.matcher(text).matches()) {
        throw refuse("\"" + text + "\" under " + column + " is not a number");
      }
      return Optional.of(new BigDecimal(text));
    }

    Band band(String from, String to) {
      int min = whole(from).orElse(0);
      Optional<Integer> max = whole(to);
      if (max.isPresent() && max.get() < min) {
        throw refuse(from + " is above " + to);
      }
      return new Band(min, max);
    }

    private Optional<Integer> whole(String column) {
      String text = text(column);
      if (text.isEmpty()) {
        return Optional.empty();
      }
      if (!WHOLE.matcher(text).matches()) {
        throw refuse("\"" + text + "\" under " + column + " is not a whole number");
      }
      return Optional.of(Integer.valueOf(text));
    }
  }
}
