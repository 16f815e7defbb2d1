package styloid.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import styloid.model.EvaluationRecord;
import styloid.model.PatientRecord;
import styloid.session.OpenEvaluation;

/** Writes all that follows from the evaluations of a file, as JSON. */
@Command(name = "results")
final class ResultsCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Parameters(paramLabel = "FILE", descriptionKey = "file")
  private Path file;

  ResultsCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws IOException {
    Inputs inputs = new Inputs(surroundings);
    List<CheckedFile> read = inputs.read(List.of(file));
    if (!inputs.usable(read)) {
      return ExitCode.PROBLEMS;
    }
    surroundings.warm();
    ArrayList<OpenEvaluation> calculated = new ArrayList<>();
    boolean failed = surroundings.failed(surroundings.session().faults());
    for (CheckedFile one : read) {
      PatientRecord record = one.record().orElseThrow();
      for (EvaluationRecord evaluation : record.evaluations()) {
        OpenEvaluation open =
            surroundings.session().calculate(record, evaluation.evaluation().id());
        failed |= surroundings.failed(open.faults());
        calculated.add(open);
      }
    }
    new ResultsJson(surroundings.texts()).write(calculated, surroundings.out());
    return failed ? ExitCode.NOT_WORKING : ExitCode.OK;
  }
}
