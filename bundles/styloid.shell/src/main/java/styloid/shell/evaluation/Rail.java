package styloid.shell.evaluation;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import styloid.figure.FigureCard;
import styloid.figure.Subject;
import styloid.model.Caution;
import styloid.model.Finding;
import styloid.model.ItemKey;
import styloid.model.PatientContext;
import styloid.model.Results;
import styloid.model.Source;
import styloid.model.Value;
import styloid.shell.frame.Banner;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.shell.progress.Sparks;
import styloid.spi.Group;
import styloid.spi.Guide;
import styloid.spi.Position;
import styloid.spi.TestDefinition;
import styloid.spi.Texts;

/**
 * What stands beside the entry: cautions of the step first, then its picture, how it is done,
 * results as they come, the value of the last visit, findings. Never takes the focus.
 */
final class Rail extends Region {
  private static final double LOWER_SHARE = 0.46;

  private final Texts texts;
  private final VBox before = new VBox(14);
  private final VBox after = new VBox(14);
  private final ScrollPane upper = scroll(before);
  private final ScrollPane lower = scroll(after);
  private final ResultList results;
  private final FigureCard figure;
  private Seen seen = new Seen(null, null, null, false);
  private boolean why;

  /** What the rail was drawn from. */
  private record Seen(ItemKey key, Results results, List<Finding> findings, boolean why) {}

  Rail(Texts texts) {
    this.texts = texts;
    this.results = new ResultList(texts);
    this.figure = new FigureCard(texts);
    getStyleClass().add("rail");
    lower.getStyleClass().add("rail-lower");
    upper.setAccessibleText(say("rail.before"));
    lower.setAccessibleText(say("rail.after"));
    figure.getStyleClass().add("rail-figure");
    Make.shown(figure, false);
    getChildren().addAll(upper, figure, lower);
  }

