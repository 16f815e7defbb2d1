package styloid.shell.map;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import styloid.figure.LimbMap;
import styloid.model.ItemKey;
import styloid.model.LimbPart;
import styloid.model.Side;
import styloid.session.OpenEvaluation;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.spi.Texts;

/**
 * The state of both limbs at a glance, and the way from a joint to its steps. The small map takes
 * clicks and never the focus; the large one is opened by a key or a click. JavaFX thread only.
 */
public final class LimbGuide {
  private final Shell.Screens screens;
  private final MapWords words;
  private final Consumer<ItemKey> goTo;
  private final LimbMap map = new LimbMap(false);
  private final Set<Side> involved;
  private final Region node;
  private Optional<MapCard> card = Optional.empty();
  private LimbReading reading;
  private Optional<ItemKey> entry = Optional.empty();
  private SidedPart at;

  /**
   * A guide through one evaluation.
   *
   * @param goTo puts entry at a place of the work sheet
   */
  public LimbGuide(
      Shell.Screens screens, Texts texts, OpenEvaluation open, Consumer<ItemKey> goTo) {
    this.screens = screens;
    this.words = new MapWords(texts);
    this.goTo = goTo;
    this.reading = LimbReading.of(open);
    Side first =
        open.context().patient().involved().contains(Side.LEFT)
                && !open.context().patient().involved().contains(Side.RIGHT)
            ? Side.LEFT
            : Side.RIGHT;
    this.at = new SidedPart(LimbPart.SHOULDER, first);
    map.onChosen((part, side) -> open(new SidedPart(part, side)));
    map.setMinSize(120, 60);
    involved = open.context().patient().involved();
    node =
        MapCard.named(
            map,
            words,
            involved,
            Make.button(words.say("map.open"), this::open, "quiet-button", "map-open"));
    node.getStyleClass().add("limb-guide");
    draw(map, reading, words);
  }

  /** The small map with the button that opens the large one. */
  public Region node() {
    return node;
  }

  /** Draws the evaluation as it is now. */
  public void update(OpenEvaluation open) {
    if (open == reading.open()) {
      return;
    }
    reading = reading.next(open);
    draw(map, reading, words);
    card.filter(MapCard::isShown).ifPresent(shown -> shown.show(reading));
  }

  /** Entry is at a place; nowhere where empty. */
  public void at(Optional<ItemKey> key) {
    if (key.isEmpty() || key.equals(entry)) {
      return;
    }
    entry = key;
    Set<LimbPart> parts = reading.index().partsOf(key.get());
    if (!parts.isEmpty()) {
      at = new SidedPart(parts.iterator().next(), key.get().side());
      map.point(Optional.of(at.part()), at.side());
    }
  }

  /** Opens the large map where entry is. */
  public void open() {
    open(at);
  }

  private void open(SidedPart part) {
    MapCard made =
        new MapCard(
            words,
            involved,
            key -> {
              screens.uncover();
              goTo.accept(key);
            },
            screens::uncover);
    card = Optional.of(made);
    made.show(reading, part);
    screens.cover(made.node());
    made.focus();
  }

  static void draw(LimbMap map, LimbReading reading, MapWords words) {
    for (SidedPart part : SidedPart.all()) {
      PartState state = reading.state(part);
      map.show(part.part(), part.side(), MapWords.mark(state), words.part(part, state));
    }
  }
}
