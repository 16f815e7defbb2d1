package styloid.checks.demo;

import static styloid.model.Digit.INDEX;
import static styloid.model.Digit.LITTLE;
import static styloid.model.Digit.MIDDLE;
import static styloid.model.Digit.NONE;
import static styloid.model.Digit.RING;
import static styloid.model.Digit.THUMB;
import static styloid.model.Side.LEFT;
import static styloid.model.Side.RIGHT;
import static styloid.model.Unit.KILOGRAM_FORCE;
import static styloid.model.Unit.POUND_FORCE;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import styloid.model.Absence;
import styloid.model.Absence.Reason;
import styloid.model.Patient.Dominance;
import styloid.model.Patient.Sex;
import styloid.model.PatientRecord;
import styloid.model.Precaution.Kind;
import styloid.model.Region;
import styloid.model.TestId;
import styloid.spi.TestDefinition;

/** Every person and number here is invented; the patterns are those a hand clinic sees. */
final class DemoClinic {
  private static final String KIM = "K. Example, OT (invented)";
  private static final String ORLA = "O. Sample, PT (invented)";

  private final Map<TestId, TestDefinition> tests = new LinkedHashMap<>();

  DemoClinic(List<TestDefinition> definitions) {
    definitions.forEach(definition -> tests.put(definition.id(), definition));
  }

  List<PatientRecord> records() {
    return List.of(
        normalPair().record(),
        stiffWrist().record(),
        medianNerve().record(),
        ulnarNerve().record(),
        radialNerve().record(),
        flexorTendon().record(),
        arthriticThumb().record(),
        weakGripOfAge().record(),
        leftHander().record(),
        child().record(),
        extensorLag().record(),
        stiffElbow().record(),
        incomplete().record(),
        factsUnknown().record());
  }

  private Person person(int number, String name) {
    return new Person(tests, number, name);
  }

  private Person normalPair() {
    return person(1, "Rowan Alder")
        .born("1991-06-18", Sex.MALE, Dominance.RIGHT)
        .tall(181)
        .with("both arms sound, seen for a work fitness check")
        .visit(
            "2026-03-03",
            KIM,
            h -> {
              h.restAsFull();
              Hands.BOTH.forEach(side -> h.strongArm(side).soundArm(side).soundDigits(side));
              h.visit()
                  .force("power", RIGHT, KILOGRAM_FORCE, "54.5", "56.0", "53.0")
                  .force("power", LEFT, KILOGRAM_FORCE, "50.5", "49.0", "51.5")
                  .force("tip", RIGHT, KILOGRAM_FORCE, "8.0", "8.5", "8.0")
                  .force("tip", LEFT, KILOGRAM_FORCE, "7.5", "8.0", "7.5")
                  .force("key", RIGHT, KILOGRAM_FORCE, "12.0", "11.5", "12.0")
                  .force("key", LEFT, KILOGRAM_FORCE, "11.5", "11.5", "11.0")
                  .force("palmar", RIGHT, KILOGRAM_FORCE, "11.0", "11.5", "11.0")
                  .force("palmar", LEFT, KILOGRAM_FORCE, "10.5", "11.0", "10.5");
            });
  }

  private Person stiffWrist() {
    Person person =
        person(2, "Hazel Birch")
            .born("1967-11-02", Sex.FEMALE, Dominance.RIGHT)
            .tall(164)
            .with("stiff right wrist after fracture of the distal radius, plate fixation", RIGHT)
            .onset("2025-10-04")
            .surgery("2025-10-07")
            .limit(Kind.NO_RESISTANCE, Region.WRIST, RIGHT, NONE, "2025-10-07", "2025-12-01");
    wristVisit(person, "2025-11-17", 18, 22, 30, 41, true, "0", "0", "0");
    wristVisit(person, "2025-12-15", 30, 34, 46, 58, false, "8.5", "9.0", "9.5");
    wristVisit(person, "2026-01-26", 44, 48, 62, 70, false, "14.0", "13.5", "14.5");
    wristVisit(person, "2026-03-09", 55, 57, 74, 76, false, "18.5", "19.0", "18.0");
    return person;
  }

