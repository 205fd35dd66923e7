package hurdline.text.notes;

import hurdline.answer.Header;
import hurdline.answer.RunFact;
import hurdline.text.ChangeWords;
import hurdline.text.OpeningWords;
import hurdline.text.Wording;
import hurdline.unit.Counted;
import java.util.stream.Collectors;

/** What the figures of every study take for granted, in whole sentences. */
final class RunNotes {
  private static final int HASH_SHOWN = 12;
  private static final String ONE_ALONE =
      "One replication says nothing about how far another may lie from it.";

  private final Header header;
  private final Wording wording;

  RunNotes(Header header, Wording wording) {
    this.header = header;
    this.wording = wording;
  }

  void addTo(Sentences sentences) {
    sentences
        .tell(RunFact.Inputs.class, "Inputs", fact -> inputs())
        .tell(
            RunFact.Horizon.class,
            "Horizon",
            "From the first minute of the calendar's first day to the last of its last. On the first"
                + " day machines stand between their stops as the file says, bins and packages are empty and the yard holds"
                + " what the file has on hand, or both are as records of a season under way say; what is under way on the last day is cut there.")
        .tell(RunFact.RandomDraws.class, "Random draws", fact -> draws())
        .tell(RunFact.Replications.class, "Replications", this::replications)
        .tell(RunFact.Aim.class, "Aim", this::aim)
        .tell(RunFact.AimOutOfReach.class, "Aim", fact -> outOfReach(fact, wording))
        .tell(
            RunFact.OpeningContents.class,
            "Bins and stores",
            fact -> new OpeningWords(wording).sentence(fact))
        .tell(
            RunFact.EvenFlow.class,
            "Flow",
            "Material moves evenly at the rates that the slowest limit allows, and machines other"
                + " than bins, tables and packages hold none of it. Bales, trucks, stops, changes and"
                + " people are followed one by one.")
        .tell(
            RunFact.NotModeled.class,
            "Not modeled",
            "How good the fiber is but for what is left in it, weather on the stacks beyond the given loss, traffic on the"
                + " roads, learning and tiredness, absence beyond the given crews, and prices that"
                + " change within the horizon are left out. Stops do not depend on each other but"
                + " through the resources that they wait for.")
        .tell(RunFact.LoanAndTax.class, "Loan and tax", this::loanAndTax)
        .tell(RunFact.Intervals.class, "Intervals", this::intervals);
  }

  private String loanAndTax(RunFact.LoanAndTax fact) {
    String loan =
        fact.loanYears() == 0
            ? "Nothing is borrowed."
            : share(fact.loanShare())
                + " of what is bought is borrowed at "
                + share(fact.loanRate())
                + " a year and paid back over "
                + Counted.of(fact.loanYears(), "year")
                + " in even payments at their ends.";
    String tax =
        fact.taxRate() == 0
            ? " No tax is looked at."
            : " Tax is "
                + share(fact.taxRate())
                + " of what is earned less interest"
                + writeOff(fact)
                + "; a loss lowers the tax on other income.";
    return loan
        + tax
        + " This view stands beside the margin for planning, before your accountant; all figures"
        + " not named so are before interest and tax.";
  }

  private static String writeOff(RunFact.LoanAndTax fact) {
    if (fact.writeOffYears() == 0) {
      return "";
    }
    return " and depreciation ("
        + (fact.factor() > 0 ? "declining balance" : "straight line")
        + " over "
        + Counted.of(fact.writeOffYears(), "year")
        + (fact.halfFirst() ? ", the first counting half" : "")
        + ")";
  }

  private String share(double share) {
    return wording.asGiven(share, "share");
  }

