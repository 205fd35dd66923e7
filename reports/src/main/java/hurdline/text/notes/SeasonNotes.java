package hurdline.text.notes;

import hurdline.answer.SeasonFact;

/** What a comparison of season plans takes for granted, in whole sentences. */
final class SeasonNotes {
  private SeasonNotes() {}

  static void addTo(Sentences sentences) {
    sentences
        .tell(
            SeasonFact.FinishedCrop.class,
            "Finished",
            "A crop is finished in a year in which nothing of it is left when its line's last"
                + " campaign ends: no bale in the yard, on the road, at the gate, at a field or still"
                + " to be baled. The chance is the share of such years, with Clopper and Pearson's"
                + " interval; crop that lies there and that no line of the plan works is not finished"
                + " either. Which plan is surer goes by the exact sign test on years in which only"
                + " one of two finished, at a level that holds for all pairs together.")
        .tell(
            SeasonFact.CropLeftOver.class,
            "Left over",
            "What the crop left over would have brought is its bales at the line's mean margin per"
                + " bale fed, before electricity and overhead. It is a guide: a longer season costs"
                + " shifts that this does not count, and where the margin is below 0 it is a sum"
                + " spared. The margin itself counts crop left over at its price only. Margin less margin"
                + " forgone takes off what that crop would have brought, crop by crop where the crop's"
                + " margin is above 0; the plan with the best margin need not be the best by it.")
        .tell(
            SeasonFact.HoursOfTheBuilding.class,
            "Hours",
            "The building is staffed while at least one line is in its hours; else it is changed over,"
                + " uncrewed or unused, and these four add up to the calendar. Each machine is in one"
                + " of nine states, which add up to the calendar too. Ratios are named and taken after"
                + " ISO 22400-2 (from memory): on duty is its planned busy time, slowed and full rate"
                + " its actual production time, changing its actual unit setup time, down its actual"
                + " unit delay time, starved and blocked its actual unit down time. Starved, blocked,"
                + " changeover and uncrewed have no name there that fits, so these are the program's"
                + " own.")
        .tell(
            SeasonFact.AvoidedChangeovers.class,
            "Avoided changeovers",
            "Each plan was simulated once more without each of its changeovers, on the same random draws, the"
                + " campaign before it running on through its days and all other dates as they are."
                + " What that is worth is the margin without it less the margin with it; whether a"
                + " line can be fitted so that it needs none is not asked. Intervals hold for all of"
                + " them together.");
  }
}
