package styloid.custom;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.Source;

/**
 * One value a result is calculated from, or why it is not there.
 *
 * @param number the number in the unit the formula takes it in
 * @param text code of an answer that stands for no number
 * @param live how a spreadsheet gets at it; empty where it cannot
 * @param shown the value as recorded or calculated
 * @param missing what is not recorded or absent
 * @param unavailable why there is no value though all is recorded
 * @param sources of norms and of results it comes from
 */
record Input(
    Optional<BigDecimal> number,
    Optional<String> text,
    Optional<String> live,
    Message shown,
    List<ItemKey> missing,
    Optional<Message> unavailable,
    List<Source> sources) {

  static Input missing(List<ItemKey> keys, List<Source> sources) {
    return new Input(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Message.verbatim(""),
        keys,
        Optional.empty(),
        sources);
  }

  static Input unavailable(Message why, List<Source> sources) {
    return new Input(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Message.verbatim(""),
        List.of(),
        Optional.of(why),
        sources);
  }
}
