package styloid.form;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
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

  static Stage show(Parent root, double width, double height) {
    start();
    return on(
        () -> {
          Stage stage = new Stage();
          Scene scene = new Scene(root, width, height);
          scene.getStylesheets().addAll(Palette.LIGHT.sheets());
          stage.setScene(scene);
          stage.show();
          return stage;
        });
  }

  static void picture(Stage stage, Path file) {
    settle();
    WritableImage image = on(() -> stage.getScene().snapshot(null));
    int width = (int) image.getWidth();
    int height = (int) image.getHeight();
    BufferedImage out = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        out.setRGB(x, y, image.getPixelReader().getArgb(x, y));
      }
    }
    try {
      Files.createDirectories(file.getParent());
      ImageIO.write(out, "png", file.toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
