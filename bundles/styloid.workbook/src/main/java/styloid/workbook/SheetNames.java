package styloid.workbook;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** Gives worksheets names every spreadsheet takes: at most 31 characters, each once. */
final class SheetNames {
  private static final int LONGEST = 31;
  private final Set<String> taken = new HashSet<>(Set.of("history"));

  String of(String title) {
    String clean = title.replaceAll("[\\\\/?*\\[\\]:\\p{Cntrl}\\p{Cs}\uFFFE\uFFFF]+", " ").strip();
    String bare = clean.replaceAll("^'+|'+$", "");
    String base = bare.isEmpty() ? "-" : bare;
    String name = cut(base, LONGEST);
    for (int n = 2; !taken.add(name.toLowerCase(Locale.ROOT)); n++) {
      String ending = " " + n;
      name = cut(base, LONGEST - ending.length()) + ending;
    }
    return name;
  }

  private static String cut(String text, int length) {
    if (text.length() <= length) {
      return text;
    }
    int end = Character.isHighSurrogate(text.charAt(length - 1)) ? length - 1 : length;
    return text.substring(0, end).strip().replaceAll("'+$", "");
  }
}
