package styloid.checks.slips;

import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.Patient;
import styloid.model.Side;
import styloid.model.Unit;

/**
 * What one made-up person's arms can do at each visit, without the error of measuring. Amounts are
 * in the item's first unit.
 */
final class Limb {
  private final PublishedNorms norms;
  private final Patient patient;
  private final int age;
  private final Random random;
  private final double strong;
  private final Map<String, Course> courses = new HashMap<>();

  /** One place over the visits: what is sound for it, and how much was lost and came back. */
  private record Course(PublishedNorms.Norm norm, double own, double lost, double regained) {
    double at(int visit, int visits) {
      double back = visits <= 1 ? 0 : regained * visit / (visits - 1);
      return own - lost * (1 - back);
    }
  }

  Limb(PublishedNorms norms, Patient patient, int age, Random random) {
    this.norms = norms;
    this.patient = patient;
    this.age = age;
    this.random = random;
    this.strong = random.nextGaussian();
  }

  /** The norm the place is judged by. */
  PublishedNorms.Norm norm(Item item, ItemKey key) {
    return course(item, key).norm();
  }

  /** What is there at a visit, counted from 0. */
  double at(Item item, ItemKey key, int visit, int visits) {
    return course(item, key).at(visit, visits);
  }

  private Course course(Item item, ItemKey key) {
    String id = item.id().value();
    if (id.endsWith("-passive")) {
      String active = id.replace("-passive", "-active");
      Course moved = courses.computeIfAbsent(place(active, key), p -> make(item, active, key));
      return courses.computeIfAbsent(place(id, key), p -> passive(moved));
    }
    return courses.computeIfAbsent(place(id, key), p -> make(item, id, key));
  }

  private static String place(String id, ItemKey key) {
    return id + "/" + key.side() + "/" + key.digit();
  }

  /** Passively a joint goes as far, and some of what is lost actively is there passively. */
  private Course passive(Course active) {
    double lag = random.nextInt(3) == 0 ? active.lost() * random.nextDouble() : 0;
    double more = Math.abs(random.nextGaussian()) * 3;
    return new Course(active.norm(), active.own() + more, active.lost() - lag, active.regained());
  }

  private Course make(Item item, String id, ItemKey key) {
    boolean involved = patient.involved().contains(key.side());
    PublishedNorms.Norm norm = sound(item, id, key.side());
    Unit.Dimension what = ((ItemKind.Number) item.kind()).unit().dimension();
    double own = norm.mean() + Typing.between(norm.sd(), item) * random.nextGaussian();
    double lost = 0;
    if (what == Unit.Dimension.FORCE) {
      own = Math.max(0.25 * norm.mean(), norm.mean() + norm.sd() * strong);
      own *= 1 + 0.06 * random.nextGaussian();
      lost = involved ? own * (0.1 + 0.6 * random.nextDouble()) : 0;
    } else if (what == Unit.Dimension.ANGLE && involved && random.nextInt(2) == 0) {
      lost = 5 + random.nextDouble() * Math.max(20, 0.5 * Math.abs(norm.mean()));
    } else if (id.equals("fingertip-to-crease")) {
      own = 0;
      lost = involved && random.nextBoolean() ? -(0.5 + 4 * random.nextDouble()) : 0;
    }
    return new Course(norm, own, lost, random.nextDouble() * 0.8);
  }

  private PublishedNorms.Norm sound(Item item, String id, Side side) {
    ItemKind.Number kind = (ItemKind.Number) item.kind();
    String motion = id.replace("-active", "");
    if (norms.hasMotion(motion)) {
      return norms.motion(motion);
    } else if (kind.unit().dimension() == Unit.Dimension.FORCE) {
      return force(id, side);
    }
    // No table holds it: the middle of what its definition calls likely.
    double low = kind.likelyMin().doubleValue();
    double high = kind.likelyMax().doubleValue();
    return new PublishedNorms.Norm((low + high) / 2, (high - low) / 8);
  }

  /** The handle's other positions give less; shares assumed. */
  private PublishedNorms.Norm force(String id, Side side) {
    Patient.Sex sex = patient.sex().orElseThrow();
    String measure = id.equals("tip") || id.equals("key") || id.equals("palmar") ? id : "power";
    PublishedNorms.Norm norm = norms.force(measure, sex, age, side);
    double share =
        switch (id) {
          case "position-1" -> 0.75;
          case "position-3" -> 0.95;
          case "position-4" -> 0.85;
          case "position-5" -> 0.75;
          case "rapid-exchange" -> 0.85;
          default -> 1;
        };
    return new PublishedNorms.Norm(norm.mean() * share, norm.sd() * share);
  }
}
