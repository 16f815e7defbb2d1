package styloid.model;

import java.util.Objects;

/** The place of one result: test, result, side and digit. */
public record ResultKey(TestId test, ResultId result, Side side, Digit digit) {
  public ResultKey {
    Objects.requireNonNull(test, "test");
    Objects.requireNonNull(result, "result");
    Objects.requireNonNull(side, "side");
    Objects.requireNonNull(digit, "digit");
  }

  /** Name of the result in workbooks, such as {@code grip__r_mean_power__right}. */
  public String cellName() {
    String name = test.value() + "__r_" + result.value() + "__" + side.code();
    return (digit == Digit.NONE ? name : name + "__" + digit.code()).replace('-', '_');
  }

  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof ResultKey that
            && side == that.side
            && digit == that.digit
            && result.equals(that.result)
            && test.equals(that.test);
  }

  @Override
  public int hashCode() {
    int place = side.ordinal() * 8 + digit.ordinal();
    return (test.hashCode() * 31 + result.hashCode()) * 31 + place;
  }

  @Override
  public String toString() {
    return test + "/" + result + "/" + side.code() + "/" + digit.code();
  }
}
