package hurdline.text;

import hurdline.answer.ChooseAnswer;
import hurdline.answer.ChooseTerms;
import hurdline.answer.ChosenRow;
import hurdline.answer.FrontierRow;
import hurdline.answer.Header;
import hurdline.measure.Measure;
import hurdline.unit.Counted;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/** Which plan is named, what is certain of it, and what became of the others. */
public final class ChooseHeadline {
  private static final int DAYS_OF_A_YEAR = 350;

  private final ChooseAnswer answer;
  private final ChooseTerms terms;
  private final Wording wording;
  private final ChoiceWords words;
  private final Spoken spoken;

  public ChooseHeadline(ChooseAnswer answer, Wording wording) {
    this.answer = answer;
    this.terms = answer.terms();
    this.wording = wording;
    words = new ChoiceWords(answer, wording);
    spoken = new Spoken(wording);
  }

  public List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    sentences.add(named());
    sentences.add(certain());
    sentences.add(ended());
    sentences.add(
        answer.inputs().isEmpty()
            ? "How right the file's figures are is in none of these numbers."
            : "Each year took a fresh draw of the inputs by "
                + answer.inputs()
                + ", so this is on average over chance and over what is not known of them.");
    return sentences;
  }

  private boolean isMargin() {
    return terms.measure().equals(Measure.MONEY_MARGIN.of());
  }

  /** How often the measure comes: {@code a year}. */
  private String each() {
    Header header = answer.header();
    return ChronoUnit.DAYS.between(header.from(), header.to()) >= DAYS_OF_A_YEAR
        ? " a year"
        : " in the calendar";
  }

  private String label() {
    return MainMeasures.label(terms.measure(), answer.outline(), wording);
  }

  private String named() {
    int plan = answer.best().plan();
    ChosenRow row = answer.chosen(plan).orElseThrow();
    String amount = spoken.estimate(row.mean(), row.low95(), row.high95(), terms.unit());
    double cost = answer.plans().get(plan).cost();
    return "Of "
        + Counted.of(answer.plans().size(), wording.count(answer.plans().size()), "plan")
        + " this one is named: "
        + words.plan(plan)
        + (cost > 0 ? ", which costs " + words.cost(plan) : "")
        + ". It "
        + (isMargin()
            ? "earns " + withAmount(amount, each() + worth())
            : "has a mean " + label() + " of " + amount)
        + ".";
  }

  /** {@code 480,000 USD a year, give or take 5,000}. */
  private static String withAmount(String amount, String each) {
    int comma = amount.indexOf(", give or take");
    return comma < 0 ? amount + each : amount.substring(0, comma) + each + amount.substring(comma);
  }

  private String worth() {
    return terms.worth() ? " after the yearly cost of its capital" : "";
  }

  private String certain() {
    FrontierRow best = answer.best();
    long judged = best.of();
    if (Double.isNaN(best.gap())) {
      return Counted.of(best.left(), wording.count(best.left()), "plan")
          + " "
          + Counted.are(best.left())
          + " left; how far they lie apart cannot be stated after so few years.";
    }
    return "If the plant and the years are as the file says: among these "
        + wording.count(judged)
        + " plans none "
        + (isMargin() ? "earns" : "has")
        + " on average over many years "
        + (isMargin() ? "" : "a " + label() + " ")
        + "more than "
        + (best.gap() > 0
            ? words.atMost(best.gap()) + (isMargin() ? each() : "") + " above this one"
            : "this one")
        + (terms.worth() ? ", the yearly cost of capital taken off" : "")
        + "; that is "
        + wording.fixed(1 - terms.alpha(), 0, "share")
        + " % sure"
        + (answer.frontier().size() > 1 ? ", for all budgets together" : "")
        + ", the "
        + wording.fixed(terms.alpha(), 0, "share")
        + " % being the luck of the simulated years.";
  }

  private String ended() {
    return terms.independent() ? stages() : rounds();
  }

  /** Of two stages: the second needs a number of years that is known after the first. */
  private String stages() {
    String band = wording.asGiven(terms.band(), terms.unit());
    return Double.isNaN(answer.best().gap())
        ? "The second stage, without which the band of "
            + band
            + " cannot be stated, was not simulated to its end: the years or the time that were given"
            + " had run out."
        : "That is the band that was asked for, after two stages and "
            + wording.count(answer.years())
            + " simulated years.";
  }

  private String rounds() {
    String rounds =
        wording.count(answer.best().rounds())
            + (answer.best().rounds() == 1 ? " round" : " rounds")
            + " and "
            + wording.count(answer.years())
            + " simulated years";
    if (answer.best().gap() <= terms.band()) {
      return "That is within the band of "
          + wording.asGiven(terms.band(), terms.unit())
          + ", after "
          + rounds
          + ".";
    }
    return "That is not yet within the band of "
        + wording.asGiven(terms.band(), terms.unit())
        + ": after "
        + rounds
        + (answer.best().rounds() == terms.rounds().size()
            ? " no round is left."
            : " the years or the time that were given had run out.");
  }
}
