package styloid.shell;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.transform.Scale;
import javafx.stage.Stage;
import javax.imageio.ImageIO;

/** A real window for tests, with or without a display. */
final class Window {
  private static boolean started;

  private Window() {}

  static synchronized void start() {
    if (!started) {
      started = true;
      CompletableFuture<Void> up = new CompletableFuture<>();
      Platform.startup(() -> up.complete(null));
      up.orTimeout(30, TimeUnit.SECONDS).join();
      Platform.setImplicitExit(false);
    }
  }

  static <T> T on(Supplier<T> work) {
    CompletableFuture<T> done = new CompletableFuture<>();
    Platform.runLater(
        () -> {
          try {
            done.complete(work.get());
          } catch (RuntimeException | Error e) {
            done.completeExceptionally(e);
          }
        });
    return done.orTimeout(30, TimeUnit.SECONDS).join();
  }

  static void run(Runnable work) {
    on(
        () -> {
          work.run();
          return null;
        });
  }

  /** Lets everything that was put off happen. */
  static void settle() {
    for (int turn = 0; turn < 2; turn++) {
      run(() -> {});
    }
  }

  /** Lets the window be laid out and drawn as often as it takes for lists to fill. */
  static void draw() {
    CompletableFuture<Void> drawn = new CompletableFuture<>();
    run(
        () ->
            new AnimationTimer() {
              private int pulses;

              @Override
              public void handle(long now) {
                if (++pulses == 4) {
                  stop();
                  drawn.complete(null);
                }
              }
            }.start());
    drawn.orTimeout(30, TimeUnit.SECONDS).join();
  }

  static Stage show(Parent root, double width, double height) {
    start();
    return on(
        () -> {
          Stage stage = new Stage();
          Scene scene = new Scene(root, width, height);

          stage.setScene(scene);
          stage.show();
          return stage;
        });
  }

  /** The scene as drawn, with so many pixels a side for each of its own. */
  static WritableImage image(Stage stage, double factor) {
    settle();
    return on(
        () -> {
          SnapshotParameters parameters = new SnapshotParameters();
          parameters.setTransform(new Scale(factor, factor));
          Scene scene = stage.getScene();
          parameters.setViewport(
              new Rectangle2D(0, 0, scene.getWidth() * factor, scene.getHeight() * factor));
          return scene.getRoot().snapshot(parameters, null);
        });
  }

  static void picture(Stage stage, Path file, double factor) {
    write(image(stage, factor), file);
  }

  /** Writes a picture in PNG. */
  static void write(WritableImage image, Path file) {
    int width = (int) image.getWidth();
    int height = (int) image.getHeight();
    BufferedImage out = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    int[] pixels = new int[width * height];
    image
        .getPixelReader()
        .getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
    out.setRGB(0, 0, width, height, pixels, 0, width);
    try {
      Files.createDirectories(file.getParent());
      ImageIO.write(out, "png", file.toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
