package styloid.workbook;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.ItemRef;
import styloid.model.Message;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.model.Text;
import styloid.model.Value;
import styloid.spi.Group;
import styloid.spi.Labels;
import styloid.spi.TestDefinition;
import styloid.spi.Texts;

/** The workbook's own words beside those of the tests, in the reader's language. */
final class Say {
  static final String SCOPE = "workbook";
  private static final Labels LABELS = Labels.beside(Say.class);
  private final Texts texts;

  /** Names of items whose own words are shared by others of their test. */
  private final Map<ItemRef, String> fuller = new HashMap<>();

  Say(Texts texts, List<TestDefinition> definitions) {
    this.texts = texts.with(SCOPE, LABELS);
    definitions.forEach(this::nameShared);
  }

  /** "Range" says little where thirty motions have one; there the group's name goes before it. */
  private void nameShared(TestDefinition test) {
    HashMap<String, Integer> uses = new HashMap<>();
    test.items().forEach(item -> uses.merge(label(test.id(), item.id()), 1, Integer::sum));
    for (Group group : test.groups()) {
      String words = texts.label(test.id().value(), "group." + group.id());
      for (Item item : group.items()) {
        String own = label(test.id(), item.id());
        if (uses.get(own) > 1) {
          fuller.put(new ItemRef(test.id(), item.id()), own("item-of-group", words, own));
        }
      }
    }
  }

  private String label(TestId test, ItemId item) {
    return texts.find(test.value(), "item." + item).orElse(item.value());
  }

  /** Own words. */
  String own(String key, Object... args) {
    return texts.text(Message.of(SCOPE, key, args));
  }

  String message(Message message) {
    return texts.text(message);
  }

  Texts texts() {
    return texts;
  }

  String date(LocalDate date) {
    return texts.date(date);
  }

  String dateOrUnknown(Optional<LocalDate> date) {
    return date.map(texts::date).orElseGet(() -> own("not-recorded"));
  }

  String orUnknown(String text) {
    return text.isBlank() ? own("not-recorded") : text;
  }

  /** The step a caution belongs to; without one it holds for the whole test. */
  String orAll(String step) {
    return step.isBlank() ? own("whole-test") : step;
  }

  String test(TestId test) {
    return texts.find(test.value(), "test.title").orElse(test.value());
  }

  String item(ItemKey key) {
    String shared = fuller.get(key.ref());
    return shared == null ? label(key.test(), key.item()) : shared;
  }

  String result(ResultKey key) {
    return texts.find(key.test().value(), "result." + key.result()).orElse(key.result().value());
  }

  /** A result that is no number, in words. */
  String resultValue(ResultKey key, Value value) {
    return value.match(
        texts::quantity,
        choice -> {
          String label = "choice." + key.result() + "." + choice.code();
          return texts.find(key.test().value(), label).orElse(choice.code());
        },
        Text::text,
        absence -> texts.word(absence.reason()));
  }

  /** A side in words; what belongs to no limb says so, since a side is never left out. */
  String side(Side side) {
    return side == Side.UNSIDED ? own("no-side") : texts.word(side);
  }

  String digit(Digit digit) {
    return digit == Digit.NONE ? own("nothing") : texts.word(digit);
  }

  /** The same with a capital first letter. */
  String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(texts.locale()) + text.substring(1);
  }

  /** "wrist extension, index finger". */
  String itemOfDigit(String name, Digit digit) {
    return digit == Digit.NONE ? name : name + ", " + texts.word(digit);
  }
}
