package styloid.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import styloid.model.Codes;
import styloid.model.EvaluationId;
import styloid.model.EvaluationRecord;
import styloid.model.PatientRecord;
import styloid.session.Batch;
import styloid.session.FileNames;
import styloid.session.OpenEvaluation;
import styloid.session.Session;
import styloid.spi.Paper;
import styloid.spi.Progress;
import styloid.store.StoreException;

/** Writes a workbook for every evaluation of the files. */
@Command(name = "workbook")
final class WorkbookCommand implements Callable<Integer> {
  private static final String FORMAT = "xlsx";
  private static final long LONGEST_MINUTES = 5;

  private final Surroundings surroundings;

  @Parameters(arity = "0..*", paramLabel = "FILE|FOLDER", descriptionKey = "files")
  private List<Path> files = List.of();

  @Option(names = "--to", required = true, paramLabel = "DIR", descriptionKey = "to")
  private Path to;

  @Option(names = "--overwrite", descriptionKey = "overwrite")
  private boolean overwrite;

  @Option(names = "--paper", paramLabel = "a4|letter", descriptionKey = "paper")
  private String paper = "a4";

  @Spec private CommandSpec spec;

  @Mixin private SelectionOptions which;

  /** One workbook to write. */
  private record Order(PatientRecord record, EvaluationId evaluation) {}

  WorkbookCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws IOException, InterruptedException, StoreException {
    surroundings.warm();
    paper();
    if (files.isEmpty()) {
      return ofStore();
    }
    Inputs inputs = new Inputs(surroundings);
    List<CheckedFile> read = inputs.read(files);
    if (!inputs.usable(read)) {
      return ExitCode.PROBLEMS;
    }
    if (!surroundings.session().formats().contains(FORMAT)) {
      surroundings.say(surroundings.err(), "workbook.no-writer");
      return ExitCode.NOT_WORKING;
    }
    Map<Path, Order> orders = orders(read);
    if (!overwrite && anyThere(orders)) {
      return ExitCode.PROBLEMS;
    }
    Files.createDirectories(to);
    boolean failed = surroundings.failed(surroundings.session().faults());
    for (Map.Entry<Path, Order> order : orders.entrySet()) {
      failed |= write(order.getValue(), order.getKey());
    }
    return failed ? ExitCode.NOT_WORKING : ExitCode.OK;
  }

  private Paper paper() {
    try {
      return Codes.parse(Paper.class, paper);
    } catch (IllegalArgumentException e) {
      throw new CommandLine.ParameterException(spec.commandLine(), "--paper: " + e.getMessage(), e);
    }
  }

  /** Every evaluation of the store that is wanted; what was written before is kept. */
  private int ofStore() throws IOException, StoreException {
    Batch batch =
        new Batch(surroundings.session(), which.selection(), Surroundings.LANGUAGE, paper());
    Batch.Outcome outcome = batch.files(to, surroundings.progress());
    surroundings.sayAll(surroundings.err(), outcome.failed());
    surroundings.say(
        surroundings.out(), "workbook.done", outcome.written(), outcome.kept(), to.toString());
    boolean failed = surroundings.failed(surroundings.session().faults());
    return failed || !outcome.failed().isEmpty() ? ExitCode.NOT_WORKING : ExitCode.OK;
  }

  private Map<Path, Order> orders(List<CheckedFile> read) {
    FileNames names = new FileNames();
    LinkedHashMap<Path, Order> orders = new LinkedHashMap<>();
    for (CheckedFile file : read) {
      PatientRecord record = file.record().orElseThrow();
      for (EvaluationRecord one : record.evaluations()) {
        Path target = to.resolve(names.next(record.patient(), one.evaluation()));
        orders.put(target, new Order(record, one.evaluation().id()));
      }
    }
    return orders;
  }

  private boolean anyThere(Map<Path, Order> orders) {
    List<Path> there = orders.keySet().stream().filter(Files::exists).toList();
    there.forEach(file -> surroundings.say(surroundings.err(), "workbook.exists", file.toString()));
    return !there.isEmpty();
  }

  /** Writes one; whether a module failed in it. */
  private boolean write(Order order, Path target) throws IOException, InterruptedException {
    Session session = surroundings.session();
    OpenEvaluation open = session.calculate(order.record(), order.evaluation());
    boolean failed = surroundings.failed(open.faults());
    CompletableFuture<Path> written =
        session.export(
            session.report(open, Surroundings.LANGUAGE).on(paper()),
            FORMAT,
            target,
            Progress.none());
    try {
      surroundings.out().println(written.get(LONGEST_MINUTES, TimeUnit.MINUTES));
      return failed;
    } catch (ExecutionException e) {
      if (e.getCause() instanceof IOException disk) {
        throw disk;
      }
      throw new IllegalStateException(e.getCause());
    } catch (TimeoutException e) {
      throw new IOException(target + " was not written within " + LONGEST_MINUTES + " minutes", e);
    }
  }
}
