package hurdline.study;

import hurdline.answer.Note;
import java.util.ArrayList;
import java.util.List;

/** What the sizing of a yard takes for granted beyond what a run does, in whole sentences. */
final class YardNotes {
  private final CropYard yard;
  private final YardAsk ask;
  private final int seasons;

  YardNotes(CropYard yard, YardAsk ask, int seasons) {
    this.yard = yard;
    this.ask = ask;
    this.seasons = seasons;
  }

  List<Note> notes() {
    List<Note> notes = new ArrayList<>();
    notes.add(
        new Note(
            "Sizes of the yard",
            "Places are filled in the file's order, and "
                + yard.grown().name()
                + " is made larger or smaller ("
                + why()
                + "); without limit it takes whatever comes. All sizes met"
                + " the same weather, yields, stops and trips."
                + shared()));
    notes.add(new Note("Overflow", overflow()));
    notes.add(
        new Note(
            "Seasons and quantiles",
            "Intervals of quantiles and sizes lie between two of the "
                + seasons
                + " simulated seasons, whatever their distribution (order statistics), those of chances are"
                + " Clopper and Pearson's."
                + tooFew()));
    if (yard.plant().money().isPresent()) {
      notes.add(new Note("Money of a yard", money()));
    }
    if (ask.acres().isPresent()) {
      notes.add(
          new Note(
              "Acres",
              "All fields of the crop are larger or smaller by one factor, in the yard as the file has it"
                  + " and on the same random draws; trucks, balers, crews and shifts stay. A season finishes when"
                  + " nothing is left over, wherever it lay, as the crop's last campaign ends. The answer is"
                  + " found by halves to within half a percent of the file's acres; that more acres finish"
                  + " less often is taken for granted between the factors simulated. Each season has acres up"
                  + " to which it finishes, the answer is a quantile of these, and its interval lies between"
                  + " two of them by their order, found by halves like the answer."
                  + noLowerLimit(ask.acres().getAsDouble())));
    }
    if (ask.gain()) {
      notes.add(
          new Note(
              "What shortens the peak",
              "Each change alone, in the plant with a yard without limit and on the same random draws: a truck more"
                  + " or less, receiving an hour longer, the first other shift of the calendar that fits, the"
                  + " file's options, and a tenth more of what may hold a line (of a resource one more). What"
                  + " it would cost is left out. The intervals of all hold together (Bonferroni)."));
    }
    return notes;
  }

  private String why() {
    if (ask.place().isPresent()) {
      return "as asked";
    }
    if (yard.places().size() == 1) {
      return "the only place that takes " + yard.crop().name();
    }
    return (yard.grown().costPerM2() > 0 ? "the last whose ground has a price" : "the last that takes " + yard.crop().name())
        + "; --place takes another";
  }

  private String shared() {
    boolean others =
        yard.plant().crops().size() > 1
            && yard.places().stream().anyMatch(place -> place.crops().size() != 1);
    return others ? " Other crops may lie in some of these places too, and count." : "";
  }

  private String overflow() {
    return yard.plant().yard().turnAway()
        ? "By the file's rule a load that finds no room is turned away at the gate; a season overflows"
            + " when that happens at all."
        : "By the file's rule a trip starts only when there is room for its bales beside those on the"
            + " road, and loads that come by themselves wait at the gate; a season overflows when a truck"
            + " or load has to wait for room at all. Such waits are by the clock, nights included.";
  }

  private String noLowerLimit(double share) {
    int needed = needed(share);
    return seasons < needed
        ? " A lower limit exists only from " + needed + " seasons on; with " + seasons + " there is none."
        : "";
  }

  /** The quantile of a share p has an upper limit from the least n with pⁿ ≤ 0.025. */
  private static int needed(double share) {
    return (int) Math.ceil(Math.log(0.025) / Math.log(share) - 1e-9);
  }

  private String tooFew() {
    int needed = needed(1 - ask.overflow());
    return seasons < needed
        ? " For the size that overflows in one season of "
            + Math.round(1 / ask.overflow())
            + " an upper limit exists only from "
            + needed
            + " seasons on; with "
            + seasons
            + " there is none."
        : "";
  }

  private String money() {
    return "The calendar simulated once stands for one year. A size costs the ground of the places at its price,"
        + " spread evenly over its life, what waiting trucks and loads cost where the file says so, and what"
        + " the plant's margin lies below that of the same seasons with a yard without limit. The margin has"
        + " in it the crop lost in the yard, the wages of receiving on more or fewer days, and what the line"
        + " makes of late or missing bales. What is lost at the fields was not paid for. The cheapest is the"
        + " one of the sizes simulated with the least mean; others are compared with it season by season, with"
        + " intervals that hold for all together (Bonferroni)."
        + (yard.places().stream().allMatch(place -> place.costPerM2() == 0)
            ? " The file gives no price of ground, so a larger yard costs nothing here."
            : "");
  }
}
