package styloid.form;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import javafx.stage.Stage;
import styloid.model.Side;
import styloid.spi.Group;
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;
import styloid.spi.Texts;

/**
 * Opens the form of one module on made-up data: {@code FormDemo styloid.grip.GripModule}, or the
 * sample test without a name. A second word is a file to save a picture to instead of staying open.
 */
final class FormDemo {
  private FormDemo() {}

  public static void main(String[] args) throws ReflectiveOperationException {
    TestDefinition test = SampleTest.definition();
    if (args.length > 0 && !args[0].equals("sample")) {
      var constructor = Class.forName(args[0]).getDeclaredConstructor();
      constructor.setAccessible(true);
      test = ((TestModule) constructor.newInstance()).definition();
    }
    Texts texts =
        new Texts(
            Map.of(test.id().value(), test.labels(), FormView.SCOPE, FormView.labels()),
            Locale.ENGLISH);
    Memory memory =
        new Memory(test, SampleTest.context(Set.of(Side.LEFT), SampleTest.noResistance(Side.LEFT)));
    List<Group> groups = test.groups();
    Window.start();
    FormView form = Window.on(() -> new FormView(memory, texts));
    memory.onChange(() -> form.show(memory.state(), groups));
    Window.run(() -> form.show(memory.state(), groups));
    Stage stage = Window.show(form, 860, 640);
    Window.run(form::focusStart);
    if (args.length > 1) {
      Window.picture(stage, Path.of(args[1]));
      System.exit(0);
    }
    Window.run(() -> stage.setOnHidden(e -> System.exit(0)));
  }
}
