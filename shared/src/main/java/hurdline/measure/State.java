package hurdline.measure;

/**
 * What a machine is doing; in each second of the horizon it is in exactly one of these. Of several
 * that hold, the first in this order is meant.
 *
 * @see "Buzacott, Automatic transfer lines with buffer stocks (1967), for the words blocked,
 *     starved and down; from memory"
 */
public enum State {
  UNUSED("unused", "no campaign uses it"),
  CHANGEOVER("changeover", "the building is being changed over to another crop"),
  UNCREWED("uncrewed", "off shift or in a rest"),
  PLANNED("planned", "in a stop planned by date, or waiting for what it needs"),
  DOWN("down", "in one of its stops: under repair, being cleaned, or waiting for either"),
  CHANGING("changing", "waits for a package change or a screen change"),
  STARVED("starved", "ready, but nothing comes"),
  BLOCKED("blocked", "ready, but what it makes has nowhere to go"),
  SLOWED("slowed", "runs below its own rate, because something else limits the line"),
  FULL_RATE("full_rate", "runs as fast as it can");

  private final String word;
  private final String sentence;

  State(String word, String sentence) {
    this.word = word;
    this.sentence = sentence;
  }

  /** The word in measure names and tables. */
  public String word() {
    return word;
  }

  /** What it means, to follow the machine's name and a colon. */
  public String sentence() {
    return sentence;
  }
}
