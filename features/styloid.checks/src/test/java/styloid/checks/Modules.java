package styloid.checks;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import styloid.spi.TestModule;

/** Every test module the project ships, found by its component description. */
public final class Modules {
  private static final Pattern IMPLEMENTATION =
      Pattern.compile("implementation class=\"([^\"]+)\"");

  private Modules() {}

  public static List<TestModule> all() {
    ArrayList<TestModule> modules = new ArrayList<>();
    for (String bundle : Project.bundles()) {
      Path descriptions = Project.classes(bundle).resolve("OSGI-INF");
      for (Path file : Project.files(descriptions, ".xml")) {
        String text = Project.text(file);
        Matcher matcher = IMPLEMENTATION.matcher(text);
        if (text.contains("<provide interface=\"styloid.spi.TestModule\"") && matcher.find()) {
          modules.add(make(matcher.group(1)));
        }
      }
    }
    return modules;
  }

  private static TestModule make(String name) {
    try {
      return (TestModule) Class.forName(name).getConstructor().newInstance();
    } catch (ReflectiveOperationException e) {
      throw new AssertionError("cannot make " + name, e);
    }
  }
}
