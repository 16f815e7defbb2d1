package styloid.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.model.Region;
import styloid.model.SourceStatus;
import styloid.spi.Group;
import styloid.spi.Guide;
import styloid.spi.Guide.Topic;
import styloid.spi.Mark;
import styloid.spi.Position;
import styloid.spi.TestDefinition;

class CatalogueTest {
  private final Map<String, Muscle> muscles = Muscle.table();
  private final List<Motion> catalogue = Motion.catalogue(muscles);
  private final TestDefinition definition = new Grading().definition();

  private String words(String key) {
    return definition.labels().find("en", key).orElse("");
  }

  private Motion motion(String id) {
    return catalogue.stream().filter(m -> m.id().equals(id)).findFirst().orElseThrow();
  }

  /** The list of the trade, motion by motion. */
  @Test
  void everyMotionOfTheListIsThereAndNoOther() {
    Set<String> list =
        Set.of(
            """
            shoulder-flexion shoulder-extension shoulder-abduction shoulder-adduction
            shoulder-scaption shoulder-horizontal-abduction shoulder-horizontal-adduction
            shoulder-internal-rotation shoulder-external-rotation scapular-elevation
            scapular-adduction scapular-abduction-upward-rotation scapular-depression
            elbow-flexion-palm-up elbow-flexion-palm-down elbow-flexion-mid elbow-extension
            forearm-supination forearm-pronation wrist-flexion wrist-flexion-radial
            wrist-flexion-ulnar wrist-extension wrist-extension-radial wrist-extension-ulnar
            wrist-radial-deviation wrist-ulnar-deviation mp-flexion mp-extension pip-flexion
            dip-flexion finger-abduction finger-adduction thumb-mp-flexion thumb-ip-flexion
            thumb-mp-extension thumb-ip-extension thumb-palmar-abduction thumb-radial-abduction
            thumb-adduction thumb-opposition little-finger-opposition
            """
                .strip()
                .split("\\s+"));
    HashSet<String> ids = new HashSet<>();
    catalogue.forEach(m -> assertTrue(ids.add(m.id()), m.id()));
    assertEquals(new TreeSet<>(list), new TreeSet<>(ids));
  }

  @Test
  void noFieldOfAnyMotionIsMissing() {
    for (Motion motion : catalogue) {
      assertFalse(motion.loads().isEmpty(), motion.id());
      assertTrue(motion.loads().contains(motion.region()), motion.id());
      for (Digit digit : motion.digits()) {
        assertFalse(motion.muscles(digit).isEmpty(), motion.id() + " " + digit);
      }
      EnumSet<Mark.Kind> marks = EnumSet.noneOf(Mark.Kind.class);
      motion.picture().marks().forEach(mark -> marks.add(mark.kind()));
      Mark.Kind resist =
          motion.region() == Region.FOREARM ? Mark.Kind.RESIST_TURN : Mark.Kind.RESIST;
      assertEquals(EnumSet.of(Mark.Kind.SUPPORT, resist, Mark.Kind.PALPATE), marks, motion.id());
      Guide guide = definition.groupOf(definitionItem(motion)).orElseThrow().guide();
      assertTrue(guide.position().isPresent() && guide.gravityReduced().isPresent(), motion.id());
      for (Topic topic :
          List.of(
              Topic.MUSCLES,
              Topic.POSITION,
              Topic.GRAVITY_REDUCED,
              Topic.SUPPORT,
              Topic.RESIST,
              Topic.JOINT_ANGLE,
              Topic.PALPATE,
              Topic.SUBSTITUTION,
              Topic.CRITERIA)) {
        String key =
            guide.lines().stream()
                .filter(line -> line.topic() == topic)
                .map(Guide.Line::labelKey)
                .findFirst()
                .orElseThrow();
        assertTrue(words(key).length() > 5, key);
      }
    }
  }

  private static ItemId definitionItem(Motion motion) {
    return motion.names().items().get("range");
  }

