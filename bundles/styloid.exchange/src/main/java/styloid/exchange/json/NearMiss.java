package styloid.exchange.json;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the word that was probably meant. */
public final class NearMiss {
  private static final int LONGEST = 40;

  private NearMiss() {}

  /** The known word nearest to the written one, if near enough to be a slip. */
  public static Optional<String> of(String written, Collection<String> known) {
    if (written.length() > LONGEST) {
      return Optional.empty();
    }
    String nearest = null;
    int least = written.length() < 4 ? 2 : 3;
    for (String word : known) {
      int distance = distance(plain(written), plain(word));
      if (distance < least) {
        least = distance;
        nearest = word;
      }
    }
    return Optional.ofNullable(nearest);
  }

  /** Ending of a message: a guess if there is one, else all that is known. */
  public static String hint(String written, Collection<String> known) {
    return of(written, known)
        .map(word -> "did you mean \"" + word + "\"?")
        .orElse("known here: " + String.join(", ", known));
  }

  private static String plain(String word) {
    return word.toLowerCase(Locale.ROOT).replace('_', '-').replace(" ", "");
  }

  /** Letters to insert, drop or change to turn one word into the other. */
  private static int distance(String from, String to) {
    int[] row = new int[to.length() + 1];
    for (int j = 0; j < row.length; j++) {
      row[j] = j;
    }
    for (int i = 1; i <= from.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j < row.length; j++) {
        int change = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[to.length()];
  }
}
