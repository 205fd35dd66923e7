package hurdline.plant.yaml;

/** Which values of a quantity make sense. */
enum Range {
  ANY,
  NOT_BELOW_0,
  ABOVE_0,
  /** A share from none to all. */
  SHARE,
  /** A share above none, up to all. */
  SOME_SHARE,
  /** A share below all. */
  PART;

  /** Why the value is outside; null if it is not. */
  String fault(double value) {
    if (!(Math.abs(value) <= Double.MAX_VALUE)) {
      return "is too large a number";
    }
    return switch (this) {
      case ANY -> null;
      case NOT_BELOW_0 -> below0(value);
      case ABOVE_0 -> value == 0 ? "is 0, which cannot be" : below0(value);
      case SHARE -> above1(value);
      case SOME_SHARE -> value == 0 ? "is 0 %, which cannot be" : above1(value);
      case PART -> value >= 1 ? "is 100 % or more, which leaves nothing" : below0(value);
    };
  }

  private static String below0(double value) {
    return value >= 0 ? null : "is below 0, which cannot be";
  }

  private static String above1(double value) {
    return value > 1 ? "is over 100 %" : below0(value);
  }

  /** How the range reads after "a mass such as ...". */
  String phrase() {
    return switch (this) {
      case ANY -> "";
      case NOT_BELOW_0 -> ", 0 or more";
      case ABOVE_0 -> ", above 0";
      case SHARE -> ", from 0 % to 100 %";
      case SOME_SHARE -> ", above 0 % and at most 100 %";
      case PART -> ", from 0 % to below 100 %";
    };
  }
}