  @Test
  void everyMotionIsDrawnInBothPositions() {
    for (Motion motion : catalogue) {
      assertFalse(motion.picture().pose().degrees().isEmpty(), motion.id());
      Guide guide = definition.groupOf(definitionItem(motion)).orElseThrow().guide();
      ItemId felt = motion.names().items().get("contraction");
      assertTrue(guide.isReduced(felt), motion.id());
      assertFalse(guide.isReduced(definitionItem(motion)), motion.id());
      assertTrue(
          guide.picture(felt).marks().stream()
              .allMatch(m -> m.kind() == Mark.Kind.SUPPORT || m.kind() == Mark.Kind.PALPATE),
          motion.id() + " is resisted with gravity reduced");
    }
  }

  @Test
  void everyMuscleNamedIsInTheTableWithItsNerveRootsAndStatus() {
    for (Motion motion : catalogue) {
      String words = words("guide." + motion.id() + ".muscles");
      for (Muscle muscle : motion.allMuscles()) {
        assertEquals(muscle, muscles.get(muscle.name()));
        assertTrue(words.contains(muscle.name() + ": " + muscle.nerveName()), words);
        muscle.roots().forEach(root -> assertTrue(words.contains(root), words));
      }
    }
    assertTrue(
        words("guide.elbow-flexion-palm-up.muscles")
            .contains("biceps brachii: musculocutaneous; C5, C6 (verified)"));
    assertTrue(
        words("guide.thumb-ip-flexion.muscles")
            .contains(
                "flexor pollicis longus: anterior interosseous; C7, C8 (main) (from memory)"));
  }

  @Test
  void muscleTableIsTheReferenceTableUnchanged() throws IOException {
    assertEquals(
        lines("reference-muscles.csv"),
        lines("muscles.csv").stream().filter(line -> !line.startsWith("#")).toList());
    assertEquals(50, muscles.size());
    assertEquals(20, withStatus(SourceStatus.VERIFIED));
    assertEquals(30, withStatus(SourceStatus.MEMORY));
  }

