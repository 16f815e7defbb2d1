package styloid.custom;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.TreeSet;
import styloid.exchange.json.Decoders;
import styloid.exchange.json.Node;
import styloid.exchange.json.Problems;
import styloid.exchange.json.Where;
import styloid.spi.Labels;

/**
 * The words of a declared test while it is read: each a text in English, or an object with a text a
 * language, of which English is one. Every text must be there in every language of the file.
 */
final class Words {
  private static final int LONGEST = 1000;
  private static final Map<String, String> OWN = own();

  private final Map<String, Map<String, String>> byKey = new LinkedHashMap<>();
  private final Map<String, Where> places = new LinkedHashMap<>();

  /** Takes the words of a key; returns the English ones, or null with a problem. */
  String take(String key, Node node, Problems problems) {
    TreeMap<String, String> texts = new TreeMap<>();
    if (node instanceof Node.Str text) {
      texts.put("en", text.text());
    } else if (node instanceof Node.Obj object) {
      object
          .members()
          .forEach((language, each) -> texts.put(language, Decoders.text(each, problems)));
    } else {
      return Decoders.wrong(node, "text, or an object with a text for each language", problems);
    }
    for (Map.Entry<String, String> one : texts.entrySet()) {
      if (!one.getKey().matches("[a-z]{2,3}")) {
        problems.add(node.where(), "languages are codes such as \"en\" or \"de\"");
        return null;
      }
      String text = one.getValue();
      if (text != null && (text.isBlank() || text.length() > LONGEST)) {
        problems.add(node.where(), "words must be 1 to " + LONGEST + " characters");
        return null;
      }
    }
    if (!texts.containsKey("en")) {
      problems.add(node.where(), "the words in English (\"en\") are missing");
      return null;
    }
    if (byKey.put(key, texts) == null) {
      places.put(key, node.where());
    }
    return texts.get("en");
  }

  boolean has(String key) {
    return byKey.containsKey(key);
  }

  /** Uses the words of one key, if it has any, for another one too. */
  void copy(String from, String to) {
    if (byKey.containsKey(from)) {
      byKey.put(to, byKey.get(from));
      places.put(to, places.get(from));
    }
  }

  /** All words with those every declared test shares. */
  Labels labels(Problems problems) {
    TreeSet<String> languages = new TreeSet<>();
    byKey.values().forEach(texts -> languages.addAll(texts.keySet()));
    TreeMap<String, Map<String, String>> all = new TreeMap<>();
    languages.forEach(language -> all.put(language, new TreeMap<>(OWN)));
    byKey.forEach(
        (key, texts) -> {
          for (String language : languages) {
            String text = texts.get(language);
            if (text == null) {
              problems.add(
                  places.get(key),
                  "the words in \"" + language + "\" are missing; other words have them");
            } else {
              all.get(language).put(key, text);
            }
          }
        });
    return new Labels(all);
  }

  private static Map<String, String> own() {
    Properties read = new Properties();
    try (InputStream in = Words.class.getResourceAsStream("messages.properties");
        InputStreamReader text = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      read.load(text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    TreeMap<String, String> words = new TreeMap<>();
    read.forEach((key, text) -> words.put((String) key, (String) text));
    return Map.copyOf(words);
  }
}
