package styloid.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import styloid.model.TestId;
import styloid.spi.TestDefinition;

class ModuleBookTest {
  private final ModuleGuard guard = new ModuleGuard(500);
  private final ModuleBook book = new ModuleBook(guard);

  @AfterEach
  void end() {
    guard.close();
  }

  private List<String> calculationOrder() {
    return book.calculationOrder().stream().map(d -> d.id().value()).toList();
  }

  private List<String> codes() {
    return book.faults().stream().map(ModuleFault::code).toList();
  }

  @Test
  void whatATestReadsIsCalculatedBeforeIt() {
    book.add(new SampleModule("a", "c"));
    book.add(new SampleModule("b"));
    book.add(new SampleModule("c", "b"));
    assertEquals(List.of("b", "c", "a"), calculationOrder());
    assertEquals(List.of(), book.faults());
  }

  @Test
  void testsThatReadInACircleAreNamedAndTheRestGoesOn() {
    book.add(new SampleModule("a", "b"));
    book.add(new SampleModule("b", "a"));
    book.add(new SampleModule("c"));
    assertEquals(List.of("c"), calculationOrder());
    assertEquals(List.of("CYCLE", "CYCLE"), codes());
  }

  @Test
  void aTestThatReadsAMissingOneStillWorksAndSaysSo() {
    book.add(new SampleModule("a", "gone"));
    assertEquals(List.of("a"), calculationOrder());
    assertEquals(List.of("READS"), codes());
  }

  @Test
  void anIdAlreadyTakenIsRefused() {
    SampleModule first = new SampleModule("a");
    book.add(first);
    book.add(new SampleModule("a"));
    assertEquals(first, book.find(new TestId("a")).orElseThrow());
    assertEquals(List.of("TAKEN"), codes());
  }

  @Test
  void aModuleThatCannotSayWhatItIsIsRefused() {
    book.add(
        new SampleModule("a") {
          @Override
          public TestDefinition definition() {
            throw new NoClassDefFoundError("some/Helper");
          }
        });
    assertTrue(book.definitions().isEmpty());
    assertEquals(1, book.faults().size());
  }

  @Test
  void aModuleThatLeavesTakesItsFaultsAlong() {
    SampleModule twin = new SampleModule("a");
    book.add(new SampleModule("a"));
    book.add(twin);
    book.remove(twin);
    assertEquals(List.of(), book.faults());
  }
}