  private String inputs() {
    String hash = header.contentHash();
    String option =
        header.option().equals("base")
            ? wording.titles().option("base")
            : "with " + wording.titles().option(header.option());
    String changes =
        header.changes().isEmpty()
            ? ""
            : ", changed by " + ChangeWords.of(header.changes(), " and ");
    return "Every rate, time, mass and price is what "
        + "`"
        + header.file()
        + "`"
        + " says (content "
        + hash.substring(0, Math.min(HASH_SHOWN, hash.length()))
        + "), "
        + option
        + changes
        + "; worked out by version "
        + header.version()
        + ". The answer is as good as these figures.";
  }

  private String draws() {
    return "Each source of randomness (bales, weather, trips, each kind of stop, each change) has draws of"
        + " its own from seed "
        + header.seed()
        + ". The same seed gives the same answer, and the plant with something changed meets the same"
        + " bales, weather and stops as far as it still has them.";
  }

  private String replications(RunFact.Replications fact) {
    String early =
        fact.stopped()
            ? " It was stopped before all were done; these are the first ones, whatever they showed."
            : "";
    return "The calendar was simulated "
        + (fact.count() == 1
            ? "once. "
            : wording.count(fact.count()) + " times, each independent of the others. ")
        + (fact.count() == 1
            ? ONE_ALONE
            : "An interval is where the mean of very many would lie with 95 % confidence;"
                + " quantiles say how single years spread.")
        + early;
  }

  private String aim(RunFact.Aim aim) {
    String reached = wording.rough(aim.halfWidth(), aim.unit());
    String wanted = wording.rough(aim.wanted(), aim.unit());
    return switch (aim.outcome()) {
      case NO_VALUE ->
          "The aim \""
              + aim.said()
              + "\" could not be followed, since the measure has no value in any replication.";
      case REACHED ->
          "The aim \""
              + aim.said()
              + "\" is reached: the half-width is "
              + reached
              + " of "
              + wanted
              + " allowed. Ending as soon as an aim is reached makes an interval a little too narrow.";
      case NOT_REACHED ->
          "The aim \""
              + aim.said()
              + "\" is not reached: the half-width is "
              + reached
              + " in place of "
              + wanted
              + (aim.stopped()
                  ? ""
                  : "; "
                      + wording.count(aim.most())
                      + " replications are the most that are simulated")
              + ". For the aim it takes "
              + wording.aboutAsMany(aim.needed())
              + ".";
    };
  }

  static String outOfReach(RunFact.AimOutOfReach fact, Wording wording) {
    return "--until "
        + fact.said()
        + " will not be reached: by the spread of the first "
        + wording.count(fact.count())
        + " replications it takes "
        + wording.aboutAsMany(fact.needed())
        + "; "
        + wording.count(fact.most())
        + " are simulated at most. Ctrl-C ends sooner and keeps what is done.";
  }

  private String intervals(RunFact.Intervals fact) {
    return "Intervals are of the simulation alone: by how much the file's own figures may be off is not in them, and hurdline fit"
        + " says it of those that records hold. An interval of a mean is Student's t, or from 40 replications on Hall's (1992) where the values have a"
        + " skewness above 1 or below -1: Student's then misses the truth more often than in 5 %, on the side of the long"
        + " tail. "
        + (fact.hall().count() == 0 ? "" : "Hall's have " + named(fact.hall()) + ". ")
        + (fact.skewed().count() == 0
            ? ""
            : "With fewer than 40 replications Student's intervals of strongly skewed values (beyond 2) hold less often"
                + " than they say: "
                + named(fact.skewed())
                + ". ")
        + "A limit ends where the measure cannot lie: at 0, at what a place or a bin holds, at the hours of the calendar"
        + (fact.cut().count() == 0 ? ". " : "; so cut are those of " + named(fact.cut()) + ". ")
        + "The column interval of summary.csv says which each is.";
  }

  /** {@code 12 measures, such as a, b, c}, or all where they are few. */
  private String named(RunFact.Group measures) {
    String names =
        measures.first().stream().map(name -> "`" + name + "`").collect(Collectors.joining(", "));
    return measures.count() == measures.first().size()
        ? names
        : wording.count(measures.count()) + " measures, such as " + names;
  }
}
