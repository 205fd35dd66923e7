package hurdline.measure;

/**
 * What the building as a whole is used for; of several that hold, the first in this order is meant,
 * but for {@link #CONCURRENT}, which is a part of {@link #STAFFED}.
 */
public enum Use {
  STAFFED("staffed", "at least one line is in its hours"),
  CONCURRENT("concurrent", "of these, two or more lines are in their hours at once"),
  CHANGEOVER("changeover", "no line works and machines are being changed over to another crop"),
  UNCREWED("uncrewed", "a campaign has machines, and it is off shift or in a rest"),
  UNUSED("unused", "no campaign has any machine");

  private final String word;
  private final String sentence;

  Use(String word, String sentence) {
    this.word = word;
    this.sentence = sentence;
  }

  /** The word in measure names and tables. */
  public String word() {
    return word;
  }

  /** What it means, to follow the word and a colon. */
  public String sentence() {
    return sentence;
  }
}
