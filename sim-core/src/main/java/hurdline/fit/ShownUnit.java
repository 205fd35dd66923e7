package hurdline.fit;

/**
 * The unit in which an amount is written.
 *
 * @param inSi how much of the engine's unit one of it is
 */
record ShownUnit(String word, double inSi) {
  private static final double MINUTE_S = 60;
  private static final double HOUR_S = 3600;
  private static final double TONNE_KG = 1000;

  static ShownUnit hours() {
    return new ShownUnit("h", HOUR_S);
  }

  /** Minutes up to two hours, hours beyond. */
  static ShownUnit ofRepair(double meanS) {
    return meanS < 2 * HOUR_S ? new ShownUnit("min", MINUTE_S) : hours();
  }

  static ShownUnit tonnes() {
    return new ShownUnit("t", TONNE_KG);
  }

  static ShownUnit kilograms() {
    return new ShownUnit("kg", 1);
  }

  static ShownUnit percent() {
    return new ShownUnit("%", 0.01);
  }

  double of(double si) {
    return si / inSi;
  }

  String text(double si) {
    return (LawText.digits(of(si)) + " " + word).strip();
  }
}
