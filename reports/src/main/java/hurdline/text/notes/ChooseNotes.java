package hurdline.text.notes;

import hurdline.answer.ChooseFact;
import hurdline.text.Wording;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** What the choice of a plan takes for granted, in whole sentences. */
final class ChooseNotes {
  private final Wording wording;

  ChooseNotes(Wording wording) {
    this.wording = wording;
  }

  void addTo(Sentences sentences) {
    sentences
        .tell(ChooseFact.OneLeader.class, "How it is judged", this::leader)
        .tell(ChooseFact.TwoStages.class, "How it is judged", this::stages)
        .tell(
            ChooseFact.RareYears.class,
            "Rare years",
            "The statement holds for differences of years that are near normal; a long tail to the right raises the limits (Hall's"
                + " formula). Years of a kind that comes less often than one in ten are not weighed: among 30 years they"
                + " may be missing, and no statistic saves a plan whose gain lies there, such as a spare or a larger shed. Hold it"
                + " with `keep`.")
        .tell(
            ChooseFact.LongTails.class,
            "Long tails",
            fact ->
                wording.count(fact.plans())
                    + " of the plans left and of the 20 that went out last differ from their leader with so long a tail to the right that"
                    + " the statement may fail more often than stated. More years (another band, `--each-gap`) or `keep` help.")
        .tell(ChooseFact.NewYears.class, "Last years", this::last)
        .tell(ChooseFact.CostOfCapital.class, "Cost of capital", this::capital)
        .tell(
            ChooseFact.CostsNotTakenOff.class,
            "Costs",
            "What a plan costs to buy is shown and not taken off what it earns; with --worth its yearly cost is.")
        .tell(ChooseFact.Bounds.class, "Bounds", this::bounds)
        .tell(
            ChooseFact.FiguresOfPlans.class,
            "Inputs",
            fact ->
                fact.drawn()
                    ? "Each year takes a draw of the uncertain inputs, the same for all plans."
                    : "All plans are simulated at the figures of the file.")
        .tell(
            ChooseFact.OnlyThesePlans.class,
            "Only these plans",
            "Nothing is known of values between those of the file and beyond them. A second run with another seed, of which the better"
                + " answer is taken, is not covered.");
  }

  private String leader(ChooseFact.OneLeader fact) {
    return "In each of at most "
        + wording.count(fact.rounds())
        + " rounds the plan with the greatest sum of all earlier years leads, and all plans left are judged against it on new years, the same"
        + " draws for all of them. A plan goes out when the upper limit of its mean difference is below 0; the greatest limit left is the"
        + " gap. A limit may fail with "
        + wording.fixed(fact.alpha(), 0, "share")
        + " % over the number of rounds"
        + (fact.budgets() > 1
            ? " and of budgets, " + wording.count(fact.budgets()) + " with the one without a limit"
            : "")
        + ", so that all statements together hold with "
        + wording.fixed(1 - fact.alpha(), 0, "share")
        + " %, however many plans there are.";
  }

  private String stages(ChooseFact.TwoStages fact) {
    return "Each plan was simulated on draws of its own, "
        + wording.count(fact.first())
        + " years first; with their standard deviation s it needs (h·s/band)² years in all, where h is "
        + wording.fixed(fact.constant(), 3, "")
        + " for "
        + wording.count(fact.plans())
        + " plans and "
        + wording.fixed(1 - fact.alpha(), 0, "share")
        + " % (Rinott's procedure): at most "
        + wording.count(fact.most())
        + " a plan, "
        + wording.count(fact.more())
        + " more of all. The plan of the greatest mean is named. The statement holds for years that are near normal and do not"
        + " depend on each other. Years of a kind that comes less often than one in ten may be missing among the first, and no plan"
        + " goes out: the others may be as good.";
  }

  private String last(ChooseFact.NewYears fact) {
    return "The named plan, those left (at most 20) and all that differ from it in one choice were simulated in "
        + wording.count(fact.last())
        + " more years. Means, percentiles, bottlenecks and differences are of these years alone, so they have none of the"
        + " luck by which a plan was chosen.";
  }

  private String capital(ChooseFact.CostOfCapital fact) {
    return "From each year the yearly cost of what the plan buys is taken off: the even payment over its life that gives back its cost"
        + " with "
        + wording.marks(
            BigDecimal.valueOf(100 * fact.ratePerYr())
                .setScale(6, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString())
        + " % interest, the file's discount rate, less what is left of it at the end. Prices stay those of the first year.";
  }

  private String bounds(ChooseFact.Bounds fact) {
    return "A plan that does not meet a bound in enough of the "
        + wording.count(fact.choosing())
        + " years that choose is left out, and the statement is about the others. In how many of the last years a plan met it is"
        + " shown, never promised.";
  }
}
