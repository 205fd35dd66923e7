package hurdline.measure;

/** The unit in which a measure is written, as it stands in the unit column of every table. */
public enum Unit {
  /** Metric tonnes, 1000 kg, whatever units the page shows. */
  TONNE("t"),
  KILOGRAM("kg"),
  HOUR("h"),
  MINUTE("min"),
  DAY("d"),
  KILOWATT("kW"),
  KILOWATT_HOUR("kWh"),
  TONNE_PER_HOUR("t/h"),
  PER_HOUR("1/h"),
  COUNT("count"),
  /** A part of one: 0.25 is a quarter. */
  SHARE("share"),
  /** Counted as the crop is: {@code bales} or {@code modules}. */
  BALES("bales"),
  /** The plant file's currency code. */
  MONEY("money"),
  /** The plant file's currency code per tonne. */
  MONEY_PER_TONNE("money/t");

  private final String word;

  Unit(String word) {
    this.word = word;
  }

  /** The word for units that hang on neither crop nor currency; else the general word. */
  public String word() {
    return word;
  }

  /**
   * The word for the unit column.
   *
   * @param cropUnit {@code bales} or {@code modules}; read for {@link #BALES} only
   * @param currency the file's currency code; read for the two money units only
   */
  public String word(String cropUnit, String currency) {
    return switch (this) {
      case BALES -> cropUnit;
      case MONEY -> currency;
      case MONEY_PER_TONNE -> currency + "/t";
      default -> word;
    };
  }
}
