package hurdline.study.season;

import hurdline.answer.PlanDifference;
import hurdline.answer.SeasonAnswer;
import hurdline.measure.Measure;
import hurdline.statistics.SignTest;
import hurdline.study.replicate.ReplicationResults;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/** Says which plan is best, and from which others it cannot be told. */
final class PlanRanking {
  private static final double ERROR = 0.05;

  private final List<String> names;
  private final List<ReplicationResults> figures;
  private final List<PlanDifference> differences;

  PlanRanking(
      List<String> names, List<ReplicationResults> figures, List<PlanDifference> differences) {
    this.names = names;
    this.figures = figures;
    this.differences = differences;
  }

  SeasonAnswer.Verdict verdict() {
    boolean money = figures.stream().allMatch(of -> of.has(Measure.MONEY_MARGIN.of()));
    int margin = best(Measure.MONEY_MARGIN.of());
    int surest = best(Measure.SEASON_FINISHED.of());
    return new SeasonAnswer.Verdict(
        money ? names.get(margin) : "",
        money ? likeInMargin(margin) : List.of(),
        money ? lessForgone(margin) : "",
        names.get(surest),
        likeInFinishing(surest));
  }

  /** The plan with the highest mean; of equal ones the first. */
  private int best(String measure) {
    int best = 0;
    for (int at = 1; at < figures.size(); at++) {
      best = figures.get(at).mean(measure) > figures.get(best).mean(measure) ? at : best;
    }
    return best;
  }

  /**
   * The plan that is best once the margin forgone on crop left over is taken off; the plan with the
   * best margin itself where no other is ahead of it by more than rounding.
   */
  private String lessForgone(int margin) {
    String measure = Measure.MONEY_MARGIN_LESS_FORGONE.of();
    if (!isKnown(margin, measure)) {
      return "";
    }
    int best = margin;
    for (int at = 0; at < figures.size(); at++) {
      boolean ahead =
          isKnown(at, measure) && figures.get(at).mean(measure) > figures.get(best).mean(measure);
      best = ahead && differs(names.get(at), names.get(margin), measure) ? at : best;
    }
    return names.get(best);
  }

  private boolean isKnown(int plan, String measure) {
    return Arrays.stream(figures.get(plan).series(measure)).noneMatch(Double::isNaN);
  }

  /** Differences within rounding are 0 in the pairs. */
  private boolean differs(String one, String other, String measure) {
    return differences.stream()
        .filter(pair -> pair.row().measure().equals(measure))
        .filter(pair -> Set.of(pair.plan(), pair.against()).equals(Set.of(one, other)))
        .anyMatch(pair -> pair.row().difference() != 0);
  }

  private List<String> likeInMargin(int best) {
    List<String> like = new ArrayList<>();
    for (PlanDifference pair : differences) {
      boolean ofBest =
          pair.plan().equals(names.get(best)) || pair.against().equals(names.get(best));
      if (ofBest
          && pair.row().measure().equals(Measure.MONEY_MARGIN.of())
          && !pair.row().significant()) {
        like.add(pair.plan().equals(names.get(best)) ? pair.against() : pair.plan());
      }
    }
    return like;
  }

  /** By the exact sign test, each pair at a level that lets all hold together. */
  private List<String> likeInFinishing(int best) {
    int pairs = names.size() * (names.size() - 1) / 2;
    double[] ofBest = figures.get(best).series(Measure.SEASON_FINISHED.of());
    List<String> like = new ArrayList<>();
    for (int at = 0; at < names.size(); at++) {
      double[] other = figures.get(at).series(Measure.SEASON_FINISHED.of());
      int onlyBest = 0;
      int onlyOther = 0;
      for (int k = 0; k < other.length; k++) {
        onlyBest += ofBest[k] > other[k] ? 1 : 0;
        onlyOther += other[k] > ofBest[k] ? 1 : 0;
      }
      if (at != best && SignTest.twoSided(onlyBest, onlyOther) > ERROR / pairs) {
        like.add(names.get(at));
      }
    }
    return like;
  }
}
