package styloid.shell.evaluation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import styloid.model.Digit;
import styloid.model.ItemKey;
import styloid.model.Result;
import styloid.model.Results;
import styloid.shell.frame.Make;
import styloid.shell.frame.ResultText;
import styloid.shell.frame.Shell;
import styloid.spi.Group;
import styloid.spi.ResultDefinition;
import styloid.spi.TestDefinition;
import styloid.spi.Texts;

/** The results of a step: both limbs side by side, what waits for entries counted below. */
final class ResultList {
  private final Texts texts;

  /** One result in both limbs. */
  private record Line(String name, List<Result> sides) {}

  ResultList(Texts texts) {
    this.texts = texts;
  }

  /**
   * Draws the results of a group, then those of the test as a whole.
   *
   * @param at the place of entry; results of other digits are left out
   * @param why whether steps and sources show, and what waits is listed
   */
  VBox of(TestDefinition test, Group group, ItemKey at, Results results, boolean why) {
    ArrayList<Result> waiting = new ArrayList<>();
    Map<String, Line> own = new LinkedHashMap<>();
    Map<String, Line> whole = new LinkedHashMap<>();
    for (Result result : results.of(test.id())) {
      var definition = test.result(result.key());
      boolean ofGroup =
          definition.flatMap(ResultDefinition::group).filter(group.id()::equals).isPresent();
      boolean ofTest = definition.flatMap(ResultDefinition::group).isEmpty();
      if (!(ofGroup || ofTest) || otherDigit(result, at)) {
        continue;
      } else if (result.value().isEmpty()) {
        if (ofGroup) {
          waiting.add(result);
        }
      } else {
        gather(result, ofGroup ? own : whole);
      }
    }
    VBox box = new VBox(8);
    own.values().forEach(line -> box.getChildren().add(line(line, test, why)));
    waiting(waiting, test, why, box);
    whole.values().forEach(line -> box.getChildren().add(line(line, test, why)));
    return box;
  }

  private static boolean otherDigit(Result result, ItemKey at) {
    Digit digit = result.key().digit();
    return digit != Digit.NONE && at != null && at.digit() != Digit.NONE && at.digit() != digit;
  }

  private void gather(Result result, Map<String, Line> into) {
    String name = ResultText.name(result.key(), texts);
    if (result.key().digit() != Digit.NONE) {
      name = Shell.say(texts, "rail.of-digit", name, texts.word(result.key().digit()));
    }
    into.computeIfAbsent(name, n -> new Line(n, new ArrayList<>())).sides().add(result);
  }

  private VBox line(Line line, TestDefinition test, boolean why) {
    VBox box = new VBox(2, Make.text(line.name(), "result-name"));
    FlowPane values = new FlowPane(14, 2);
    for (Result result : line.sides()) {
      values.getChildren().add(value(result, test));
    }
    box.getChildren().add(values);
    if (why) {
      for (Result result : line.sides()) {
        String side = texts.place(result.key().side(), Digit.NONE);
        for (String step : ResultText.why(result, texts)) {
          box.getChildren().add(Make.text(side.isEmpty() ? step : side + ": " + step, "why"));
        }
      }
    } else {
      String status = texts.word(line.sides().get(0).why().status());
      box.getChildren().add(Make.text(status, "fine-print"));
    }
    return box;
  }

  private HBox value(Result result, TestDefinition test) {
    Label side = Make.word(texts.place(result.key().side(), Digit.NONE), "side-word");
    Make.shown(side, !side.getText().isEmpty());
    Label value = Make.text(ResultText.value(result, test, texts), "result-value");
    value.setMaxWidth(220);
    HBox pair = new HBox(6, side, value);
    pair.setAlignment(Pos.BASELINE_LEFT);
    return pair;
  }

  private void waiting(List<Result> waiting, TestDefinition test, boolean why, VBox box) {
    if (waiting.isEmpty()) {
      return;
    }
    box.getChildren().add(Make.text(Shell.say(texts, "rail.waiting", waiting.size()), "quiet"));
    if (why) {
      for (Result result : waiting) {
        String name = ResultText.name(result.key(), texts);
        String place = texts.place(result.key().side(), result.key().digit());
        String reason = ResultText.value(result, test, texts);
        box.getChildren().add(Make.text(Shell.say(texts, "rail.wait", name, place, reason), "why"));
      }
    }
  }
}
