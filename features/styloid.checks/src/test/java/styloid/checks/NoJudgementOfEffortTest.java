package styloid.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Consistency of trials is described; nothing shown to a user judges the person's will. */
class NoJudgementOfEffortTest {
  private static final Pattern JUDGING =
      Pattern.compile(".*(effort|sincer|malinger|feign|fake|exaggerat|submaxim|cheat).*");

  @Test
  void noWordShownJudgesEffort() {
    List<Path> files =
        Project.files(Project.ROOT.resolve("bundles"), ".properties").stream()
            .filter(f -> f.toString().replace('\\', '/').contains("/src/main/resources/"))
            .toList();
    assertTrue(files.size() > 5, files::toString);
    for (Path file : files) {
      List<String> judging =
          Project.text(file)
              .lines()
              .filter(line -> JUDGING.matcher(line.toLowerCase(Locale.ROOT)).matches())
              .toList();
      assertEquals(List.of(), judging, file.toString());
    }
  }
}
