package styloid.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import styloid.exchange.DefinitionFile;
import styloid.spi.TestModule;

/** A record outlives its module only if the stored definition says all the module said. */
class StoredDefinitionTest {
  static List<TestModule> modules() {
    return Modules.all();
  }

  @ParameterizedTest
  @MethodSource("modules")
  void everyShippedDefinitionReadsBackEqual(TestModule module) {
    DefinitionFile.Read read = DefinitionFile.read(DefinitionFile.write(module.definition()));
    assertEquals(List.of(), read.problems());
    assertEquals(Optional.of(module.definition()), read.definition());
  }
}
