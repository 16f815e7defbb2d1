package styloid.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The cheapest tree, counted part by part, against the textbook rule on all pairs. */
class TreeTest {
  @ParameterizedTest
  @CsvSource({"10, 3, 1", "4, 3, 1", "2, 1, 1", "3, 3, 3", "1, 3, 10", "2, 1, 5"})
  void costAndLongestChangeAreThoseOfTheTextbookTree(int body, int support, int rotation) {
    Settings settings = new Settings(new Weights(body, support, rotation));
    Tree tree = new Tree(settings);
    Random random = new Random(body * 100 + support * 10 + rotation);
    int several = 0;
    for (int round = 0; round < 3_000; round++) {
      List<Integer> needs = needs(random);
      tree.clear();
      needs.forEach(tree::add);
      int[] expected = textbook(settings, needs);
      assertEquals(expected[0], tree.cost(), needs::toString);
      assertEquals(expected[1], tree.longest(), needs::toString);
      several += needs.size() > 5 ? 1 : 0;
    }
    assertTrue(several > 1_000);
  }

  /** As a bound gives them: who minds no rotation stands alone with its body and support. */
  private static List<Integer> needs(Random random) {
    ArrayList<Integer> needs = new ArrayList<>();
    HashSet<Integer> loose = new HashSet<>();
    for (int i = random.nextInt(20); i > 0; i--) {
      int pair =
          (1 + random.nextInt(Settings.BODIES - 1)) * Settings.SUPPORTS
              + 1
              + random.nextInt(Settings.SUPPORTS - 1);
      boolean taken = needs.stream().anyMatch(n -> Settings.pair(n) == pair);
      boolean any = !taken && random.nextInt(3) == 0;
      if (any) {
        loose.add(pair);
      }
      if (any || !loose.contains(pair)) {
        int turn = any ? 0 : 1 + random.nextInt(Settings.ROTATIONS - 1);
        needs.add(pair * Settings.ROTATIONS + turn);
      }
    }
    return needs;
  }

  /** Joins the two nearest parts until all are joined; gives the cost and the longest change. */
  private static int[] textbook(Settings settings, List<Integer> needs) {
    ArrayList<List<Integer>> parts = new ArrayList<>();
    needs.forEach(need -> parts.add(new ArrayList<>(List.of(need))));
    int cost = 0;
    int longest = 0;
    while (parts.size() > 1) {
      int least = Integer.MAX_VALUE;
      int one = 0;
      int other = 0;
      for (int i = 0; i < parts.size(); i++) {
        for (int j = 0; j < i; j++) {
          int between = between(settings, parts.get(i), parts.get(j));
          if (between < least) {
            least = between;
            one = i;
            other = j;
          }
        }
      }
      cost += least;
      longest = Math.max(longest, least);
      parts.get(other).addAll(parts.remove(one));
    }
    return new int[] {cost, longest};
  }

  private static int between(Settings settings, List<Integer> part, List<Integer> other) {
    int least = Integer.MAX_VALUE;
    for (int a : part) {
      for (int b : other) {
        least = Math.min(least, settings.cost(a, b));
      }
    }
    return least;
  }
}
