package styloid.shell.map;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import styloid.figure.LimbMap;
import styloid.form.Completion;
import styloid.form.StateMark;
import styloid.model.ItemKey;
import styloid.model.Side;
import styloid.shell.frame.Banner;
import styloid.shell.frame.Make;

/** The map at full size, worked by keys, with everything about the joint one is at beside it. */
final class MapCard {
  /** Width at which targets are 44 px across. */
  private static final double MAP_WIDTH = 572;

  private static final double CARD_WIDTH = 640;

  private final MapWords words;
  private final Consumer<ItemKey> goTo;
  private final LimbMap map = new LimbMap(true);
  private final PartCard card;
  private final HBox node;
  private LimbReading reading;
  private SidedPart at;

  /**
   * The card.
   *
   * @param goTo told where entry is to go; takes the card away
   * @param close takes the card away
   */
  MapCard(MapWords words, Set<Side> involved, Consumer<ItemKey> goTo, Runnable close) {
    this.words = words;
    this.goTo = goTo;
    card = new PartCard(words, goTo);
    map.onReached((part, side) -> reach(new SidedPart(part, side)));
    map.onChosen((part, side) -> choose(new SidedPart(part, side)));
    map.setMinSize(150, 150);
    map.setPrefWidth(MAP_WIDTH);
    StackPane left = named(map, words, involved, new Region());
    VBox right = new VBox(8, card, foot(close));
    VBox.setVgrow(card, Priority.ALWAYS);
    HBox.setHgrow(right, Priority.ALWAYS);
    right.setMinWidth(300);
    right.setPrefWidth(CARD_WIDTH);
    node = new HBox(20, left, right);
    node.getStyleClass().addAll("cover-card", "map-card");
    node.setMaxSize(MAP_WIDTH + CARD_WIDTH + 80, 760);
    node.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
  }

  /**
   * A map with the sides in words at its upper corners, where no limb is: the patient faces the
   * viewer.
   *
   * @param between what stands between the shoulders
   */
  static StackPane named(LimbMap map, MapWords words, Set<Side> involved, Node between) {
    BorderPane heads =
        new BorderPane(
            between,
            null,
            Make.word(words.limb(Side.LEFT, involved), "side-head"),
            null,
            Make.word(words.limb(Side.RIGHT, involved), "side-head"));
    heads.setPickOnBounds(false);
    heads.setMaxHeight(Region.USE_PREF_SIZE);
    BorderPane.setAlignment(between, Pos.TOP_CENTER);
    StackPane named = new StackPane(map, heads);
    StackPane.setAlignment(heads, Pos.TOP_CENTER);
    named.setMinSize(120, 60);
    return named;
  }

  private VBox foot(Runnable close) {
    FlowPane legend = new FlowPane(14, 4);
    for (Completion.Stage stage : Completion.Stage.values()) {
      StateMark mark = new StateMark();
      mark.show(stage);
      legend.getChildren().add(sign(mark, words.stage(PartState.Stage.valueOf(stage.name()))));
    }
    legend.getChildren().add(sign(Banner.warning(), words.say("map.limited")));
    legend.getChildren().add(sign(PartCard.diamond(), words.say("map.notable")));
    HBox last =
        new HBox(
            12,
            Make.text(words.say("map.keys"), "fine-print"),
            Make.button(words.say("map.close"), close));
    last.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(last.getChildren().get(0), Priority.ALWAYS);
    ((Region) last.getChildren().get(0)).setMaxWidth(Double.MAX_VALUE);
    VBox foot = new VBox(6, legend, last);
    foot.getStyleClass().add("map-foot");
    return foot;
  }

  private static HBox sign(Node mark, String words) {
    HBox sign = new HBox(6, mark, Make.word(words, "fine-print"));
    sign.setAlignment(Pos.CENTER_LEFT);
    return sign;
  }

  private void pressed(KeyEvent event) {
    KeyCode code = event.getCode();
    boolean plain = !event.isShortcutDown() && !event.isAltDown();
    if (plain && code.isDigitKey()) {
      event.consume();
      pick(Integer.parseInt(code.getName().replaceAll("\\D", "")));
    } else if (plain && (code == KeyCode.W || code == KeyCode.F2)) {
      event.consume();
      card.toggleWhy();
    } else if (code == KeyCode.PAGE_DOWN || code == KeyCode.PAGE_UP) {
      event.consume();
      card.page(code == KeyCode.PAGE_DOWN);
    }
  }

  private void pick(int digit) {
    var toDo = sheet().toDo();
    if (digit >= 1 && digit <= toDo.size()) {
      goTo.accept(toDo.get(digit - 1).start());
    }
  }

  private PartSheet sheet() {
    return PartSheet.of(reading, at);
  }

  private void reach(SidedPart part) {
    at = part;
    map.point(Optional.of(part.part()), part.side());
    card.show(sheet());
  }

  /** A click shows a joint; Enter or a second click goes to its first step with something left. */
  private void choose(SidedPart part) {
    boolean there = part.equals(at) && map.isFocusWithin();
    if (there) {
      sheet().start().ifPresent(goTo);
    } else {
      map.focus(part.part(), part.side());
    }
  }

  Node node() {
    return node;
  }

  boolean isShown() {
    return node.getScene() != null;
  }

  void show(LimbReading now, SidedPart part) {
    reading = now;
    LimbGuide.draw(map, now, words);
    reach(part);
  }

  void show(LimbReading now) {
    show(now, at);
  }

  void focus() {
    Platform.runLater(() -> map.focus(at.part(), at.side()));
  }
}
