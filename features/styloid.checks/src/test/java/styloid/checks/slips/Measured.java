package styloid.checks.slips;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import styloid.model.ItemKey;
import styloid.spi.TestDefinition;
import styloid.spi.slip.Slip;

/** The corpus typed once clean and once with one slip each, counted. */
final class Measured {
  /** Counts of one class of slips. */
  static final class Count {
    int slips;
    int atOnce;
    int found;
    int changing;
    int changingAtOnce;
    int changingFound;

    /** Changing slips that are no farther from what was typed rightly than two sound trials are. */
    int hidden;

    int hiddenFound;

    /** Changing slips, not hidden, where no earlier value of the place says what is usual. */
    int first;

    int firstFound;

    /** Recall of changing slips that are neither hidden nor first. */
    double tellableRecall() {
      int all = changing - hidden - first;
      return all == 0 ? 1 : (double) (changingFound - hiddenFound - firstFound) / all;
    }

    double recall() {
      return changing == 0 ? 1 : (double) changingFound / changing;
    }
  }

  final Map<Injection.Kind, Count> counts = new EnumMap<>(Injection.Kind.class);
  int fields;
  int falseSlips;
  final Map<Slip, Integer> falseOf = new EnumMap<>(Slip.class);
  int falseRange;

  static Measured of(List<TestDefinition> tests, long firstSeed, int evaluations) {
    Measured measured = new Measured();
    Corpus corpus = new Corpus(tests);
    for (Injection.Kind kind : Injection.Kind.values()) {
      measured.counts.put(kind, new Count());
    }
    Injection.Kind[] kinds = Injection.Kind.values();
    for (int i = 0; i < evaluations; i++) {
      Corpus.Case made = corpus.make(firstSeed + i);
      Replay.Run clean = Replay.of(made, -1, null);
      measured.fields += made.steps().size();
      measured.falseSlips += count(clean, Replay.Stop.SLIP);
      clean.suspected().forEach(s -> measured.falseOf.merge(s, 1, Integer::sum));
      measured.falseRange += count(clean, Replay.Stop.RANGE);
      Injection.into(made, kinds[i % kinds.length])
          .ifPresent(slip -> measured.add(made, clean, slip));
    }
    return measured;
  }

  private static int count(Replay.Run run, Replay.Stop stop) {
    return (int) run.stops().stream().filter(s -> s == stop).count();
  }

  private void add(Corpus.Case made, Replay.Run clean, Injection slip) {
    Replay.Run wrong = Replay.of(made, slip.at(), slip.typed());
    Corpus.Step step = made.steps().get(slip.at());
    Set<Integer> before = clean.asked();
    boolean atOnce = wrong.stops().get(slip.at()) != Replay.Stop.NONE;
    Optional<Integer> later =
        wrong.asked().stream()
            .filter(i -> i > slip.at() && !before.contains(i))
            .filter(i -> made.steps().get(i).key().ref().equals(step.key().ref()))
            .filter(i -> made.steps().get(i).key().digit() == step.key().digit())
            .findAny();
    boolean changes =
        !Interpretation.of(step, clean.end(), made.before())
            .equals(Interpretation.of(step, wrong.end(), made.before()));
    Count count = counts.get(slip.kind());
    count.slips++;
    count.atOnce += atOnce ? 1 : 0;
    boolean found = atOnce || later.isPresent();
    count.found += found ? 1 : 0;
    if (changes) {
      count.changing++;
      count.changingAtOnce += atOnce ? 1 : 0;
      count.changingFound += found ? 1 : 0;
      if (Typing.within(step.typed(), slip.typed(), step.item())) {
        count.hidden++;
        count.hiddenFound += found ? 1 : 0;
      } else if (first(made, slip.at())) {
        count.first++;
        count.firstFound += found ? 1 : 0;
      }
    }
  }

  private static boolean first(Corpus.Case made, int at) {
    ItemKey key = made.steps().get(at).key();
    boolean trial =
        made.steps().subList(0, at).stream()
            .map(Corpus.Step::key)
            .anyMatch(k -> k.ref().equals(key.ref()) && place(k).equals(place(key)));
    boolean last = made.before().past().stream().anyMatch(p -> p.snapshot().entry(key).isPresent());
    return !trial && !last;
  }

  private static ItemKey place(ItemKey key) {
    return new ItemKey(key.test(), key.item(), key.side(), key.digit(), 1);
  }

  double falsePerThousand() {
    return 1000.0 * (falseSlips + falseRange) / fields;
  }

  int changing() {
    return counts.values().stream().mapToInt(c -> c.changing).sum();
  }

  double recall() {
    return (double) counts.values().stream().mapToInt(c -> c.changingFound).sum() / changing();
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    counts.forEach(
        (kind, c) ->
            text.append(
                String.format(
                    java.util.Locale.ROOT,
                    "%-8s slips %d at once %.1f%% found %.1f%% | changing %d at once %.1f%% found"
                        + " %.1f%% | hidden %d found %d, first %d found %d, rest %.1f%%%n",
                    kind.word(),
                    c.slips,
                    100.0 * c.atOnce / c.slips,
                    100.0 * c.found / c.slips,
                    c.changing,
                    100.0 * c.changingAtOnce / c.changing,
                    100.0 * c.recall(),
                    c.hidden,
                    c.hiddenFound,
                    c.first,
                    c.firstFound,
                    100.0 * c.tellableRecall())));
    return text.append(
            String.format(
                java.util.Locale.ROOT,
                "all changing %d recall %.1f%%; fields %d, false per 1000: slips %.2f %s range %.2f%n",
                changing(),
                100 * recall(),
                fields,
                1000.0 * falseSlips / fields,
                falseOf,
                1000.0 * falseRange / fields))
        .toString();
  }
}
