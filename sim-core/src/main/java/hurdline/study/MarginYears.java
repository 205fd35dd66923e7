package hurdline.study;

/**
 * What base and option earn over the same lives, on the same chance; the difference is what the option adds to the margin.
 *
 * @param base of as many lives as {@code option}
 */
record MarginYears(MoneyYears base, MoneyYears option) {
  MarginYears {
    if (base.lives() != option.lives()) {
      throw new IllegalArgumentException(
          "option has " + option.lives() + " lives; expected as many as the base, " + base.lives());
    }
  }

  int lives() {
    return base.lives();
  }
}
