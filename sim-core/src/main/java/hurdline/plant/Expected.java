package hurdline.plant;

/**
 * What belongs in place of what is wrong.
 *
 * @param text what was expected, and what to do
 * @param nearest the known word that was probably meant; empty where there is none
 */
public record Expected(String text, String nearest) {
  /** Something without a nearest word. */
  public static Expected of(String text) {
    return new Expected(text, "");
  }
}
