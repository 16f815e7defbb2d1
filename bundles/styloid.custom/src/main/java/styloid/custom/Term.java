package styloid.custom;

import java.util.List;
import java.util.function.Consumer;

/** A part of a formula; {@code at} is its first character, counted from 0. */
sealed interface Term {
  int at();

  /** A number, digits as written. */
  record Num(int at, String digits) implements Term {}

  /** Text in double quotes, such as the code of a choice. */
  record Str(int at, String text) implements Term {}

  /** TRUE or FALSE. */
  record Truth(int at, boolean value) implements Term {}

  /** The name of an item, a result or a figure of a norm. */
  record Name(int at, String name) implements Term {}

  /** A function of the list. */
  record Call(int at, String function, List<Term> args) implements Term {
    public Call {
      args = List.copyOf(args);
    }
  }

  /** Two terms joined by an operator. */
  record Pair(int at, String operator, Term left, Term right) implements Term {}

  /** A sign before a term, or a percent sign behind it. */
  record Sign(int at, String sign, Term of) implements Term {}

  /** Tells every name, in the order written. */
  default void names(Consumer<Name> to) {
    if (this instanceof Name name) {
      to.accept(name);
    } else if (this instanceof Call call) {
      call.args().forEach(arg -> arg.names(to));
    } else if (this instanceof Pair pair) {
      pair.left().names(to);
      pair.right().names(to);
    } else if (this instanceof Sign sign) {
      sign.of().names(to);
    }
  }
}
