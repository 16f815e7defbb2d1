package styloid.form;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import styloid.spi.Group;

/** A group's name with its state as shape and word. */
final class Head extends HBox {
  private final Group group;
  private final Field.Home home;
  private final StateMark mark = new StateMark();
  private final Label state = new Label();

  Head(Group group, Field.Home home) {
    super(8);
    this.group = group;
    this.home = home;
    setAlignment(Pos.CENTER_LEFT);
    Label name =
        new Label(home.texts().label(home.state().test().id().value(), "group." + group.id()));
    name.getStyleClass().add("group-name");
    name.setWrapText(true);
    state.getStyleClass().add("group-state");
    getChildren().addAll(mark, name, state);
  }

  void update() {
    Completion completion = Completion.of(home.state(), List.of(group));
    mark.show(completion.stage());
    String word = home.texts().label(FormView.SCOPE, "stage." + completion.stage().code());
    state.setText(word);
    mark.setAccessibleText(word);
  }
}
