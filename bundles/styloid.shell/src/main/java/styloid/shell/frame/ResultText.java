package styloid.shell.frame;

import java.util.ArrayList;
import java.util.List;
import styloid.model.Result;
import styloid.model.ResultKey;
import styloid.model.Source;
import styloid.spi.ResultDefinition;
import styloid.spi.TestDefinition;
import styloid.spi.Texts;

/** The words of a result: its value, or why there is none, and how it came about. */
public final class ResultText {
  private ResultText() {}

  public static String name(ResultKey key, Texts texts) {
    return texts.label(key.test().value(), "result." + key.result());
  }

  public static String value(Result result, TestDefinition test, Texts texts) {
    ResultKey key = result.key();
    int decimals = test.result(key).map(ResultDefinition::decimals).orElse(1);
    return result
        .outcome()
        .match(
            value ->
                value.match(
                    q -> texts.quantity(q, decimals),
                    c ->
                        texts
                            .find(key.test().value(), "choice." + key.result() + "." + c.code())
                            .orElse(c.code()),
                    t -> t.text(),
                    a -> texts.word(a.reason())),
            incomplete -> texts.text(incomplete.reason()),
            unavailable -> texts.text(unavailable.reason()));
  }

  /** Steps in order, then each source with its status. */
  public static List<String> why(Result result, Texts texts) {
    ArrayList<String> lines = new ArrayList<>();
    result.why().steps().forEach(step -> lines.add(texts.text(step)));
    for (Source source : result.why().sources()) {
      String status = texts.word(source.status());
      String shown =
          source.citation().equals(Source.NO_SOURCE)
              ? status
              : Shell.say(texts, "rail.source", source.citation(), status);
      lines.add(shown);
    }
    return lines;
  }
}
