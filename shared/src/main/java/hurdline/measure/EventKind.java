package hurdline.measure;

/**
 * What a trace can say of an instant: the column {@code what} of {@code trace.csv}. Beside each
 * stands what the amount in that row is.
 */
public enum EventKind {
  /** A truck sets out for the field; bales that it is to fetch. */
  TRIP_STARTS("trip starts"),

  /** A load has come; its bales. The same for the four that follow. */
  AT_THE_GATE("at the gate"),
  TURNED_AWAY("turned away"),
  REJECTED("rejected"),
  WEIGHED_IN("weighed in"),
  UNLOADED("unloaded"),

  /** It is weighed out, where it is, and gone from the gate; 1. */
  LEAVES_GATE("leaves the gate"),

  /** A load that was kept apart may be fed from now on, or has failed its test; its bales. */
  RELEASED("released"),
  FAILED("failed its test"),

  /** A truck is back at the field, or a load gone; 1. */
  TRIP_ENDS("trip ends"),

  /** A bale leaves its place; 1. The same where it comes back. */
  LEAVES_FOR_TABLE("bale leaves for the table"),
  PUT_BACK("bale put back"),

  /** A lift ends; its bales. */
  SET_ON_TABLE("bales set on the table"),

  /** A bin is full, or at a level that starts or stops what draws from it; kg in it. */
  LEVEL_REACHED("level reached"),

  /** Packages of the product that the machine has filled so far. */
  PACKAGE_FULL("package full"),

  /** A truck takes packages of the product out of its store; how many. */
  PICKED_UP("picked up"),

  /** Orders of the product that are met so far. */
  ORDER_MET("order met"),

  /** A machine goes into one of its stops; no amount. The same where that stop is over. */
  STOPS("stops"),
  IS_UP_AGAIN("is up again"),

  /** No amount. */
  SCREEN_CHANGE_BEGINS("screen change begins"),

  /** Number of the screen that is in now, from 0. */
  SCREEN_CHANGE_ENDS("screen change ends"),

  /**
   * Bales that are left in the yard, on the table and in the feeder. The same where the crew is
   * back.
   */
  CREW_SENT_HOME("crew sent home"),
  CREW_BACK("crew back"),

  /** Number of the campaign. */
  CAMPAIGN_BEGINS("campaign begins"),

  /** Bales left over. */
  CAMPAIGN_ENDS("campaign ends"),

  /** A line is in its hours, or no longer; no amount. */
  HOURS_BEGIN("hours begin"),
  HOURS_END("hours end");

  private final String word;

  EventKind(String word) {
    this.word = word;
  }

  /** As it stands in the table. */
  public String word() {
    return word;
  }
}
