package styloid.session;

import java.util.List;
import java.util.Optional;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Explanation;
import styloid.model.Item;
import styloid.model.Message;
import styloid.model.PatientContext;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.Source;
import styloid.spi.ResultDefinition;
import styloid.spi.TestDefinition;

/** A test that holds the span of one side not to be needed in other tests. */
class DecidingModule extends SampleModule {
  private static final ResultId NEXT = new ResultId("span-next");
  private final Side against;

  DecidingModule(String id, Side against) {
    super(id);
    this.against = against;
  }

  @Override
  public TestDefinition definition() {
    TestDefinition plain = super.definition();
    ResultDefinition next =
        new ResultDefinition(
            NEXT, Optional.empty(), 0, Item.BOTH, Item.NO_DIGIT, Optional.of("spans"));
    return new TestDefinition(
        plain.id(),
        plain.version(),
        plain.order(),
        plain.groups(),
        plain.cautions(),
        plain.testCautions(),
        List.of(next),
        plain.reads(),
        plain.labels());
  }

  @Override
  public List<Result> results(PatientContext context) {
    return List.of(
        Result.computed(
            new ResultKey(definition().id(), NEXT, against, Digit.NONE),
            new Choice("not-needed"),
            new Explanation(
                List.of(Message.verbatim("seen")),
                List.of(Source.commonPractice()),
                "rule",
                Optional.empty())));
  }
}
