package styloid.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.lang.System.Logger.Level;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.osgi.service.component.annotations.Component;
import styloid.spi.Caseload;
import styloid.spi.Exporter;
import styloid.spi.Progress;
import styloid.spi.Report;

/** Writes an evaluation as an xlsx workbook. */
@Component(service = Exporter.class)
public final class WorkbookExporter implements Exporter {
  private static final System.Logger LOG = System.getLogger(WorkbookExporter.class.getName());

  /** Steps besides the sheets: written to disk and read back, in place. */
  private static final int LAST_STEPS = 2;

  @Override
  public String format() {
    return "xlsx";
  }

  @Override
  public void write(Report report, Path target, Progress progress) throws IOException {
    stopIfUnwanted(progress);
    Book book = Plan.of(report);
    int steps = book.pages().size() + LAST_STEPS;
    byte[] bytes =
        BookWriter.write(
            book,
            sheet -> {
              stopIfUnwanted(progress);
              progress.step(sheet, steps);
            });
    stopIfUnwanted(progress);
    progress.step(book.pages().size(), steps);
    TargetFile file = new TargetFile(target, new Say(report.texts(), report.definitions()));
    file.replace(
        bytes,
        written -> {
          try (InputStream in = Files.newInputStream(written)) {
            Optional<String> difference = ReadBack.difference(book, PackageReader.read(in));
            if (difference.isPresent()) {
              throw file.mismatch(difference.get());
            }
          }
          progress.step(steps - 1, steps);
          stopIfUnwanted(progress);
        });
    progress.step(steps, steps);
  }

  @Override
  public void write(Caseload caseload, Path target, Progress progress) throws IOException {
    stopIfUnwanted(progress);
    Say say = new Say(caseload.texts(), List.of());
    new TargetFile(target, say)
        .replace(out -> CaseloadBook.write(caseload, out), written -> stopIfUnwanted(progress));
  }

  private static void stopIfUnwanted(Progress progress) {
    if (progress.cancelled()) {
      throw new CancellationException("export cancelled");
    }
  }

  /** Exports a made-up report into memory, so that all classes the first export needs are there. */
  @Override
  public void warmUp() {
    try {
      Book book = Plan.of(MadeUpReport.create());
      byte[] bytes = BookWriter.write(book, sheet -> {});
      ReadBack.difference(book, PackageReader.read(new ByteArrayInputStream(bytes)))
          .ifPresent(where -> LOG.log(Level.WARNING, "warm-up export differs: {0}", where));
    } catch (IOException e) {
      LOG.log(Level.WARNING, "warm-up export failed", e);
    }
  }
}
