package hurdline.study.option;

/**
 * What base and option earn over the same lives, on the same chance; the difference is what the
 * option adds to the margin.
 *
 * @param base of as many lives as {@code option}
 */
public record AnnualMarginGain(MoneyYears base, MoneyYears option) {
  public AnnualMarginGain {
    if (base.lives() != option.lives()) {
      throw new IllegalArgumentException(
          "option has " + option.lives() + " lives; expected as many as the base, " + base.lives());
    }
  }

  int lives() {
    return base.lives();
  }
}