  private static void wristVisit(
      Person person,
      String day,
      int extension,
      int flexion,
      int supination,
      int pronation,
      boolean withheld,
      String... power) {
    person.visit(
        day,
        KIM,
        h -> {
          h.falls("wrist-extension", RIGHT, "limited", "back of the wrist")
              .falls("wrist-flexion", RIGHT, "limited", "palm side of the wrist")
              .falls("forearm-supination", RIGHT, "limited", "")
              .restAsFull();
          h.soundArm(LEFT).soundDigits(LEFT).soundDigits(RIGHT);
          h.soundArm(
              RIGHT, "wrist-extension", "wrist-flexion", "forearm-supination", "forearm-pronation");
          h.active("wrist-extension", RIGHT, extension)
              .active("wrist-flexion", RIGHT, flexion)
              .active("forearm-supination", RIGHT, supination)
              .active("forearm-pronation", RIGHT, pronation)
              .passive("wrist-extension", RIGHT, extension + 4)
              .passive("wrist-flexion", RIGHT, flexion + 3);
          h.strongArm(LEFT);
          h.visit().force("power", LEFT, KILOGRAM_FORCE, "25.5", "26.0", "24.5");
          if (withheld) {
            for (int trial = 1; trial <= 3; trial++) {
              h.visit()
                  .put(
                      "grip",
                      "power",
                      RIGHT,
                      NONE,
                      trial,
                      new Absence(Reason.PRECAUTION, "no resistance yet"));
            }
          } else {
            h.strongArm(RIGHT, "wrist-flexion", "wrist-extension");
            h.held(RIGHT, "wrist-flexion", "moderate").held(RIGHT, "wrist-extension", "moderate");
            h.visit().force("power", RIGHT, KILOGRAM_FORCE, power);
          }
        });
  }

  private Person medianNerve() {
    Person person =
        person(3, "Linden Cedar")
            .born("1984-02-27", Sex.MALE, Dominance.RIGHT)
            .with("left median nerve cut at the wrist, repaired", LEFT)
            .onset("2025-05-20")
            .surgery("2025-05-20");
    for (int visit = 0; visit < 2; visit++) {
      boolean later = visit == 1;
      person.visit(
          later ? "2026-02-11" : "2025-10-22",
          ORLA,
          h -> {
            h.falls("thumb-palmar-abduction", LEFT, later ? "limited" : "unable", "")
                .falls("thumb-opposition", LEFT, "limited", "")
                .restAsFull();
            h.soundArm(RIGHT).soundArm(LEFT).soundDigits(RIGHT).soundDigits(LEFT, THUMB);
            h.strongArm(RIGHT).strongArm(LEFT, "thumb-palmar-abduction", "thumb-opposition");
            if (later) {
              h.held(LEFT, "thumb-palmar-abduction", "gave-way")
                  .held(LEFT, "thumb-opposition", "slight");
            } else {
              h.still(LEFT, "thumb-palmar-abduction", false, true)
                  .weakDigit(LEFT, "thumb-opposition", "less-than-half");
            }
            h.visit()
                .force("power", RIGHT, KILOGRAM_FORCE, "50.0", "51.5", "49.5")
                .force("power", LEFT, KILOGRAM_FORCE, later ? "38.0" : "29.5", "37.0", "36.0")
                .force("tip", RIGHT, KILOGRAM_FORCE, "8.0", "8.0", "7.5")
                .force("tip", LEFT, KILOGRAM_FORCE, later ? "4.5" : "2.0", "3.0", "2.5")
                .force("key", RIGHT, KILOGRAM_FORCE, "11.0", "11.5", "11.0")
                .force("key", LEFT, KILOGRAM_FORCE, "9.0", "8.5", "8.5");
          });
    }
    return person;
  }

  private Person ulnarNerve() {
    Person person =
        person(4, "Juniper Dogwood")
            .born("1973-08-14", Sex.FEMALE, Dominance.RIGHT)
            .with("right ulnar nerve compressed at the elbow", RIGHT)
            .onset("2025-09-01");
    for (int visit = 0; visit < 2; visit++) {
      boolean later = visit == 1;
      person.visit(
          later ? "2026-03-02" : "2025-12-08",
          KIM,
          h -> {
            h.falls("finger-adduction", RIGHT, "limited", "").restAsFull();
            h.soundArm(RIGHT).soundArm(LEFT).soundDigits(LEFT).soundDigits(RIGHT, RING, LITTLE);
            h.finger(RIGHT, RING, 92, 10, 96, -18, 60, 0)
                .finger(RIGHT, LITTLE, 90, 12, 92, -26, 58, -4);
            h.passiveFinger(RIGHT, RING, 100, 0, 68, 0).passiveFinger(RIGHT, LITTLE, 98, -4, 66, 0);
            h.strongArm(LEFT).strongArm(RIGHT, "finger-adduction");
            h.held(RIGHT, "finger-adduction", later ? "slight" : "gave-way");
            h.visit()
                .force("power", RIGHT, POUND_FORCE, later ? "52" : "46", "50", "49")
                .force("power", LEFT, POUND_FORCE, "61", "63", "60")
                .force("key", RIGHT, POUND_FORCE, later ? "11.5" : "9.0", "10.0", "9.5")
                .force("key", LEFT, POUND_FORCE, "16.5", "16.0", "16.5");
          });
    }
    return person;
  }

