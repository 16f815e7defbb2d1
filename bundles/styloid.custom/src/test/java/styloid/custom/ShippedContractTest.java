package styloid.custom;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import styloid.spi.TestModule;
import styloid.testkit.TestModuleContract;
import styloid.workbook.PoiFormulas;

/** The shipped declared tests keep to the contract every Java module keeps to. */
class ShippedContractTest {
  private static final PoiFormulas FORMULAS = new PoiFormulas();

  static DeclaredModule load(String name) {
    DeclaredFile.Read read =
        new DeclaredFile(FORMULAS, Set.of())
            .read(Shipped.text(name + ".json").orElseThrow(), Shipped::text);
    assertEquals(List.of(), read.problems());
    return read.module().orElseThrow();
  }

  @Test
  void everyOneIsTestedHere() {
    assertEquals(
        List.of(
            "box-and-block",
            "monofilaments",
            "nine-hole-peg",
            "pain",
            "swelling-tape",
            "swelling-volume",
            "thumb-web",
            "two-point"),
        Shipped.names());
  }

  abstract static class Contract extends TestModuleContract {
    private final DeclaredModule module;

    Contract(String name) {
      module = load(name);
    }

    @Override
    protected TestModule module() {
      return module;
    }

    @Override
    protected Set<String> dependOnHand() {
      return module.boundToHand();
    }
  }

  @Nested
  class BoxAndBlock extends Contract {
    BoxAndBlock() {
      super("box-and-block");
    }
  }

  @Nested
  class Monofilaments extends Contract {
    Monofilaments() {
      super("monofilaments");
    }
  }

  @Nested
  class NineHolePeg extends Contract {
    NineHolePeg() {
      super("nine-hole-peg");
    }
  }

  @Nested
  class Pain extends Contract {
    Pain() {
      super("pain");
    }
  }

  @Nested
  class SwellingTape extends Contract {
    SwellingTape() {
      super("swelling-tape");
    }
  }

  @Nested
  class SwellingVolume extends Contract {
    SwellingVolume() {
      super("swelling-volume");
    }
  }

  @Nested
  class ThumbWeb extends Contract {
    ThumbWeb() {
      super("thumb-web");
    }
  }

  @Nested
  class TwoPoint extends Contract {
    TwoPoint() {
      super("two-point");
    }
  }
}
