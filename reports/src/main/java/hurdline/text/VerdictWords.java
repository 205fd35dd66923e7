package hurdline.text;

import hurdline.answer.DifferenceRow;
import hurdline.answer.PlanDifference;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.Titles;
import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Which of several season plans is best, in whole sentences. */
final class VerdictWords {
  private final SeasonAnswer answer;
  private final Wording wording;
  private final SeasonWords words;

  VerdictWords(SeasonAnswer answer, Wording wording, SeasonWords words) {
    this.answer = answer;
    this.wording = wording;
    this.words = words;
  }

  /**
   * By margin, by margin less the margin forgone where that is another plan, and by finishing; none
   * for one plan.
   */
  List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    if (answer.plans().size() > 1) {
      best().ifPresent(sentences::add);
      lessForgone().ifPresent(sentences::add);
      sentences.add(surest());
    }
    return sentences;
  }

  private Optional<String> best() {
    String best = answer.verdict().margin();
    if (best.isEmpty()) {
      return Optional.empty();
    }
    List<String> parts = new ArrayList<>();
    for (SeasonAnswer.Plan plan : answer.plans()) {
      if (!plan.name().equals(best)) {
        lead(best, plan.name(), Measure.MONEY_MARGIN.of())
            .ifPresent(lead -> parts.add(lead + " over " + read(plan.name())));
      }
    }
    List<String> like = answer.verdict().marginLike();
    String sure =
        like.isEmpty()
            ? ""
            : "; no significant difference from "
                + read(like)
                + " at "
                + answer.header().replications()
                + " replications";
    return Optional.of("Best margin: " + read(best) + ", " + String.join(", ", parts) + sure + ".");
  }

  /**
   * Which plan is best once the margin forgone on crop left over is taken off, where it is another
   * one or not known.
   */
  private Optional<String> lessForgone() {
    String best = answer.verdict().margin();
    String other = answer.verdict().lessForgone();
    if (best.isEmpty() || other.equals(best)) {
      return Optional.empty();
    }
    if (other.isEmpty()) {
      return Optional.of(
          Titles.capital(read(best))
              + " leaves over crop of which nothing was fed in some year; what that would have earned is not known.");
    }
    String measure = Measure.MONEY_MARGIN_LESS_FORGONE.of();
    return lead(other, best, measure)
        .map(
            lead ->
                "With the margin forgone on crop left over taken off, the best plan is "
                    + read(other)
                    + ": "
                    + lead
                    + " over "
                    + read(best)
                    + ", which leaves over "
                    + leftOver(best)
                    + (isSignificant(other, best, measure)
                        ? "."
                        : "; not statistically significant at "
                            + answer.header().replications()
                            + " replications."));
  }

  private String leftOver(String plan) {
    return answer.plans().stream()
        .filter(each -> each.name().equals(plan))
        .flatMap(each -> each.outline().lines().stream())
        .flatMap(
            line ->
                answer
                    .find(plan, Measure.SEASON_LEFT_OVER.of(line.name()))
                    .filter(row -> row.mean() > 0)
                    .map(
                        row ->
                            wording.withInterval(row)
                                + " of "
                                + Titles.inText(wording.titles().crop(line.crop())))
                    .stream())
        .distinct()
        .collect(Collectors.joining(" and "));
  }

  private boolean isSignificant(String plan, String other, String measure) {
    return answer
        .difference(plan, other, measure)
        .or(() -> answer.difference(other, plan, measure))
        .filter(pair -> pair.row().significant())
        .isPresent();
  }

  /** How far one plan is ahead of another, whichever way round the two stand in the table. */
  private Optional<String> lead(String plan, String other, String measure) {
    Optional<DifferenceRow> straight =
        answer.difference(plan, other, measure).map(PlanDifference::row);
    return straight
        .or(
            () ->
                answer
                    .difference(other, plan, measure)
                    .map(PlanDifference::row)
                    .map(VerdictWords::turned))
        .map(row -> told(row));
  }

  static DifferenceRow turned(DifferenceRow r) {
    return new DifferenceRow(
        r.option(),
        r.measure(),
        r.unit(),
        r.optionMean(),
        r.baseMean(),
        -r.difference(),
        -r.high95(),
        -r.low95(),
        -r.highJoint(),
        -r.lowJoint(),
        r.interval(),
        r.significant(),
        r.replicationsNeeded(),
        r.varianceRemoved(),
        r.replications());
  }

  /** {@code +40,000 USD (30,000 to 50,000)}. */
  private String told(DifferenceRow row) {
    if (row.difference() == 0 && !(row.highJoint() > row.lowJoint())) {
      return "no difference";
    }
    return (row.difference() > 0 ? "+" : "")
        + wording.withInterval(row.difference(), row.lowJoint(), row.highJoint(), row.unit())
        + PairWords.ofReplications(row, answer.header());
  }

  private String surest() {
    SeasonAnswer.Verdict verdict = answer.verdict();
    String measure = Measure.SEASON_FINISHED.of();
    boolean never =
        answer.plans().stream().allMatch(plan -> answer.mean(plan.name(), measure) == 0);
    if (never) {
      return "No plan finished all its crops in any year.";
    }
    String first =
        read(verdict.surest())
            + " ("
            + words.finishedIn(verdict.surest(), measure)
            + chance(verdict.surest())
            + ")";
    List<String> like = verdict.surestLike();
    return "Most surely finishes all crops: "
        + first
        + (like.isEmpty() ? "" : "; no significant difference from " + read(like))
        + ".";
  }

  private String read(String plan) {
    return wording.titles().plan(plan);
  }

  private String read(List<String> plans) {
    return plans.stream().map(this::read).collect(Collectors.joining(", "));
  }

  private String chance(String plan) {
    return answer
        .find(plan, Measure.SEASON_FINISHED.of())
        .filter(row -> row.high95() > row.low95())
        .map(
            row ->
                ", a chance of "
                    + wording.fixed(row.low95(), 0, "share")
                    + " to "
                    + wording.fixed(row.high95(), 0, "share")
                    + " %")
        .orElse("");
  }
}