  private Person radialNerve() {
    Person person =
        person(5, "Aspen Elm")
            .born("1998-04-09", Sex.MALE, Dominance.RIGHT)
            .with("left radial nerve palsy after fracture of the humerus", LEFT)
            .onset("2025-08-30");
    radialVisit(person, "2025-10-01", 0);
    radialVisit(person, "2025-12-10", 1);
    radialVisit(person, "2026-03-04", 2);
    return person;
  }

  private static void radialVisit(Person person, String day, int stage) {
    person.visit(
        day,
        ORLA,
        h -> {
          h.falls("wrist-extension", LEFT, stage == 0 ? "unable" : "limited", "")
              .falls("mp-extension", LEFT, stage == 0 ? "unable" : "limited", "")
              .restAsFull();
          h.soundArm(RIGHT).soundArm(LEFT, "wrist-extension").soundDigits(RIGHT);
          h.active("wrist-extension", LEFT, List.of(-40, 5, 45).get(stage))
              .passive("wrist-extension", LEFT, 72);
          h.strongArm(RIGHT).strongArm(LEFT, "wrist-extension", "mp-extension");
          if (stage == 0) {
            h.still(LEFT, "wrist-extension", true, false).still(LEFT, "mp-extension", false, false);
          } else if (stage == 1) {
            h.weak(LEFT, "wrist-extension", "less-than-half", "full")
                .still(LEFT, "mp-extension", false, true);
          } else {
            h.held(LEFT, "wrist-extension", "slight")
                .weakDigit(LEFT, "mp-extension", "more-than-half");
          }
          h.visit()
              .force("power", RIGHT, KILOGRAM_FORCE, "52.0", "54.0", "53.5")
              .force(
                  "power",
                  LEFT,
                  KILOGRAM_FORCE,
                  List.of("12.0", "22.5", "38.0").get(stage),
                  List.of("12.5", "23.0", "39.5").get(stage),
                  List.of("11.5", "22.0", "38.5").get(stage));
        });
  }

  private Person flexorTendon() {
    Person person =
        person(6, "Sorrel Fir")
            .born("1994-12-21", Sex.MALE, Dominance.RIGHT)
            .with("flexor tendons of right middle and ring finger repaired in zone II", RIGHT)
            .onset("2025-12-12")
            .surgery("2025-12-13")
            .limit(Kind.NO_RESISTANCE, Region.FINGERS, RIGHT, NONE, "2025-12-13", "2026-03-07")
            .limit(Kind.NO_GRIP_OR_PINCH, Region.HAND, RIGHT, NONE, "2025-12-13", "2026-03-07")
            .limit(Kind.NO_PASSIVE_MOTION, Region.FINGERS, RIGHT, NONE, "2025-12-13", "2026-01-24");
    tendonVisit(person, "2026-01-14", 62, -20, 48, -12, 22, -6, false);
    tendonVisit(person, "2026-02-11", 74, -12, 66, -12, 34, -5, false);
    tendonVisit(person, "2026-03-11", 82, -4, 84, -8, 45, -4, true);
    return person;
  }

  private static void tendonVisit(
      Person person,
      String day,
      int mp,
      int mpExt,
      int pip,
      int pipExt,
      int dip,
      int dipExt,
      boolean grips) {
    person.visit(
        day,
        KIM,
        h -> {
          h.falls("full-fist", RIGHT, "limited", "")
              .falls("pip-flexion", RIGHT, "limited", "")
              .falls("dip-flexion", RIGHT, "limited", "")
              .restAsFull();
          h.soundDigits(LEFT).soundDigits(RIGHT, MIDDLE, RING);
          h.finger(RIGHT, MIDDLE, mp, mpExt, pip, pipExt, dip, dipExt)
              .finger(RIGHT, RING, mp - 2, mpExt, pip - 6, pipExt - 2, dip - 4, dipExt);
          h.visit().force("power", LEFT, KILOGRAM_FORCE, "47.5", "49.0", "48.0");
          if (grips) {
            h.visit().force("power", RIGHT, KILOGRAM_FORCE, "16.0", "17.5", "17.0");
          } else {
            for (int trial = 1; trial <= 3; trial++) {
              h.visit()
                  .put(
                      "grip",
                      "power",
                      RIGHT,
                      NONE,
                      trial,
                      new Absence(Reason.PRECAUTION, "tendon repair"));
            }
          }
        });
  }

