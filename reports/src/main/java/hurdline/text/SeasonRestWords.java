package hurdline.text;

import hurdline.answer.RunAnswer;
import hurdline.answer.RunFact;
import hurdline.answer.SeasonRest;
import hurdline.answer.SeasonRest.Age;
import hurdline.answer.SeasonRest.Finish;
import hurdline.answer.SeasonRest.Hours;
import hurdline.answer.SeasonRest.Kind;
import hurdline.answer.SeasonRest.Quantity;
import hurdline.answer.Titles;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What has been of a season, when it will be done and whether a shift is needed for that. */
public final class SeasonRestWords {
  /** Of answers made when records did not say it. */
  private static final String BEFORE_IT_WAS_RECORDED =
      "Bins and stores of finished goods begin empty: no record says what was in them.";

  private final SeasonRest rest;
  private final Titles titles;
  private final Wording wording;
  private final Optional<String> opening;

  public SeasonRestWords(RunAnswer answer, Wording wording) {
    rest = answer.rest();
    titles = wording.titles();
    this.wording = wording;
    opening =
        answer.assumptions().stream()
            .filter(RunFact.OpeningContents.class::isInstance)
            .map(of -> new OpeningWords(wording).sentence((RunFact.OpeningContents) of))
            .findFirst();
  }

  /**
   * What has been and when each line is done, in whole sentences; none where the answer is of the
   * whole calendar.
   */
  public List<String> headline() {
    List<String> said = new ArrayList<>();
    if (rest.isGiven()) {
      soFar().ifPresent(said::add);
      for (Finish finish : rest.finishes()) {
        said.add(finish.hours() == Hours.AS_PLANNED ? planned(finish) : changed(finish));
      }
    }
    return said;
  }

  /** What that takes for granted. */
  public List<String> notes() {
    return rest.isGiven() ? List.of(covers(), opening.orElse(BEFORE_IT_WAS_RECORDED)) : List.of();
  }

  private Optional<String> soFar() {
    List<String> fed =
        rest.quantities().stream()
            .filter(of -> of.kind() == Kind.FED && of.soFar() > 0)
            .map(
                of ->
                    wording.rough(of.soFar(), of.unit())
                        + " of "
                        + Titles.inText(titles.crop(of.of())))
            .toList();
    return fed.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Before "
                + wording.date(rest.asOf())
                + " "
                + CapacityWords.and(fed)
                + " were fed by the records; all else here is of the rest of the season.");
  }

  private String planned(Finish finish) {
    String line = Titles.capital(titles.lineInText(finish.line()));
    String by = " by " + wording.date(finish.by());
    if (finish.finished() == 0) {
      return line + " is not done" + by + in(finish) + ": " + left(finish) + ".";
    }
    String half =
        finish.doneP50() > 0 ? ", at the median on " + wording.date(day(finish.doneP50())) : "";
    return line
        + " is done"
        + by
        + in(finish)
        + half
        + (finish.finished() < finish.years() ? "; " + left(finish) : "")
        + ".";
  }

  private String changed(Finish finish) {
    Finish planned = planned(finish.line()).orElse(finish);
    String with = finish.hours() == Hours.WITH_SHIFT ? "With the shift " : "Without the shift ";
    String told =
        with
            + titles.shift(finish.shift())
            + " "
            + titles.lineInText(finish.line())
            + " is"
            + (finish.finished() == 0 ? " not done" : " done")
            + in(finish);
    return told + verdict(planned, finish) + ".";
  }

  private String verdict(Finish planned, Finish finish) {
    if (finish.significant()) {
      boolean needed = finish.onlyPlanned() > finish.onlyThis();
      return needed ? ": it is needed" : ": it helps";
    }
    if (finish.finished() == 0 && planned.finished() == 0) {
      return ": " + left(finish);
    }
    return finish.finished() == finish.years() && planned.finished() == planned.years()
        ? ": it is not needed for that"
        : "; the difference is not significant";
  }

  private Optional<Finish> planned(String line) {
    return rest.finishes().stream()
        .filter(of -> of.line().equals(line) && of.hours() == Hours.AS_PLANNED)
        .findFirst();
  }

  private String in(Finish finish) {
    if (finish.finished() == 0) {
      return " in any of " + wording.count(finish.years()) + " replications";
    }
    return " in "
        + (finish.finished() == finish.years() ? "all " : wording.count(finish.finished()) + " of ")
        + wording.count(finish.years())
        + " replications";
  }

  private String left(Finish finish) {
    return wording.rough(finish.leftMean(), finish.unit())
        + " of "
        + Titles.inText(titles.crop(finish.crop()))
        + " are left on average";
  }

  private LocalDate day(double day) {
    return rest.asOf().plusDays(Math.round(day) - 1);
  }

  /** What the chances take in. */
  public String covers() {
    return rest.overInputs()
        ? "Chances of being done cover chance and the drawn inputs."
        : "Chances of being done, and percentiles, cover chance only: how well inputs are known is"
            + " not in them.";
  }

  /** A row's label. */
  public String label(Quantity of) {
    return of.kind() == Kind.FED
        ? Titles.capital(titles.crop(of.of())) + " fed"
        : titles.product(of.of());
  }

  /** How a line works in a row. */
  public String hours(Finish of) {
    return switch (of.hours()) {
      case AS_PLANNED -> "as planned";
      case WITHOUT_SHIFT -> "without " + titles.shift(of.shift());
      case WITH_SHIFT -> "with " + titles.shift(of.shift());
    };
  }

  /** When a line is done, for a cell. */
  public String done(double day) {
    return day > 0 ? wording.date(day(day)) : "never";
  }

  /** An age with its unit, or that it is not known. */
  public String age(Age of) {
    return Double.isNaN(of.age()) ? "not known: initial age" : wording.rough(of.age(), of.unit());
  }

  public String stop(Age of) {
    return titles.machine(of.machine()) + ", " + titles.stop(of.machine(), of.stop());
  }
}
