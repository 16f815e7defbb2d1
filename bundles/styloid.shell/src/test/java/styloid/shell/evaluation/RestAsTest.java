package styloid.shell.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import styloid.form.FormState;
import styloid.model.Digit;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Side;
import styloid.session.OpenEvaluation;
import styloid.shell.Clinic;
import styloid.spi.TestDefinition;

class RestAsTest {
  private static final OpenEvaluation OPEN = Clinic.opened();
  private final TestDefinition screen = OPEN.tests().get(0);

  private RestAs rest(Map<ItemKey, String> drafts) {
    FormState state = new FormState(screen, OPEN.context(), Set.of(), drafts, false, false);
    return RestAs.of(state, screen.restAs().orElseThrow());
  }

  private ItemKey key(String item, Side side) {
    return new ItemKey(screen.id(), new ItemId(item), side, Digit.NONE, 1);
  }

  @Test
  void onlyWhatHasNoEntryIsFilled() {
    RestAs rest = rest(Map.of());
    assertFalse(rest.keys().contains(key("elbow-flexion", Side.RIGHT)));
    assertTrue(rest.keys().contains(key("shoulder-flexion", Side.LEFT)));
  }

  @Test
  void whatIsNotAskedOrHasAnotherAnswerListIsLeftOut() {
    assertTrue(rest(Map.of()).keys().stream().noneMatch(k -> k.item().value().endsWith("-pain")));
  }

  @Test
  void textUnderWayIsNotOverwritten() {
    ItemKey under = key("shoulder-flexion", Side.LEFT);
    int all = rest(Map.of()).keys().size();
    assertEquals(all - 1, rest(Map.of(under, "2")).keys().size());
  }
}
