package styloid.workbook;

import java.util.HashMap;
import org.apache.poi.ss.usermodel.RichTextString;
import org.apache.poi.xssf.model.SharedStringsTable;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellType;

/**
 * The texts of a workbook, each kept once. The library would make each anew for every cell before
 * it finds that it has it already.
 */
final class Strings {
  private final SharedStringsTable table;
  private final HashMap<String, String> known = new HashMap<>();

  Strings(XSSFWorkbook workbook) {
    table = workbook.getSharedStringSource();
  }

  /** Gives a cell its text. */
  void put(String text, XSSFCell cell) {
    String index = known.computeIfAbsent(text, this::add);
    cell.getCTCell().setT(STCellType.S);
    cell.getCTCell().setV(index);
  }

  private String add(String text) {
    RichTextString rich = new XSSFRichTextString(SafeText.encode(text));
    return Integer.toString(table.addSharedStringItem(rich));
  }
}
