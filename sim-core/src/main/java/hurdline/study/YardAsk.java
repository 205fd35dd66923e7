package hurdline.study;

import java.util.Optional;

/**
 * What is asked of a yard.
 *
 * @param crop whose yard; none for the file's first crop
 * @param overflow share of seasons in which it may overflow
 */
public record YardAsk(Optional<String> crop, double overflow) {
  public YardAsk {
    if (!(overflow > 0 && overflow < 1)) {
      throw new IllegalArgumentException("overflow is " + overflow + "; expected above 0 and below 1");
    }
  }
}
