package hurdline.measure;

/**
 * Ratios of a machine's hours that have a name of their own.
 *
 * <p>Time sums: PBT planned busy time, the hours on duty less those {@link State#PLANNED}; APT
 * actual production time, the hours {@link State#SLOWED} and at {@link State#FULL_RATE}; AUST
 * actual unit setup time, {@link State#CHANGING}; ADET actual unit delay time, {@link State#DOWN};
 * ADOT actual unit down time, when it could work and does not, {@link State#STARVED} and {@link
 * State#BLOCKED}; AUBT actual unit busy time, PBT less ADOT; AUPT actual unit processing time, APT
 * and AUST.
 *
 * @see "ISO 22400-2:2014, Key performance indicators for manufacturing operations management;
 *     names, time sums and ratios from memory"
 */
public enum Kpi {
  ALLOCATION(
      "allocation_efficiency",
      "AUBT / PBT: of its hours on duty less planned stops, those in which it had work"),
  UTILIZATION("utilization_efficiency", "APT / AUBT: of these, those in which it produced"),
  AVAILABILITY(
      "availability",
      "APT / PBT: of its hours on duty less planned stops, those in which it produced"),
  TECHNICAL("technical_efficiency", "APT / (APT + ADET): production against production and stops"),
  SETUP("setup_ratio", "AUST / AUPT: package changes and screen changes within processing");

  private final String word;
  private final String sentence;

  Kpi(String word, String sentence) {
    this.word = word;
    this.sentence = sentence;
  }

  /** The word in measure names and tables. */
  public String word() {
    return word;
  }

  /** Its formula and what it means. */
  public String sentence() {
    return sentence;
  }
}
