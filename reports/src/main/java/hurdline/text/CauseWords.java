package hurdline.text;

import hurdline.answer.Titles;
import hurdline.measure.Cause;

/** What limits a line, in a few words. */
final class CauseWords {
  private CauseWords() {}

  /** What causes that count together are called: their machine, or what is lacking. */
  static String belongsTo(String cause, String crop, SpokenNames names) {
    return switch (Cause.kindOf(cause)) {
      case RESOURCE -> "the wait for " + names.resource(Cause.resourceOf(cause));
      case STORE -> "a lack of room for products";
      case LIFT -> "the lift to the feed table";
      case NO_BALES, CROP_DONE -> "a lack of " + crop;
      case KEPT_APART -> crop + " kept apart until released";
      case NO_ORDER -> "a lack of orders";
      case NO_CREW -> "a lack of crew";
      default -> names.machines(Cause.machinesOf(cause));
    };
  }

  /** A cause in a few words for the label of a row: {@code mill}, {@code cleaning of feeder}. */
  static String by(String cause, Titles titles) {
    String machine =
        CapacityWords.and(
            Cause.machinesOf(cause).stream()
                .map(name -> Titles.inText(titles.machine(name)))
                .toList());
    String tail = cause.substring(cause.indexOf('.') + 1);
    return switch (Cause.kindOf(cause)) {
      case RATE -> machine;
      case STOP -> Titles.inText(titles.stop(Cause.machineOf(cause), tail)) + " of " + machine;
      case PACKAGE_CHANGE -> "package change at " + machine;
      case SCREEN_CHANGE -> "screen change of " + machine;
      case RESOURCE -> "wait for " + Titles.inText(titles.resource(tail));
      case STORE -> "lack of room in " + titles.storeInText(tail);
      case LIFT -> "lift to the table";
      case NO_BALES -> "lack of crop";
      case KEPT_APART -> "crop kept apart";
      case CROP_DONE -> "end of the crop";
      case NO_ORDER -> "lack of orders";
      case NO_CREW -> "lack of crew";
    };
  }
}
