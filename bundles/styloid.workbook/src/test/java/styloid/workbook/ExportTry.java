package styloid.workbook;

import java.nio.file.Path;
import styloid.spi.Progress;

/** Writes the sample to a file, to be looked at: {@code ExportTry sample.xlsx}. */
final class ExportTry {
  private ExportTry() {}

  public static void main(String[] args) throws Exception {
    new WorkbookExporter().write(Sample.full().report(), Path.of(args[0]), Progress.none());
  }
}
