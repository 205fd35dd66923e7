package hurdline.text;

import hurdline.answer.DifferenceRow;
import hurdline.answer.Outline;
import hurdline.answer.PlanDifference;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.SummaryRow;
import hurdline.answer.Titles;
import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Which season plan earns the most and which finishes its crops, in two to five sentences that one
 * could say aloud.
 */
public final class SeasonHeadline {
  private final SeasonAnswer answer;
  private final SeasonAnswer.Verdict verdict;
  private final Wording wording;
  private final Spoken spoken;
  private final SpokenNames names;

  public SeasonHeadline(SeasonAnswer answer, Wording wording) {
    this.answer = answer;
    this.verdict = answer.verdict();
    this.wording = wording;
    this.spoken = new Spoken(wording);
    this.names = new SpokenNames(answer.outline().titles());
  }

  public List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    if (answer.plans().size() == 1) {
      sentences.addAll(ofOne(answer.plans().get(0).name()));
    } else {
      if (!verdict.margin().isEmpty()) {
        sentences.add(best());
        forgone().ifPresent(sentences::add);
      }
      sentences.add(surest());
    }
    if (answer.header().replications() == 1) {
      sentences.add("This is one simulated year, and another may differ much");
    }
    return sentences.stream().map(sentence -> SpokenNames.upper(sentence) + ".").toList();
  }

  private List<String> ofOne(String plan) {
    List<String> sentences = new ArrayList<>();
    answer
        .find(plan, Measure.MONEY_MARGIN.of())
        .ifPresent(
            row ->
                sentences.add(
                    new EarningWords(spoken)
                        .earns(names.plan(plan), row, answer.header().replications())));
    String left = leftOver(plan);
    sentences.add(
        names.plan(plan) + " " + (left.isEmpty() ? "leaves no crop over" : "leaves " + left));
    sentences.add(
        names.plan(plan) + " finishes all crops in " + finished(plan) + " simulated years");
    return sentences;
  }

  /** The plan that earns the most and by how much; that it leaves crop over is said with it. */
  private String best() {
    String best = verdict.margin();
    String left = leftOver(best);
    String leaves = left.isEmpty() ? "" : "; it leaves " + left;
    String second = second(Measure.MONEY_MARGIN, best);
    Optional<DifferenceRow> lead = lead(best, second, Measure.MONEY_MARGIN);
    if (!verdict.marginLike().isEmpty()) {
      return "which plan earns the most is not decided between "
          + CapacityWords.and(
              Stream.concat(Stream.of(best), verdict.marginLike().stream())
                  .map(names::plan)
                  .toList())
          + needed(best)
          + (left.isEmpty() ? "" : "; " + names.plan(best) + " leaves " + left);
    }
    return names.plan(best)
        + " earns the most"
        + lead.map(row -> ": " + amount(row) + " more than " + names.plan(second) + off(row))
            .orElse("")
        + leaves;
  }

  /**
   * The replications that would tell the plan with the highest mean from those that may be as good.
   */
  private String needed(String best) {
    double most =
        verdict.marginLike().stream()
            .flatMap(plan -> lead(best, plan, Measure.MONEY_MARGIN).stream())
            .mapToDouble(DifferenceRow::replicationsNeeded)
            .filter(count -> count > 0)
            .max()
            .orElse(Double.NaN);
    int count = answer.header().replications();
    return count < 2
        ? ""
        : Double.isNaN(most)
            ? "; no difference is seen at " + count + " replications"
            : "; " + spoken.wouldDecide(most, count, "replications", "which");
  }

  /**
   * What becomes of that once the crop left over counts, where that names another plan or is not
   * known.
   */
  private Optional<String> forgone() {
    String best = verdict.margin();
    String other = verdict.lessForgone();
    if (other.equals(best)) {
      return Optional.empty();
    }
    if (other.isEmpty()) {
      return Optional.of(
          "what the crop that "
              + names.plan(best)
              + " leaves would have earned is not known, so it cannot be named the best");
    }
    return lead(other, best, Measure.MONEY_MARGIN_LESS_FORGONE)
        .map(
            row ->
                "with what that crop would have earned taken off, "
                    + names.plan(other)
                    + " is ahead by "
                    + amount(row)
                    + off(row)
                    + (row.significant()
                        ? ""
                        : "; that is not statistically significant" + enough(row)));
  }

  private String enough(DifferenceRow row) {
    return row.replicationsNeeded() > 0
        ? ", and "
            + spoken.about(row.replicationsNeeded())
            + " replications would show a difference of this size"
        : "";
  }

  private String amount(DifferenceRow row) {
    return spoken.amount(row.difference(), row.lowJoint(), row.highJoint(), row.unit());
  }

  private String off(DifferenceRow row) {
    return spoken.giveOrTake(row.difference(), row.lowJoint(), row.highJoint(), row.unit());
  }

  /** The plan with the next highest mean. */
  private String second(Measure measure, String best) {
    return answer.plans().stream()
        .map(SeasonAnswer.Plan::name)
        .filter(plan -> !plan.equals(best))
        .max(Comparator.comparingDouble(plan -> answer.mean(plan, measure.of())))
        .orElse(best);
  }

  private Optional<DifferenceRow> lead(String plan, String other, Measure measure) {
    return answer
        .difference(plan, other, measure.of())
        .map(PlanDifference::row)
        .or(
            () ->
                answer
                    .difference(other, plan, measure.of())
                    .map(PlanDifference::row)
                    .map(VerdictWords::turned));
  }

  private String surest() {
    String measure = Measure.SEASON_FINISHED.of();
    if (answer.plans().stream().allMatch(plan -> answer.mean(plan.name(), measure) == 0)) {
      return "no plan finishes all its crops in any simulated year";
    }
    String surest = verdict.surest();
    boolean all = answer.plans().stream().allMatch(plan -> answer.mean(plan.name(), measure) == 1);
    if (all) {
      return "every plan finishes all its crops in every simulated year";
    }
    String like =
        verdict.surestLike().isEmpty()
            ? ""
            : ", not significantly more often than "
                + CapacityWords.and(verdict.surestLike().stream().map(names::plan).toList());
    return names.plan(surest)
        + " most surely finishes all crops: in "
        + finished(surest)
        + " simulated years"
        + like;
  }

  private String finished(String plan) {
    return new SeasonWords(answer, wording).outOfAll(plan, Measure.SEASON_FINISHED.of());
  }

  /** {@code about 2,000 bales of stalk}, empty where nothing is left. */
  private String leftOver(String plan) {
    return CapacityWords.and(
        answer.plans().stream()
            .filter(each -> each.name().equals(plan))
            .flatMap(each -> each.outline().lines().stream())
            .flatMap(line -> left(plan, line).stream())
            .distinct()
            .toList());
  }

  private Optional<String> left(String plan, Outline.Line line) {
    return answer
        .find(plan, Measure.SEASON_LEFT_OVER.of(line.name()))
        .filter(row -> row.mean() > 0)
        .map(row -> about(row) + " of " + Titles.inText(wording.titles().crop(line.crop())));
  }

  private String about(SummaryRow row) {
    return spoken.about(row.mean(), row.low95(), row.high95(), row.unit());
  }
}
