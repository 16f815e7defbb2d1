package styloid.shell.help;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.session.OpenEvaluation;
import styloid.shell.Practice;
import styloid.shell.frame.Shell;

/** The guide goes by what was recorded, in whatever order. */
class GuideTest {
  private static final ItemKey RIGHT =
      new ItemKey(new TestId("screen"), new ItemId("elbow-flexion"), Side.RIGHT, Digit.NONE, 1);

  @Test
  void itAsksForTheFirstThingNotDone() {
    Practice practice = new Practice();
    Guide guide = new Guide();
    assertEquals(Guide.Step.ANSWER, next(guide, practice.now()));
    practice.record(RIGHT, new Absence(Absence.Reason.PAIN));
    assertEquals(Guide.Step.ANSWER, next(guide, practice.now()));
    practice.record(RIGHT, new Choice("full"));
    assertEquals(Guide.Step.OTHER_SIDE, next(guide, practice.now()));
    practice.record(RIGHT.opposite(), new Choice("full"));
    assertEquals(Guide.Step.UNDO, next(guide, practice.now()));
    practice.undo();
    assertEquals(Guide.Step.NUMBER, next(guide, practice.now()));
    practice.recordNumber();
    assertEquals(Guide.Step.CLOSE, next(guide, practice.now()));
  }

  private static Guide.Step next(Guide guide, OpenEvaluation open) {
    guide.see(open);
    return guide.next();
  }

  @ParameterizedTest
  @EnumSource(Guide.Step.class)
  void everyStepSaysWhatAndWhy(Guide.Step step) {
    for (String key : List.of("guide." + step.code(), "guide." + step.code() + ".why")) {
      assertEquals(Optional.empty(), Optional.of(key).filter(k -> missing(k)));
    }
  }

  private static boolean missing(String key) {
    return Practice.words().find(Shell.SCOPE, key).isEmpty();
  }
}
