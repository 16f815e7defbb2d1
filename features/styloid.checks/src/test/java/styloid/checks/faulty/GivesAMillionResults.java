package styloid.checks.faulty;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import styloid.model.Digit;
import styloid.model.Explanation;
import styloid.model.Message;
import styloid.model.PatientContext;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.Source;
import styloid.model.TestId;

/** Gives one result a million times. */
public final class GivesAMillionResults extends Plain {
  @Override
  public List<Result> results(PatientContext context) {
    TestId test = definition().id();
    Explanation why =
        new Explanation(
            List.of(Message.verbatim("none")),
            List.of(Source.commonPractice()),
            "none",
            Optional.empty());
    Result one =
        Result.unavailable(
            new ResultKey(test, new ResultId("one"), Side.RIGHT, Digit.NONE),
            Message.verbatim("none"),
            why);
    return Collections.nCopies(1_000_000, one);
  }
}
