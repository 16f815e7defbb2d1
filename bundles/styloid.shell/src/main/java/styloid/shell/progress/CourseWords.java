package styloid.shell.progress;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import styloid.model.Digit;
import styloid.model.ErrorRange;
import styloid.model.Item;
import styloid.model.ItemKind;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.shell.frame.Shell;
import styloid.spi.Texts;

/** A course in words: its name, its values, its error. */
final class CourseWords {
  private final Course course;
  private final Texts texts;

  CourseWords(Course course, Texts texts) {
    this.course = course;
    this.texts = texts;
  }

  String name() {
    Item item = course.item();
    String name = texts.item(course.key(course.sides().get(0)));
    String whole =
        course.digit() == Digit.NONE
            ? name
            : Shell.say(texts, "rail.of-digit", name, texts.word(course.digit()));
    return item.trials() > 1 ? Shell.say(texts, "progress.mean", whole, item.trials()) : whole;
  }

  String value(double number) {
    int decimals =
        course.item().kind() instanceof ItemKind.Number kind ? Math.min(1, kind.decimals()) : 1;
    String words =
        texts.quantity(new Quantity(BigDecimal.valueOf(number), course.unit()), decimals);
    String zeros = texts.number(BigDecimal.ZERO, 1).substring(1);
    return decimals == 1
        ? words.replaceFirst(java.util.regex.Pattern.quote(zeros) + "(?!\\d)", "")
        : words;
  }

  /** "12 kg to 28.5 kg": the oldest and the newest value. */
  String span(Side side) {
    List<Course.Point> points = course.points(side);
    if (points.isEmpty()) {
      return Shell.say(texts, "progress.none");
    } else if (points.size() == 1) {
      return value(points.get(0).value());
    }
    return Shell.say(
        texts,
        "progress.span",
        value(points.get(0).value()),
        value(points.get(points.size() - 1).value()));
  }

  String side(Side side) {
    return texts.place(side, Digit.NONE);
  }

  /** One visit, both sides: "3 Mar 2026: right 12 kg; left not done". */
  String visit(Visit visit) {
    String sides =
        course.sides().stream()
            .map(
                side ->
                    side == Side.UNSIDED
                        ? reading(visit, side)
                        : Shell.say(texts, "progress.side", texts.word(side), reading(visit, side)))
            .collect(Collectors.joining("; "));
    return Shell.say(texts, "progress.visit", texts.date(visit.date()), sides);
  }

  private String reading(Visit visit, Side side) {
    Reading reading = visit.readings().get(side);
    return switch (reading.state()) {
      case MEASURED -> value(reading.value().orElseThrow());
      case INCOMPLETE -> Shell.say(texts, "progress.incomplete");
      case ABSENT -> Shell.say(texts, "progress.absent", reading.reason().orElseThrow());
      case NOTHING -> Shell.say(texts, "progress.nothing");
    };
  }

  /** What the band shows, or that there is none. */
  List<String> error() {
    List<Side> stated = course.sides().stream().filter(course.errors()::containsKey).toList();
    if (stated.isEmpty()) {
      return List.of(Shell.say(texts, "progress.no-error"));
    }
    return stated.stream().map(this::error).toList();
  }

  private String error(Side side) {
    ErrorRange error = course.errors().get(side);
    double[] size = course.error(side).orElseThrow();
    Optional<Course.Point> from = course.reference(side);
    if (from.isEmpty()) {
      return Shell.say(texts, "progress.no-earlier", side(side));
    }
    String day = texts.date(from.get().visit().date());
    return error.low().equals(error.high())
        ? Shell.say(texts, "progress.error", side(side), value(size[0]), day)
        : Shell.say(texts, "progress.error-range", side(side), value(size[0]), value(size[1]), day);
  }

  /** All of it, for who does not see the drawing. */
  String all() {
    String visits = course.visits().stream().map(this::visit).collect(Collectors.joining(". "));
    return name() + ". " + visits + ". " + String.join(" ", error());
  }
}