  private Person arthriticThumb() {
    Person person =
        person(7, "Ivy Gorse")
            .born("1958-09-30", Sex.FEMALE, Dominance.LEFT)
            .tall(159)
            .with("painful arthritis at the base of the left thumb", LEFT)
            .onset("2024-01-01");
    for (int visit = 0; visit < 2; visit++) {
      boolean later = visit == 1;
      person.visit(
          later ? "2026-02-24" : "2025-11-25",
          ORLA,
          h -> {
            h.falls("thumb-radial-abduction", LEFT, "limited", "base of the thumb")
                .falls("thumb-opposition", LEFT, "limited", "base of the thumb")
                .restAsFull();
            h.soundArm(LEFT).soundArm(RIGHT).soundDigits(RIGHT).soundDigits(LEFT, THUMB);
            h.visit()
                .degrees("thumb-radial-abduction-active", LEFT, THUMB, later ? 34 : 28)
                .degrees("thumb-palmar-abduction-active", LEFT, THUMB, later ? 36 : 30)
                .choice("goniometry", "kapandji", LEFT, later ? "7" : "6")
                .choice("goniometry", "kapandji", RIGHT, "9")
                .force("power", LEFT, KILOGRAM_FORCE, later ? "17.5" : "14.0", "16.5", "16.0")
                .force("power", RIGHT, KILOGRAM_FORCE, "21.0", "20.5", "21.5")
                .force("key", LEFT, KILOGRAM_FORCE, later ? "4.0" : "3.0", "3.5", "3.0")
                .force("key", RIGHT, KILOGRAM_FORCE, "5.5", "6.0", "5.5")
                .force("tip", LEFT, KILOGRAM_FORCE, later ? "2.5" : "2.0", "2.0", "2.0")
                .force("tip", RIGHT, KILOGRAM_FORCE, "4.0", "4.0", "4.5");
          });
    }
    return person;
  }

  private Person weakGripOfAge() {
    return person(8, "Myrtle Hawthorn")
        .born("1943-05-05", Sex.FEMALE, Dominance.RIGHT)
        .tall(155)
        .with("weak grip of both hands, difficulty with jars")
        .visit(
            "2026-03-10",
            KIM,
            h -> {
              h.restAsFull();
              Hands.BOTH.forEach(side -> h.soundArm(side).soundDigits(side));
              Hands.BOTH.forEach(
                  side -> Hands.GRADED.forEach(motion -> h.held(side, motion, "moderate")));
              h.visit()
                  .force("power", RIGHT, KILOGRAM_FORCE, "12.5", "13.0", "12.0")
                  .force("power", LEFT, KILOGRAM_FORCE, "11.0", "10.5", "11.5")
                  .force("key", RIGHT, KILOGRAM_FORCE, "3.5", "3.5", "4.0")
                  .force("key", LEFT, KILOGRAM_FORCE, "3.0", "3.5", "3.0");
            });
  }

  private Person leftHander() {
    return person(9, "Bryony Juniper")
        .born("2000-10-12", Sex.FEMALE, Dominance.LEFT)
        .with("both arms sound, left-handed, seen before a marathon of typing")
        .visit(
            "2026-01-19",
            ORLA,
            h -> {
              h.restAsFull();
              Hands.BOTH.forEach(side -> h.strongArm(side).soundArm(side).soundDigits(side));
              h.visit()
                  .force("power", LEFT, POUND_FORCE, "78", "76", "77")
                  .force("power", RIGHT, POUND_FORCE, "75", "77", "74")
                  .force("tip", LEFT, POUND_FORCE, "12.5", "12.0", "12.5")
                  .force("tip", RIGHT, POUND_FORCE, "12.0", "11.5", "12.0")
                  .force("key", LEFT, POUND_FORCE, "17.5", "17.0", "17.5")
                  .force("key", RIGHT, POUND_FORCE, "17.0", "17.5", "17.0");
            });
  }

  private Person child() {
    return person(10, "Robin Larch")
        .born("2016-07-23", Sex.MALE, Dominance.RIGHT)
        .tall(136)
        .with("left elbow stiff after fracture above the elbow, cast removed", LEFT)
        .onset("2026-01-03")
        .visit(
            "2026-02-16",
            KIM,
            h -> {
              h.falls("elbow-extension", LEFT, "limited", "")
                  .falls("elbow-flexion", LEFT, "limited", "front of the elbow")
                  .restAsFull();
              h.soundArm(RIGHT).soundArm(LEFT, "elbow-extension", "elbow-flexion");
              h.active("elbow-extension", LEFT, -25)
                  .active("elbow-flexion", LEFT, 108)
                  .passive("elbow-extension", LEFT, -20)
                  .passive("elbow-flexion", LEFT, 115);
              h.visit()
                  .force("power", RIGHT, KILOGRAM_FORCE, "14.0", "14.5", "14.0")
                  .force("power", LEFT, KILOGRAM_FORCE, "10.0", "10.5", "10.0");
            });
  }

