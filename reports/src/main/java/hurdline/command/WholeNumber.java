package hurdline.command;

import hurdline.unit.Amount;
import java.util.OptionalLong;
import java.util.function.LongFunction;
import picocli.CommandLine;

/**
 * Reads the whole numbers of flags, in the words of this program.
 *
 * @param <N> the kind of number that the flag keeps
 */
final class WholeNumber<N> implements CommandLine.ITypeConverter<N> {
  private final long most;
  private final LongFunction<N> made;

  private WholeNumber(long most, LongFunction<N> made) {
    this.most = most;
    this.made = made;
  }

  static WholeNumber<Integer> small() {
    return new WholeNumber<>(Integer.MAX_VALUE, number -> (int) number);
  }

  static WholeNumber<Long> large() {
    return new WholeNumber<>(Long.MAX_VALUE, number -> number);
  }

  @Override
  public N convert(String text) {
    OptionalLong number = Amount.whole(text.strip());
    if (number.isEmpty()) {
      throw new CallException(
          "\"" + text + "\" is no whole number; expected digits only, such as 40");
    }
    if (!(Math.abs(number.getAsLong()) <= most)) {
      throw new CallException("\"" + text + "\" is too large; expected at most " + most);
    }
    return made.apply(number.getAsLong());
  }
}
