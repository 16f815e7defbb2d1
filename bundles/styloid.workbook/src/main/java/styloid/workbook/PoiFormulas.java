package styloid.workbook;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.formula.FormulaParseException;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.osgi.service.component.annotations.Component;
import styloid.spi.Formulas;

/**
 * Formulas on the spreadsheet library's own evaluator: each formula is parsed once and keeps a row
 * of cells for its names. The old binary form is used in memory, since it needs no XML and starts
 * in a fraction of the time.
 */
@Component
public final class PoiFormulas implements Formulas {
  /** Formulas kept parsed; beyond it all are dropped and made again when needed. */
  private static final int MOST_KEPT = 2000;

  /** The library takes no number below zero for it; the general form does. */
  private static final String STANDARD = "NORMSDIST";

  private final Map<String, Compiled> kept = new LinkedHashMap<>();
  private HSSFWorkbook book;
  private Sheet sheet;
  private FormulaEvaluator evaluator;

  /** A formula's cell and the cells of its names, in the order the names first occur. */
  private record Compiled(Cell cell, Map<String, Cell> names) {}

  @Override
  public synchronized Answer evaluate(String formula, Map<String, Object> values) {
    Compiled compiled;
    try {
      compiled = kept.get(formula);
      if (compiled == null) {
        compiled = compile(formula);
      }
    } catch (FormulaParseException e) {
      return Answer.none("#NAME?");
    }
    for (Map.Entry<String, Cell> name : compiled.names().entrySet()) {
      fill(name.getValue(), values.get(name.getKey()));
      evaluator.notifyUpdateCell(name.getValue());
    }
    return answer(evaluator.evaluate(compiled.cell()));
  }

  @Override
  public void warmUp() {
    evaluate("ROUND(AVERAGE(a,b),1)", Map.of("a", 1d, "b", 2d));
  }

  private Compiled compile(String formula) {
    if (book == null || kept.size() >= MOST_KEPT) {
      kept.clear();
      book = new HSSFWorkbook();
      sheet = book.createSheet();
      evaluator = book.getCreationHelper().createFormulaEvaluator();
    }
    Row row = sheet.createRow(sheet.getPhysicalNumberOfRows());
    Optional<FormulaText.Ready> ready = FormulaText.read(formula);
    if (ready.isEmpty()) {
      throw new FormulaParseException(formula);
    }
    List<String> names = new ArrayList<>(ready.get().names());
    LinkedHashMap<String, Cell> cells = new LinkedHashMap<>();
    for (String name : names) {
      cells.put(name, row.createCell(cells.size() + 1));
    }
    Cell cell = row.createCell(0);
    cell.setCellFormula(withCells(ready.get().text(), cells));
    Compiled compiled = new Compiled(cell, cells);
    kept.put(formula, compiled);
    return compiled;
  }

  /** The formula with each name replaced by the address of its cell; strings stay as they are. */
  private static String withCells(String formula, Map<String, Cell> cells) {
    StringBuilder out = new StringBuilder();
    ArrayDeque<String> open = new ArrayDeque<>();
    String last = "";
    int at = 0;
    while (at < formula.length()) {
      char c = formula.charAt(at);
      int end = at + 1;
      if (c == '"') {
        end = formula.indexOf('"', at + 1) + 1;
      } else if (isWord(c)) {
        while (end < formula.length() && isWord(formula.charAt(end))) {
          end++;
        }
      } else if (c == '(') {
        open.push(last);
      } else if (c == ')' && open.pop().equals(STANDARD)) {
        out.append(",0,1,TRUE");
      }
      last = formula.substring(at, end);
      Cell cell = cells.get(last);
      out.append(cell == null ? last : new CellReference(cell).formatAsString(false));
      if (last.equals(STANDARD)) {
        out.replace(out.length() - STANDARD.length(), out.length(), "NORMDIST");
      }
      at = end;
    }
    return out.toString();
  }

  private static boolean isWord(char c) {
    return Character.isLetterOrDigit(c) || c == '_' || c == '.';
  }

  private static void fill(Cell cell, Object value) {
    if (value instanceof Double number) {
      cell.setCellValue(number);
    } else if (value instanceof String text) {
      cell.setCellValue(text);
    } else {
      throw new IllegalArgumentException("a formula takes numbers and text, not " + value);
    }
  }

  private static Answer answer(CellValue value) {
    if (value.getCellType() == CellType.NUMERIC) {
      double number = value.getNumberValue();
      return Double.isFinite(number) ? Answer.of(number) : Answer.none("#NUM!");
    } else if (value.getCellType() == CellType.ERROR) {
      return Answer.none(FormulaError.forInt(value.getErrorValue()).getString());
    }
    return Answer.none("#VALUE!");
  }
}
