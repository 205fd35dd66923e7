package hurdline.text.notes;

import hurdline.answer.Titles;
import hurdline.answer.YardFact;
import hurdline.text.Wording;

/** What the sizing of a yard takes for granted, in whole sentences. */
final class YardNotes {
  private final Wording wording;

  YardNotes(Wording wording) {
    this.wording = wording;
  }

  void addTo(Sentences sentences) {
    sentences
        .tell(
            YardFact.AimWithoutLimit.class,
            "Aim of the yard",
            "The aim is for the plant with a yard without limit, and every other plant is simulated as"
                + " often; what is known of their measures may be more or less.")
        .tell(YardFact.SizesOfTheYard.class, "Sizes of the yard", this::sizes)
        .tell(YardFact.Overflow.class, "Overflow", YardNotes::overflow)
        .tell(YardFact.SeasonQuantiles.class, "Seasons and quantiles", this::quantiles)
        .tell(YardFact.MoneyOfTheYard.class, "Money of a yard", YardNotes::money)
        .tell(YardFact.Acres.class, "Area of the fields", this::acres)
        .tell(
            YardFact.PeakReductions.class,
            "What shortens the peak",
            "Each change alone, in the plant with a yard without limit and on the same random draws: a truck more"
                + " or less, receiving an hour longer, the first other shift of the calendar that fits, the"
                + " file's options, and 10 % more of what may limit a line (of a resource one more). What"
                + " it would cost is left out. The intervals of all hold together (Bonferroni).");
  }

  private String sizes(YardFact.SizesOfTheYard fact) {
    String why =
        switch (fact.why()) {
          case ASKED -> "as asked";
          case ONLY_PLACE ->
              "the only place that takes " + Titles.inText(wording.titles().crop(fact.crop()));
          case LAST_WITH_PRICE -> "the last whose ground has a price; --place takes another";
          case LAST ->
              "the last that takes "
                  + Titles.inText(wording.titles().crop(fact.crop()))
                  + "; --place takes another";
        };
    return "Places are filled in the file's order, and "
        + wording.titles().placeInText(fact.place())
        + " is made larger or smaller ("
        + why
        + "); without limit it takes whatever comes. All sizes met the same weather, yields, stops and trips."
        + (fact.shared() ? " Other crops may lie in some of these places too, and count." : "");
  }

  private static String overflow(YardFact.Overflow fact) {
    return fact.turnedAway()
        ? "By the file's rule a load that finds no room is turned away at the gate; a season overflows"
            + " when that happens at all."
        : "By the file's rule a trip starts only when there is room for its bales beside those on the"
            + " road, and loads that come by themselves wait at the gate; a season overflows when a truck"
            + " or load has to wait for room at all. Such waits are by the clock, nights included.";
  }

  private String quantiles(YardFact.SeasonQuantiles fact) {
    return "Intervals of quantiles and sizes lie between two of the "
        + wording.count(fact.seasons())
        + " simulated seasons, whatever their distribution (order statistics), those of chances are"
        + " Clopper and Pearson's."
        + (fact.seasons() < fact.needed()
            ? " For the size that overflows in one season of "
                + wording.count(Math.round(1 / fact.overflow()))
                + " an upper limit exists only from "
                + seasons(fact.needed(), fact.seasons())
            : "");
  }

  private String seasons(int needed, int seasons) {
    return wording.count(needed)
        + " seasons on; with "
        + wording.count(seasons)
        + " there is none.";
  }

  private static String money(YardFact.MoneyOfTheYard fact) {
    return "The calendar simulated once stands for one year. A size costs the ground of the places at its price,"
        + " spread evenly over its life, what waiting trucks and loads cost where the file says so, and what"
        + " the plant's margin lies below that of the same seasons with a yard without limit. The margin has"
        + " in it the crop lost in the yard, the wages of receiving on more or fewer days, and what the line"
        + " makes of late or missing bales. What is lost at the fields was not paid for. The cheapest is the"
        + " one of the sizes simulated with the least mean; others are compared with it season by season, with"
        + " intervals that hold for all together (Bonferroni)."
        + (fact.groundPriced()
            ? ""
            : " The file gives no price of ground, so a larger yard costs nothing here.");
  }

  private String acres(YardFact.Acres fact) {
    return "All fields of the crop are larger or smaller by one factor, in the yard as the file has it"
        + " and on the same random draws; trucks, balers, crews and shifts stay. A season finishes when "
        + (fact.carryOver() > 0
            ? "no more than " + wording.plain(fact.carryOver()) + " are"
            : "nothing is")
        + " left over, wherever it lay, as the crop's last campaign ends. The answer is"
        + " found by halves to within half a percent of the file's area; that a larger area finishes"
        + " less often is taken for granted between the factors simulated. Each season has an area up"
        + " to which it finishes, the answer is a quantile of these, and its interval lies between"
        + " two of them by their order, found by halves like the answer."
        + (fact.seasons() < fact.needed()
            ? " A lower limit exists only from " + seasons(fact.needed(), fact.seasons())
            : "");
  }
}
