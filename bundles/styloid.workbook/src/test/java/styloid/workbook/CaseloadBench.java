package styloid.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicLong;
import java.util.zip.Deflater;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.poi.xssf.streaming.SXSSFRow;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import styloid.model.Absence;
import styloid.model.Evaluation;
import styloid.model.Unit;
import styloid.spi.Caseload;
import styloid.spi.Texts;

/**
 * A caseload beside the bare streaming library. By hand: {@code CaseloadBench rows} (100,000 rows
 * of 10 cells by both, same compression), {@code CaseloadBench heap N} (rise of the heap over N
 * evaluations of 10 measures).
 */
final class CaseloadBench {
  private static final int ROWS = 100_000;
  private static final int ROUNDS = 5;

  private CaseloadBench() {}

  /** Compresses as ours does. */
  private static final class Fast extends SXSSFWorkbook {
    Fast() {
      super(100);
    }

    @Override
    protected ZipArchiveOutputStream createArchiveOutputStream(OutputStream out) {
      ZipArchiveOutputStream zip = super.createArchiveOutputStream(out);
      zip.setLevel(Deflater.BEST_SPEED);
      return zip;
    }
  }

  public static void main(String[] args) throws Exception {
    if (args[0].equals("rows")) {
      rows();
    } else {
      heap(Integer.parseInt(args[1]));
    }
  }

  private static Caseload.Measure measure(int i, int m) {
    return new Caseload.Measure(
        "Goniometry",
        "Wrist motion " + m + ", active",
        i % 2 == 0 ? "right" : "left",
        "index finger",
        3,
        OptionalDouble.of(20 + (i * 7 + m) % 900 / 10.0),
        Unit.DEGREE,
        "",
        OptionalDouble.of((i + m) % 21 - 10));
  }

  private static Caseload.Visit visit(int i, List<Caseload.Measure> measures) {
    return new Caseload.Visit(
        String.format(Locale.ROOT, "P-%08d", i / 4),
        Optional.empty(),
        2026,
        "A. Nobody (invented)",
        Evaluation.State.SIGNED,
        i % 4 + 1,
        Integer.toString(20 + i % 60),
        "female",
        "right-handed",
        "left",
        "Invented group " + i % 30,
        40,
        Map.of(Absence.Reason.PAIN, i % 3),
        measures);
  }

  static Caseload caseload(int evaluations, int measures, AtomicLong most) {
    return new Caseload(
        true,
        sink -> {
          for (int i = 0; i < evaluations; i++) {
            Caseload.Measure[] all = new Caseload.Measure[measures];
            for (int m = 0; m < measures; m++) {
              all[m] = measure(i, m);
            }
            sink.visit(visit(i, List.of(all)));
            if (i % 10_000 == 0 && most != null) {
              System.gc();
              Runtime now = Runtime.getRuntime();
              most.accumulateAndGet(now.totalMemory() - now.freeMemory(), Math::max);
            }
          }
        },
        new Texts(Map.of(), Locale.ENGLISH));
  }

  private static void heap(int evaluations) throws IOException {
    CaseloadBook.write(caseload(100, 10, null), OutputStream.nullOutputStream());
    System.gc();
    Runtime now = Runtime.getRuntime();
    long before = now.totalMemory() - now.freeMemory();
    AtomicLong most = new AtomicLong();
    long from = System.nanoTime();
    Path file = Files.createTempFile("caseload", ".xlsx");
    try (OutputStream out = Files.newOutputStream(file)) {
      CaseloadBook.write(caseload(evaluations, 10, most), out);
    }
    print("evaluations", evaluations);
    print("seconds (collections of the measurement included)", (System.nanoTime() - from) / 1e9);
    print("heap rise after collection, MB", (most.get() - before) / 1e6);
    print("file, MB", Files.size(file) / 1e6);
    Files.delete(file);
  }

  /** Ours writes the measures of one caseload; theirs the same ten cells a row. */
  private static void rows() throws IOException {
    double[] ours = new double[ROUNDS];
    double[] bare = new double[ROUNDS];
    for (int warming = 0; warming < 2; warming++) {
      for (int i = 0; i < ROUNDS; i++) {
        ours[i] = ours();
        bare[i] = bare();
      }
    }
    Arrays.sort(ours);
    Arrays.sort(bare);
    print("ours, median ms", ours[ROUNDS / 2]);
    print("bare streaming library, median ms", bare[ROUNDS / 2]);
    print("ratio of medians", ours[ROUNDS / 2] / bare[ROUNDS / 2]);
    print("ratio of fastest", ours[0] / bare[0]);
  }

  private static double ours() throws IOException {
    Path file = Files.createTempFile("ours", ".xlsx");
    long from = System.nanoTime();
    try (OutputStream out = Files.newOutputStream(file)) {
      CaseloadBook.write(caseload(ROWS / 10, 10, null), out);
    }
    double took = (System.nanoTime() - from) / 1e6;
    Files.delete(file);
    return took;
  }

  private static double bare() throws IOException {
    Path file = Files.createTempFile("bare", ".xlsx");
    long from = System.nanoTime();
    try (SXSSFWorkbook book = new Fast();
        OutputStream out = Files.newOutputStream(file)) {
      SXSSFSheet sheet = book.createSheet("Measures");
      int at = 0;
      for (int i = 0; i < ROWS / 10; i++) {
        for (int m = 0; m < 10; m++) {
          Caseload.Measure measure = measure(i, m);
          SXSSFRow row = sheet.createRow(at++);
          row.createCell(0).setCellValue("P-" + i / 4);
          row.createCell(1).setCellValue(2026);
          row.createCell(2).setCellValue(measure.test());
          row.createCell(3).setCellValue(measure.item());
          row.createCell(4).setCellValue(measure.side());
          row.createCell(5).setCellValue(measure.digit());
          row.createCell(6).setCellValue(measure.trials());
          row.createCell(7).setCellValue(measure.number().getAsDouble());
          row.createCell(8).setCellValue(measure.change().getAsDouble());
          row.createCell(9).setCellValue("Invented group " + i % 30);
        }
      }
      book.write(out);
    }
    double took = (System.nanoTime() - from) / 1e6;
    Files.delete(file);
    return took;
  }

  private static void print(String what, double value) {
    System.out.printf(Locale.ROOT, "%s: %.2f%n", what, value);
  }
}
