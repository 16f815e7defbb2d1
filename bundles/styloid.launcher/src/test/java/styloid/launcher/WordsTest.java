package styloid.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class WordsTest {
  private final Words words = new Words();

  @Test
  void argumentsAreFilledInWhereTheyStand() {
    assertEquals("a did not start: b", words.text("fault.failed", "a", "b"));
  }

  @Test
  void argumentsAreNotReadAsPatterns() {
    assertEquals("{1} did not start: {0}", words.text("fault.failed", "{1}", "{0}"));
  }

  @Test
  void aKeyWithoutWordsShowsItselfRatherThanNothing() {
    assertEquals("no.such.key", words.text("no.such.key"));
  }
}
