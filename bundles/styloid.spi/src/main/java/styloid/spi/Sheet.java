package styloid.spi;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import styloid.model.Message;
import styloid.model.Unit;

/**
 * A sheet of a report as data: blocks from top to bottom. Knows nothing of spreadsheets, so that
 * any exporter can write it.
 */
public record Sheet(String id, Message title, List<Block> blocks) {
  /**
   * Id of a sheet whose few lines belong on the first page of a report, not on one of their own.
   */
  public static final String SUMMARY = "summary";

  public Sheet {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(title, "title");
    blocks = List.copyOf(blocks);
  }

  /** Whether it belongs on the first page of a report. */
  public boolean ofSummary() {
    return id.equals(SUMMARY);
  }

  /** A part of a sheet. */
  public sealed interface Block permits Table, Paragraph, Chart {}

  /** A table with a heading; every row has one cell a column. */
  public record Table(Message heading, List<Column> columns, List<List<Cell>> rows)
      implements Block {
    public Table {
      Objects.requireNonNull(heading, "heading");
      columns = List.copyOf(columns);
      rows = rows.stream().map(List::copyOf).toList();
      for (List<Cell> row : rows) {
        if (row.size() != columns.size()) {
          throw new IllegalArgumentException("a row must have one cell a column");
        }
      }
    }
  }

  /** A column's head and its width in characters. */
  public record Column(Message head, int width) {
    public Column {
      Objects.requireNonNull(head, "head");
    }
  }

  /** A line of text across the sheet. */
  public record Paragraph(Message text, Role role) implements Block {
    public Paragraph {
      Objects.requireNonNull(text, "text");
      Objects.requireNonNull(role, "role");
    }
  }

  /** What a paragraph is. */
  public enum Role {
    HEADING,
    TEXT,
    CAUTION
  }

  /**
   * A picture of a table that stands beside it: its first column names the places along the axis,
   * each further column is drawn as its trace says. A cell that is no number leaves its place in
   * the picture empty.
   *
   * @param unit unit of every number, said at the axis
   * @param traces one for each column but the first
   */
  public record Chart(Table table, Unit unit, List<Trace> traces) implements Block {
    public Chart {
      Objects.requireNonNull(table, "table");
      Objects.requireNonNull(unit, "unit");
      traces = List.copyOf(traces);
      if (traces.size() != table.columns().size() - 1) {
        throw new IllegalArgumentException("a chart needs a trace for each column of numbers");
      }
    }
  }

  /** How a column of a chart is drawn; each is told from the others without colour. */
  public enum Trace {
    /** Upright bars. */
    BARS,
    /** A line with a mark at each number. */
    LINE,
    /** The limit of a band, dashed and without marks. */
    LIMIT,
    /** The middle of a band, dotted and without marks. */
    MIDDLE
  }

  /** One cell. */
  public sealed interface Cell permits Words, Figure, Derived, Blank {
    default <T> T match(
        Function<Words, T> words,
        Function<Figure, T> figure,
        Function<Derived, T> derived,
        Function<Blank, T> blank) {
      if (this instanceof Words w) {
        return words.apply(w);
      } else if (this instanceof Figure f) {
        return figure.apply(f);
      } else if (this instanceof Derived d) {
        return derived.apply(d);
      }
      return blank.apply((Blank) this);
    }
  }

  /** Text; {@code name} is the cell name of the entry it shows, if it shows one. */
  public record Words(Message text, Optional<String> name) implements Cell {
    public Words {
      Objects.requireNonNull(text, "text");
      Objects.requireNonNull(name, "name");
    }
  }

  /** A recorded number as typed; {@code name} is the cell name of its entry. */
  public record Figure(BigDecimal amount, Unit unit, Optional<String> name) implements Cell {
    public Figure {
      Objects.requireNonNull(amount, "amount");
      Objects.requireNonNull(unit, "unit");
      Objects.requireNonNull(name, "name");
    }
  }

  /**
   * A calculated number: its value and, where a spreadsheet can say it, the formula over named
   * entries that gives it.
   */
  public record Derived(
      BigDecimal amount, Unit unit, int decimals, Optional<String> formula, Optional<String> name)
      implements Cell {
    public Derived {
      Objects.requireNonNull(amount, "amount");
      Objects.requireNonNull(unit, "unit");
      Objects.requireNonNull(formula, "formula");
      Objects.requireNonNull(name, "name");
    }
  }

  /** Nothing there, because it does not apply; what is absent is said in words instead. */
  public record Blank() implements Cell {}
}