  /** Picture and results keep their place in sight: what is read before the step gives way. */
  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double picture = figure.isVisible() ? snapSizeY(figure.prefHeight(width)) : 0;
    double room = getHeight() - picture;
    double wanted = after.getChildren().isEmpty() ? 0 : after.prefHeight(width) + 2;
    double below = snapSizeY(Math.min(wanted, room * LOWER_SHARE));
    upper.resizeRelocate(0, 0, width, room - below);
    figure.resizeRelocate(0, room - below, width, picture);
    lower.resizeRelocate(0, getHeight() - below, width, below);
  }

  /**
   * Puts the focus on its next part, so that keys can scroll it.
   *
   * @return false when there is none
   */
  boolean focusNext() {
    boolean results = !after.getChildren().isEmpty();
    if (lower.isFocused() || upper.isFocused() && !results) {
      return false;
    }
    (upper.isFocused() ? lower : upper).requestFocus();
    return true;
  }

  private static ScrollPane scroll(VBox parts) {
    parts.getStyleClass().add("rail-parts");
    ScrollPane scroll = new ScrollPane(parts);
    scroll.setFitToWidth(true);
    scroll.setFocusTraversable(false);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    return scroll;
  }

  /** Shows or hides how results came about. */
  void toggleWhy() {
    why = !why;
  }

  void show(Stand stand, Page page, ItemKey key) {
    Seen now = new Seen(key, stand.open().context().results(), stand.open().findings(), why);
    boolean same =
        Objects.equals(now.key(), seen.key())
            && now.results() == seen.results()
            && now.findings().equals(seen.findings())
            && now.why() == seen.why();
    if (same) {
      return;
    }
    boolean moved = !Objects.equals(now.key(), seen.key());
    seen = now;
    before.getChildren().clear();
    after.getChildren().clear();
    Optional<Group> group =
        Optional.ofNullable(key)
            .flatMap(k -> page.test().groupOf(k.item()))
            .or(() -> page.groups().stream().findFirst());
    figure(stand.open().context(), group, key);
    group.ifPresent(g -> step(stand, page, key, g));
    findings(stand.open().findings());
    requestLayout();
    if (moved) {
      upper.setVvalue(0);
      lower.setVvalue(0);
    }
  }

  private void step(Stand stand, Page page, ItemKey key, Group group) {
    TestDefinition test = page.test();
    cautions(test, group);
    guide(test, group.guide());
    Sparks.of(stand.open().context(), test.id(), group, key, texts)
        .ifPresent(sparks -> section("rail.progress", new VBox(sparks), after));
    VBox list = results.of(test, group, key, stand.open().context().results(), why);
    if (!list.getChildren().isEmpty()) {
      section("rail.results", list, after);
    }
    if (key != null) {
      last(stand.open().context(), key);
    }
  }

  private void cautions(TestDefinition test, Group group) {
    VBox box = new VBox(6);
    LinkedHashSet<String> sources = new LinkedHashSet<>();
    Stream.concat(group.cautions().stream(), test.testCautions().stream())
        .forEach(
            id -> {
              String words = texts.label(test.id().value(), "caution." + id);
              box.getChildren()
                  .add(new HBox(8, Banner.warning(), Make.text(words, "caution-text")));
              test.caution(id).map(Caution::source).map(this::source).ifPresent(sources::add);
            });
    if (!box.getChildren().isEmpty()) {
      box.getStyleClass().add("cautions");
      box.getChildren().add(0, Make.text(say("rail.cautions"), "caution-head"));
      box.getChildren().add(Make.text(String.join("; ", sources), "fine-print"));
      before.getChildren().add(box);
    }
  }

  private String source(Source source) {
    String status = texts.word(source.status());
    return source.citation().equals(Source.NO_SOURCE)
        ? status
        : say("rail.source", source.citation(), status);
  }

  /** The picture of the place of entry: without a place there is no side to draw. */
  private void figure(PatientContext context, Optional<Group> group, ItemKey key) {
    Optional<Subject> subject =
        Optional.ofNullable(key)
            .flatMap(k -> group.flatMap(g -> FigureCard.subject(g, k, context)));
    Make.shown(figure, subject.isPresent());
    subject.ifPresent(s -> figure.show(s, group.orElseThrow().guide().isReduced(key.item())));
  }

  private void guide(TestDefinition test, Guide guide) {
    VBox box = new VBox(6);
    placed(guide, Guide.Topic.POSITION, guide.position(), box);
    placed(guide, Guide.Topic.GRAVITY_REDUCED, guide.gravityReduced(), box);
    for (Guide.Line line : guide.lines()) {
      topic(box, texts.word(line.topic()), texts.label(test.id().value(), line.labelKey()));
    }
    if (!box.getChildren().isEmpty()) {
      section("rail.guide", box, before);
    }
  }

  /** The position in general words, where the test has none of its own for it. */
  private void placed(Guide guide, Guide.Topic topic, Optional<Position> position, VBox box) {
    boolean said = guide.lines().stream().anyMatch(line -> line.topic() == topic);
    if (!said) {
      position.ifPresent(p -> topic(box, texts.word(topic), position(p)));
    }
  }

  private String position(Position position) {
    String words = texts.word(position.body()) + ", " + texts.word(position.support());
    return position.rotation() == Position.Rotation.ANY
        ? words
        : words + ", " + texts.word(position.rotation());
  }

  private static void topic(VBox box, String name, String words) {
    VBox topic = new VBox(1, Make.text(name, "topic"), Make.text(words, "topic-text"));
    box.getChildren().add(topic);
  }

  private void last(PatientContext context, ItemKey key) {
    for (PatientContext.Past past : context.past()) {
      Optional<Value> value = past.snapshot().value(key);
      if (value.isPresent()) {
        String words =
            say(
                "rail.last-value",
                texts.place(key.side(), key.digit()),
                texts.value(key, value.get()),
                texts.date(past.evaluation().date()));
        section("rail.last", new VBox(Make.text(words.strip(), "topic-text")), after);
        return;
      }
    }
    if (!context.past().isEmpty()) {
      section("rail.last", new VBox(Make.text(say("rail.last-none"), "quiet")), after);
    }
  }

  private void findings(List<Finding> findings) {
    if (findings.isEmpty()) {
      return;
    }
    VBox box = new VBox(6);
    for (Finding finding : findings) {
      String side = texts.place(finding.side(), styloid.model.Digit.NONE);
      String words = texts.text(finding.text());
      box.getChildren().add(Make.text(side.isEmpty() ? words : side + ": " + words, "finding"));
    }
    section("rail.findings", box, after);
  }

  private void section(String headKey, VBox body, VBox into) {
    into.getChildren().add(new VBox(6, Make.text(say(headKey), "rail-head"), body));
  }

  private String say(String key, Object... args) {
    return Shell.say(texts, key, args);
  }
}
