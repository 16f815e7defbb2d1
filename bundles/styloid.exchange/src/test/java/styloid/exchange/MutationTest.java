package styloid.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import styloid.model.DefinitionText;
import styloid.model.TestId;

/** Texts broken at random: whatever comes of them, it is a record or problems. */
class MutationTest {
  private static final String[] PIECES = {
    "{",
    "}",
    "[",
    "]",
    ",",
    ":",
    "\"",
    "\\",
    "null",
    "true",
    "-",
    "1e999999",
    "0",
    "\\u0000",
    "\uD83D",
    "\n",
    "\"side\": \"left\", ",
    "99999999999999999999999999",
    "\"\"",
    "{}",
    "[]"
  };

  @Test
  void anEvaluationFileBrokenAtRandomNeverThrows() throws IOException {
    Random random = new Random(50);
    int refused = 0;
    for (int i = 0; i < 4000; i++) {
      EvaluationFile.Read read =
          EvaluationFileTest.read(mutated(EvaluationFileTest.EXAMPLE, random));
      assertEquals(read.record().isEmpty(), !read.problems().isEmpty());
      refused += read.problems().size() > 0 ? 1 : 0;
      if (read.record().isPresent()) {
        String written = EvaluationFileTest.written(read.record().get());
        assertEquals(read, EvaluationFileTest.read(written));
      }
    }
    assertTrue(refused > 2000, refused + " refused");
  }

  @Test
  void aDefinitionBrokenAtRandomNeverThrows() {
    Random random = new Random(51);
    String text = DefinitionFile.write(DefinitionFileTest.definition()).text();
    for (int i = 0; i < 4000; i++) {
      DefinitionText broken =
          new DefinitionText(new TestId("sample"), "1.2", mutated(text, random));
      DefinitionFile.Read read = DefinitionFile.read(broken);
      assertEquals(read.definition().equals(Optional.empty()), !read.problems().isEmpty());
    }
  }

  private static String mutated(String text, Random random) {
    StringBuilder mutated = new StringBuilder(text);
    for (int i = random.nextInt(3); i >= 0; i--) {
      int at = random.nextInt(mutated.length());
      int end = Math.min(mutated.length(), at + 1 + random.nextInt(random.nextBoolean() ? 3 : 60));
      switch (random.nextInt(5)) {
        case 0 -> mutated.delete(at, end);
        case 1 -> mutated.insert(at, PIECES[random.nextInt(PIECES.length)]);
        case 2 -> mutated.insert(at, mutated.substring(at, end));
        case 3 -> mutated.setCharAt(at, (char) random.nextInt(random.nextBoolean() ? 128 : 65536));
        default -> {
          String piece = PIECES[random.nextInt(PIECES.length)];
          int quote = mutated.indexOf(" \"", at);
          int close = quote < 0 ? -1 : mutated.indexOf("\"", quote + 2);
          if (close >= 0) {
            mutated.replace(quote + 1, close + 1, piece);
          }
        }
      }
    }
    return mutated.toString();
  }
}
