package styloid.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LimbPartTest {
  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          shoulder, none,   ,    shoulder
          wrist,    none,   ,    wrist
          hand,     index,  ,    hand
          limb,     none,   ,    limb
          fingers,  index,  pip, index-pip
          fingers,  little, cmc, hand
          fingers,  ring,   ,    ring-mp ring-pip ring-dip
          fingers,  none,   dip, index-dip middle-dip ring-dip little-dip
          thumb,    none,   mp,  thumb-mp
          thumb,    thumb,  cmc, thumb-cmc
          thumb,    none,   ,    thumb-cmc thumb-mp thumb-ip
          """)
  void whatIsSaidDecidesTheParts(String region, String digit, String joint, String parts) {
    Set<LimbPart> found =
        LimbPart.of(
            Codes.parse(Region.class, region),
            Codes.parse(Digit.class, digit),
            Optional.ofNullable(joint).map(j -> Codes.parse(DigitJoint.class, j)));
    assertEquals(
        parts, EnumSet.copyOf(found).stream().map(LimbPart::code).collect(Collectors.joining(" ")));
  }

  @Test
  void everyPartIsFoundByWhatItIs() {
    for (LimbPart part : LimbPart.values()) {
      assertEquals(Set.of(part), LimbPart.of(part.region(), part.digit(), part.joint()));
    }
  }

  @Test
  void itemKeepsItsJointWhateverElseIsSet() {
    Item item =
        Item.bothSides("one", new ItemKind.Words(9), Demand.NONE)
            .about(Optional.of(DigitJoint.PIP))
            .withDigits(Item.FINGERS)
            .withTrials(2)
            .askedWhen(Condition.always())
            .asOptional();
    assertEquals(Optional.of(DigitJoint.PIP), item.joint());
    assertThrows(NullPointerException.class, () -> item.about(null));
  }
}