  private Person extensorLag() {
    Person person =
        person(11, "Heath Maple")
            .born("1980-03-16", Sex.MALE, Dominance.RIGHT)
            .with("extensor tendon of right index finger repaired over the middle joint", RIGHT)
            .onset("2025-11-05")
            .surgery("2025-11-06")
            .limit(Kind.NO_RESISTANCE, Region.FINGERS, RIGHT, INDEX, "2025-11-06", "2026-01-29");
    for (int visit = 0; visit < 2; visit++) {
      boolean later = visit == 1;
      person.visit(
          later ? "2026-02-26" : "2026-01-08",
          ORLA,
          h -> {
            h.falls("pip-extension", RIGHT, "limited", "").restAsFull();
            h.soundDigits(LEFT).soundDigits(RIGHT, INDEX);
            h.finger(RIGHT, INDEX, 86, 0, later ? 94 : 80, later ? -12 : -30, 62, 0);
            h.passiveFinger(RIGHT, INDEX, later ? 98 : 88, -2, 66, 0);
          });
    }
    return person;
  }

  private Person stiffElbow() {
    Person person =
        person(12, "Laurel Oak")
            .born("1986-01-29", Sex.FEMALE, Dominance.RIGHT)
            .with("right elbow stiff after fracture of the radial head", RIGHT)
            .onset("2025-10-28");
    for (int visit = 0; visit < 2; visit++) {
      boolean later = visit == 1;
      person.visit(
          later ? "2026-02-02" : "2025-12-01",
          KIM,
          h -> {
            h.falls("elbow-extension", RIGHT, "limited", "outer side of the elbow")
                .falls("forearm-supination", RIGHT, "limited", "")
                .restAsFull();
            h.soundArm(LEFT)
                .soundArm(RIGHT, "elbow-extension", "elbow-flexion", "forearm-supination");
            h.active("elbow-extension", RIGHT, later ? -15 : -35)
                .active("elbow-flexion", RIGHT, later ? 130 : 112)
                .active("forearm-supination", RIGHT, later ? 68 : 45)
                .passive("elbow-extension", RIGHT, later ? -12 : -32);
            h.strongArm(LEFT);
            h.held(RIGHT, "elbow-extension", "moderate")
                .held(RIGHT, "elbow-flexion-palm-up", "moderate");
            h.visit()
                .force("power", RIGHT, KILOGRAM_FORCE, later ? "27.0" : "21.5", "26.0", "25.5")
                .force("power", LEFT, KILOGRAM_FORCE, "29.5", "30.0", "29.0");
          });
    }
    return person;
  }

  private Person incomplete() {
    return person(13, "Moss Poplar")
        .born("1955-02-03", Sex.MALE, Dominance.RIGHT)
        .with("weak left arm of the pattern of the seventh cervical root", LEFT)
        .onset("2026-01-15")
        .visit(
            "2026-02-18",
            ORLA,
            h -> {
              h.falls("elbow-extension", LEFT, "limited", "").restAsFull();
              h.strong(RIGHT, "elbow-extension").strong(RIGHT, "wrist-flexion");
              h.weak(LEFT, "elbow-extension", "more-than-half", "full")
                  .held(LEFT, "wrist-flexion", "slight");
              h.visit()
                  .absent("grading", "mp-extension-range", LEFT, Reason.REFUSED, "too tired")
                  .force("power", RIGHT, KILOGRAM_FORCE, "36.0", "37.5")
                  .put(
                      "grip",
                      "power",
                      RIGHT,
                      NONE,
                      3,
                      new Absence(Reason.EQUIPMENT, "needle stuck"))
                  .force("power", LEFT, KILOGRAM_FORCE, "28.0");
            });
  }

  private Person factsUnknown() {
    return person(14, "Wren Spruce")
        .with("referred without birth date or sex on the slip")
        .visit(
            "2026-03-12",
            KIM,
            h -> {
              h.restAsFull();
              h.visit()
                  .force("power", RIGHT, KILOGRAM_FORCE, "31.0", "30.5", "31.5")
                  .force("power", LEFT, KILOGRAM_FORCE, "29.0", "29.5", "28.5");
            });
  }
}
