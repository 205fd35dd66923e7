package hurdline.text;

import hurdline.answer.GainRow;
import hurdline.answer.Increase;

/** What there is more of, in a few words. */
public final class IncreaseWords {
  private IncreaseWords() {}

  /** What there is more of: {@code Hammer mill}. */
  public static String what(GainRow row, Wording wording) {
    return row.more().kind() == Increase.Kind.OPTION
        ? wording.titles().option(row.what())
        : wording.titles().thing(row.what());
  }

  /** {@code 10 % more power}, or {@code 48 min longer, to 14:48}. */
  public static String of(Increase more, Wording wording) {
    return switch (more.kind()) {
      case ROOM -> share(more, wording) + " more room";
      case POWER -> share(more, wording) + " more power";
      case RATE -> share(more, wording) + " more rate";
      case COUNT -> wording.count(more.by()) + " more than " + wording.count(more.to());
      case LONGER_TO -> wording.count(more.by() / 60) + " min longer, to " + clock(more.to());
      case LONGER_FROM -> wording.count(more.by() / 60) + " min longer, from " + clock(more.to());
      case TRUCKS ->
          (more.by() < 0 ? "one truck less, " : "one truck more, ") + wording.count(more.to());
      case OPEN_TO -> "open to " + clock(more.to());
      case WHOLE_SEASON -> "worked in the whole season";
      case OPTION -> "the file's option";
    };
  }

  private static String share(Increase more, Wording wording) {
    return wording.asGiven(more.by(), "share");
  }

  private static String clock(double atS) {
    long minutes = Math.round(atS / 60);
    return String.format(java.util.Locale.ROOT, "%02d:%02d", minutes / 60, minutes % 60);
  }
}
