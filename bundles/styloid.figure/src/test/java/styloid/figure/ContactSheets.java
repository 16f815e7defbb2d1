package styloid.figure;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.CountDownLatch;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.TilePane;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.Side;
import styloid.spi.Group;
import styloid.spi.Guide;
import styloid.spi.Sweep;
import styloid.spi.TestDefinition;

/**
 * Draws the picture of every guide of every module into sheets under {@code target/figures}. Run by
 * hand: {@code ContactSheets [test] [columns]}.
 */
public final class ContactSheets {
  private static final int TILE = 330;
  private static final int PER_SHEET = 12;

  private ContactSheets() {}

  /** One tile: its caption and what is drawn. */
  record Tile(String caption, Subject subject) {}

  public static void main(String[] args) throws Exception {
    Path folder = Files.createDirectories(Path.of("target", "figures"));
    CountDownLatch done = new CountDownLatch(1);
    Platform.startup(
        () -> {
          try {
            for (TestDefinition test : Suite.definitions()) {
              if (args.length == 0 || args[0].equals(test.id().value())) {
                sheets(folder, test.id().value(), tiles(test, args.length > 1 ? args[1] : ""));
              }
            }
          } finally {
            done.countDown();
          }
        });
    done.await();
    Platform.exit();
  }

  static List<Tile> tiles(TestDefinition test, String only) {
    ArrayList<Tile> tiles = new ArrayList<>();
    for (Group group : test.groups()) {
      if (!group.guide().hasPicture() || !group.id().matches(only.isEmpty() ? ".*" : only)) {
        continue;
      }
      for (Item item : Suite.pictured(group)) {
        for (Digit digit : item.digits()) {
          for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
            ItemKey key = new ItemKey(test.id(), item.id(), side, digit, 1);
            Subject subject = Subject.of(group, key, readings(group.guide(), item, side));
            tiles.add(new Tile(caption(item, side, digit), subject));
          }
        }
      }
    }
    return tiles;
  }

  /** On the right nothing was measured yet; on the left both ends were, short of the reference. */
  private static List<Reading> readings(Guide guide, Item item, Side side) {
    ArrayList<Reading> readings = new ArrayList<>();
    for (Sweep sweep : guide.sweeps()) {
      if (side == Side.LEFT && sweep.item().value().endsWith("active")) {
        double degrees = Math.round(sweep.drawn() * 0.8);
        readings.add(new Reading(sweep, degrees, OptionalDouble.of(20)));
      }
    }
    return readings;
  }

  private static String caption(Item item, Side side, Digit digit) {
    return side.code() + " " + item.id() + (digit == Digit.NONE ? "" : " " + digit.code());
  }

  private static void sheets(Path folder, String name, List<Tile> tiles) {
    for (int from = 0, sheet = 1; from < tiles.size(); from += PER_SHEET, sheet++) {
      TilePane pane = new TilePane(6, 6);
      pane.setPrefColumns(4);
      pane.setStyle("-fx-background-color: white; -fx-padding: 6;");
      for (Tile tile : tiles.subList(from, Math.min(tiles.size(), from + PER_SHEET))) {
        FigureView view = new FigureView(Locale.ROOT);
        view.setPrefSize(TILE, TILE * 0.68);
        view.show(Sketcher.draw(tile.subject()));
        VBox box = new VBox(2, new Label(tile.caption()), view);
        box.setStyle("-fx-border-color: #cccccc; -fx-padding: 3;");
        pane.getChildren().add(box);
      }
      new Scene(pane, Color.WHITE);
      pane.applyCss();
      pane.autosize();
      pane.layout();
      WritableImage image = pane.snapshot(null, null);
      Png.write(image, folder.resolve(name + "-" + sheet + ".png"));
    }
  }
}