  private static List<String> lines(String file) throws IOException {
    try (InputStream in = CatalogueTest.class.getResourceAsStream(file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    }
  }

  private long withStatus(SourceStatus status) {
    return muscles.values().stream().filter(m -> m.status() == status).count();
  }

  @Test
  void profundusBelongsToTwoNervesByDigit() {
    Motion dip = motion("dip-flexion");
    assertEquals(
        List.of("median", "anterior-interosseous"), dip.muscles(Digit.INDEX).get(0).nerves());
    assertEquals(
        List.of("median", "anterior-interosseous"), dip.muscles(Digit.MIDDLE).get(0).nerves());
    assertEquals(List.of("ulnar"), dip.muscles(Digit.RING).get(0).nerves());
    assertEquals(List.of("ulnar"), dip.muscles(Digit.LITTLE).get(0).nerves());
    assertEquals(1, dip.muscles(Digit.RING).size());
  }

  @Test
  void gravityReducedIsNeverTheAgainstGravityPositionWhereGravityMatters() {
    for (Motion motion : catalogue) {
      if (motion.criteria() == Criteria.GRAVITY) {
        assertFalse(motion.position().equals(motion.gravityReduced()), motion.id());
      }
    }
  }

  /** Facts of the trade (common practice, no source), each at the step it belongs to. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          elbow-against-gravity | elbow-extension | horizontal push
          proximal-to-wrist | forearm-supination forearm-pronation | proximal to the wrist
          proximal-to-wrist | forearm-supination forearm-pronation | triangular fibrocartilage
          fingers-relaxed | wrist-flexion wrist-flexion-radial wrist-flexion-ulnar wrist-extension \
          wrist-extension-radial wrist-extension-ulnar wrist-radial-deviation wrist-ulnar-deviation \
          | substitute
          resist-on-palm | wrist-flexion wrist-flexion-radial wrist-flexion-ulnar wrist-extension \
          wrist-extension-radial wrist-extension-ulnar wrist-radial-deviation wrist-ulnar-deviation \
          | finger muscles
          wrist-palm | wrist-flexion wrist-flexion-radial wrist-flexion-ulnar wrist-extension \
          wrist-extension-radial wrist-extension-ulnar | palm down
          superficialis-apart | pip-flexion | finger by finger
          shared-belly | dip-flexion | grip and pinch
          thumb-extensors-alike | thumb-mp-extension thumb-ip-extension | cannot be told apart
          thumb-mp-stability | thumb-radial-abduction | MP joint
          opposition-pull | thumb-opposition little-finger-opposition | healthy people
          """)
  void factOfTheTradeShowsAtItsStep(String caution, String motions, String words) {
    TreeSet<String> shownAt = new TreeSet<>();
    for (Group group : definition.groups()) {
      if (group.cautions().contains(caution)) {
        shownAt.add(group.id());
      }
    }
    assertEquals(new TreeSet<>(List.of(motions.split("\\s+"))), shownAt);
    assertTrue(words("caution." + caution).contains(words), words("caution." + caution));
    assertCommonPractice(caution);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          mid-range | never at the end of range
          tendon-repair | not strength-tested
          """)
  void factOfEveryStepShowsForTheWholeTest(String caution, String words) {
    assertTrue(definition.testCautions().contains(caution));
    assertTrue(words("caution." + caution).contains(words), words("caution." + caution));
    assertCommonPractice(caution);
  }

  /** Not at digits and forearm, where the criteria shown say that gravity hardly matters. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          gravity-first | against gravity first
          reduced-together | gravity-reduced tests of one joint together
          """)
  void factOfGravityShowsWhereverGravityCounts(String caution, String words) {
    int shown = 0;
    for (Motion motion : catalogue) {
      Group group = definition.groupOf(new ItemId(motion.id() + "-range")).orElseThrow();
      boolean gravity = motion.criteria() == Criteria.GRAVITY;
      assertEquals(gravity, group.cautions().contains(caution), motion::id);
      shown += gravity ? 1 : 0;
    }
    assertTrue(shown >= 20 && !definition.testCautions().contains(caution));
    assertTrue(words("caution." + caution).contains(words), words("caution." + caution));
    assertCommonPractice(caution);
  }

  private void assertCommonPractice(String caution) {
    assertEquals(
        SourceStatus.COMMON_PRACTICE, definition.caution(caution).orElseThrow().source().status());
  }

  /** Common practice, no source: extension palm down, flexion palm up. */
  @Test
  void wristIsTestedPalmUpForFlexionAndPalmDownForExtension() {
    for (String id : List.of("wrist-flexion", "wrist-flexion-radial", "wrist-flexion-ulnar")) {
      assertEquals(Position.Rotation.PALM_UP, motion(id).position().rotation());
      assertTrue(words("guide." + id + ".position").contains("palm up"));
    }
    for (String id :
        List.of("wrist-extension", "wrist-extension-radial", "wrist-extension-ulnar")) {
      assertEquals(Position.Rotation.PALM_DOWN, motion(id).position().rotation());
      assertTrue(words("guide." + id + ".position").contains("palm down"));
    }
  }

  @Test
  void wristIsNeverResistedOnTheFingers() {
    for (Motion motion : catalogue) {
      if (motion.id().startsWith("wrist-")) {
        assertTrue(
            motion.picture().marks().stream()
                .anyMatch(m -> m.kind() == Mark.Kind.RESIST && m.segment() == Mark.Segment.HAND),
            motion.id());
      }
    }
  }

  @Test
  void digitsAndForearmSayWhichCriteriaAreUsedInstead() {
    Set<String> rangeOnly = new TreeSet<>();
    Set<String> distal = new TreeSet<>();
    for (Motion motion : catalogue) {
      if (motion.criteria() == Criteria.RANGE_ONLY) {
        rangeOnly.add(motion.id());
      }
      if (Stream.of("FOREARM", "FINGERS", "THUMB").anyMatch(motion.region().name()::equals)) {
        distal.add(motion.id());
      }
    }
    assertEquals(distal, rangeOnly);
    assertTrue(words("guide.criteria.range-only").contains("Gravity hardly matters"));
    for (Item item : definition.items()) {
      String id = item.id().value();
      rangeOnly.forEach(motion -> assertFalse(id.equals(motion + "-reduced"), id));
    }
  }
}
