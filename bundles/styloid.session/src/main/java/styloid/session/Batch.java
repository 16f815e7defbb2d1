package styloid.session;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicInteger;
import styloid.model.EvaluationRecord;
import styloid.model.Patient;
import styloid.model.PatientRecord;
import styloid.spi.Caseload;
import styloid.spi.Paper;
import styloid.spi.Progress;
import styloid.store.CaseloadRow;
import styloid.store.StoreException;

/**
 * Writes many evaluations: a file each, or one caseload. A record that cannot be read or written is
 * told and left out, the others are written.
 */
public final class Batch {
  private static final String FORMAT = "xlsx";

  /** Files being written or waiting to be: enough to keep every export worker busy. */
  private static final int IN_FLIGHT = 6;

  private final Session session;
  private final Selection selection;
  private final Locale locale;
  private final Paper paper;

  public Batch(Session session, Selection selection, Locale locale, Paper paper) {
    this.session = session;
    this.selection = selection;
    this.locale = locale;
    this.paper = paper;
  }

  /**
   * What came of it.
   *
   * @param written files written now
   * @param kept files that were there already, from the same entries
   * @param failed what could not be written, in words
   */
  public record Outcome(int written, int kept, List<String> failed, boolean cancelled) {
    public Outcome {
      failed = List.copyOf(failed);
    }
  }

  /**
   * Writes one workbook an evaluation into a folder, with a manifest that lists each file and its
   * SHA-256. What the manifest lists is not written again while file and entries are the same, so
   * that a batch that was stopped goes on where it was.
   *
   * @throws IOException when the folder or the manifest cannot be written
   * @throws StoreException when the caseload cannot be read
   */
  public Outcome files(Path folder, Progress progress) throws IOException, StoreException {
    Files.createDirectories(folder);
    Manifest manifest = Manifest.in(folder);
    List<CaseloadRow> rows = session.caseload(selection.search(), Integer.MAX_VALUE);
    Run run = new Run(folder, manifest);
    FileNames names = new FileNames();
    int done = 0;
    for (CaseloadRow row : rows) {
      if (progress.cancelled()) {
        break;
      }
      progress.step(done++, rows.size());
      Optional<PatientRecord> record = run.read(row.patient());
      if (record.isPresent()) {
        for (EvaluationRecord one : record.get().evaluations()) {
          String name = names.next(record.get().patient(), one.evaluation());
          if (selection.has(one.evaluation()) && !progress.cancelled()) {
            run.write(record.get(), one, name);
          }
        }
      }
    }
    run.awaitAll();
    manifest.write();
    progress.step(done, rows.size());
    return run.outcome(progress.cancelled());
  }

  /** The files of one batch. */
  private final class Run {
    private final Path folder;
    private final Manifest manifest;
    private final Semaphore room = new Semaphore(IN_FLIGHT);
    private final AtomicInteger written = new AtomicInteger();
    private final List<String> failed = Collections.synchronizedList(new ArrayList<>());
    private int kept;

    Run(Path folder, Manifest manifest) {
      this.folder = folder;
      this.manifest = manifest;
    }

    Optional<PatientRecord> read(Patient patient) {
      try {
        return session.patientRecord(patient.id());
      } catch (StoreException | RuntimeException e) {
        failed.add(patient.recordNumber() + ": " + e.getMessage());
        return Optional.empty();
      }
    }

    void write(PatientRecord record, EvaluationRecord one, String name) throws IOException {
      String entries = Manifest.entries(one);
      if (manifest.holds(name, entries)) {
        kept++;
        return;
      }
      room.acquireUninterruptibly();
      Path target = folder.resolve(name);
      try {
        OpenEvaluation open = session.calculate(record, one.evaluation().id());
        session
            .export(session.report(open, locale).on(paper), FORMAT, target, Progress.none())
            .whenComplete((file, why) -> finished(name, entries, why));
      } catch (RuntimeException e) {
        finished(name, entries, e);
      }
    }

    private void finished(String name, String entries, Throwable why) {
      try {
        if (why == null) {
          manifest.add(name, entries);
          written.incrementAndGet();
        } else {
          Throwable cause = why instanceof CompletionException ? why.getCause() : why;
          failed.add(name + ": " + cause.getMessage());
        }
      } catch (UncheckedIOException e) {
        failed.add(name + ": " + e.getMessage());
      } finally {
        room.release();
      }
    }

    void awaitAll() {
      room.acquireUninterruptibly(IN_FLIGHT);
      room.release(IN_FLIGHT);
    }

    Outcome outcome(boolean cancelled) {
      return new Outcome(written.get(), kept, failed, cancelled);
    }
  }

  /**
   * Writes one caseload workbook: a row an evaluation and a row a measure.
   *
   * @param pseudonym keeps identity back under its codes; empty to write record numbers
   * @throws CancellationException when the progress said to stop; nothing is left behind
   */
  public Outcome caseload(Path target, Optional<Pseudonym> pseudonym, Progress progress)
      throws IOException, StoreException {
    List<CaseloadRow> rows = session.caseload(selection.search(), Integer.MAX_VALUE);
    ArrayList<String> failed = new ArrayList<>();
    AtomicInteger written = new AtomicInteger();
    Visits visits =
        new Visits(
            session.tests(), selection, pseudonym, session.safeItems(), session.texts(locale));
    Caseload.Source source =
        sink -> {
          for (int i = 0; i < rows.size(); i++) {
            if (progress.cancelled()) {
              throw new CancellationException("caseload cancelled");
            }
            progress.step(i, rows.size());
            for (Caseload.Visit visit : visits(visits, rows.get(i).patient(), failed)) {
              sink.visit(visit);
              written.incrementAndGet();
            }
          }
        };
    Caseload caseload = new Caseload(pseudonym.isEmpty(), source, session.texts(locale));
    try {
      session.export(caseload, FORMAT, target, progress).join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof IOException disk) {
        throw disk;
      }
      throw e;
    }
    progress.step(rows.size(), rows.size());
    return new Outcome(written.get(), 0, failed, false);
  }

  private List<Caseload.Visit> visits(Visits visits, Patient patient, List<String> failed) {
    try {
      return session.patientRecord(patient.id()).map(visits::of).orElse(List.of());
    } catch (StoreException | RuntimeException e) {
      failed.add(patient.recordNumber() + ": " + e.getMessage());
      return List.of();
    }
  }
}
