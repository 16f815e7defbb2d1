package styloid.finding;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.PatientContext;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.SourceStatus;
import styloid.model.TestId;

/** What several rules ask of an evaluation, and how they say it. */
record Visit(PatientContext context) {
  static final TestId SCREEN = new TestId("screen");
  static final TestId GRADING = new TestId("grading");
  static final TestId GONIOMETRY = new TestId("goniometry");
  static final TestId GRIP = new TestId("grip");

  /** The two limbs, in the order findings are given. */
  static final List<Side> LIMBS = List.of(Side.RIGHT, Side.LEFT);

  /** No source but practice stands behind a rule. */
  static final SourceStatus PRACTICE = SourceStatus.COMMON_PRACTICE;

  private static final BigDecimal CUSTOMARY_ERROR = BigDecimal.valueOf(5);
  private static final List<String> WEAK = List.of("0", "1", "2-", "2", "2+", "3-", "3", "3+");
  private static final List<String> STRONG = List.of("4-", "4", "4+", "5");

  /** Goniometry's own setting, so that all judge by the same error; 5 degrees if unset. */
  BigDecimal error() {
    String set = context.evaluation().choices().getOrDefault("goniometry.error", "");
    return set.matches("\\d{1,2}(\\.\\d{1,3})?") ? new BigDecimal(set) : CUSTOMARY_ERROR;
  }

  /** Motions the screen has this answer for, in the order they were recorded. */
  List<ItemKey> screened(Side side, String answer) {
    return context.snapshot().entries().stream()
        .filter(entry -> entry.key().test().equals(SCREEN) && entry.key().side() == side)
        .filter(entry -> answers(entry, answer))
        .map(Entry::key)
        .toList();
  }

  private static boolean answers(Entry entry, String answer) {
    return entry.value().filter(v -> v instanceof Choice c && c.code().equals(answer)).isPresent();
  }

  /** Entries of goniometry about a motion of the screen, whatever the digit. */
  Stream<Entry> measured(String motion, Side side) {
    return context.snapshot().entries().stream()
        .filter(entry -> entry.key().test().equals(GONIOMETRY) && entry.key().side() == side)
        .filter(entry -> about(motion, entry.key().item().value()));
  }

  /** Whether an item or result of another test is about a motion: named after it. */
  static boolean about(String motion, String id) {
    return id.startsWith(motion + "-");
  }

  Optional<Result> result(ResultKey like, String id) {
    return context
        .results()
        .result(new ResultKey(like.test(), new ResultId(id), like.side(), like.digit()));
  }

  Optional<Quantity> quantity(ResultKey key) {
    return context.results().result(key).flatMap(Result::quantity);
  }

  /** Code of a result that is a choice. */
  static Optional<String> code(Result result) {
    return result.value().filter(Choice.class::isInstance).map(v -> ((Choice) v).code());
  }

  /** Results of grading that are the grade of one motion, where there is one. */
  Stream<Result> grades(Side side) {
    return context.results().of(GRADING).stream()
        .filter(result -> result.key().side() == side)
        .filter(result -> result.key().result().value().endsWith("-grade"))
        .filter(result -> code(result).isPresent());
  }

  /** Below 4; "at least 3" is neither weak nor strong. */
  static boolean weak(String grade) {
    return WEAK.contains(grade);
  }

  /** 4 minus or better. */
  static boolean strong(String grade) {
    return STRONG.contains(grade);
  }

  /** Name of an item of another test, with the digit where it has one. */
  static Message named(String rule, ItemKey key) {
    return ofDigit(rule, Message.of(key.test(), "item." + key.item()), key.digit());
  }

  /** Name of a result of another test, with the digit where it has one. */
  static Message named(String rule, ResultKey key) {
    return ofDigit(rule, Message.of(key.test(), "result." + key.result()), key.digit());
  }

  static Message ofDigit(String rule, Message name, Digit digit) {
    return digit == Digit.NONE ? name : Message.of(rule, "of-digit", name, digit);
  }

  /** "One; two; three". */
  static Message list(String rule, List<Message> parts) {
    Message all = parts.get(parts.size() - 1);
    for (int i = parts.size() - 2; i >= 0; i--) {
      all = Message.of(rule, "and", parts.get(i), all);
    }
    return all;
  }
}
