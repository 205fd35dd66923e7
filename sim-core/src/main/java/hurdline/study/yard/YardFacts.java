package hurdline.study.yard;

import hurdline.answer.Fact;
import hurdline.answer.YardFact;
import hurdline.answer.YardFact.SizesOfTheYard.Why;
import java.util.ArrayList;
import java.util.List;

/** What the sizing of a yard takes for granted beyond what a run does. */
final class YardFacts {
  private static final double HALF_OF_THE_DOUBT = 0.025;

  private final YardUnderStudy yard;
  private final YardAsk ask;
  private final int seasons;

  YardFacts(YardUnderStudy yard, YardAsk ask, int seasons) {
    this.yard = yard;
    this.ask = ask;
    this.seasons = seasons;
  }

  List<Fact> facts() {
    List<Fact> facts = new ArrayList<>();
    facts.add(
        new YardFact.SizesOfTheYard(yard.crop().name(), yard.grown().name(), why(), isShared()));
    facts.add(new YardFact.Overflow(yard.plant().yard().turnAway()));
    facts.add(new YardFact.SeasonQuantiles(seasons, ask.overflow(), needed(1 - ask.overflow())));
    if (yard.plant().money().isPresent()) {
      facts.add(
          new YardFact.MoneyOfTheYard(
              yard.places().stream().anyMatch(place -> place.costPerM2() != 0)));
    }
    ask.acres()
        .ifPresent(share -> facts.add(new YardFact.Acres(seasons, needed(share), ask.carryOver())));
    if (ask.gain()) {
      facts.add(new YardFact.PeakReductions());
    }
    return facts;
  }

  private Why why() {
    if (ask.place().isPresent()) {
      return Why.ASKED;
    }
    if (yard.places().size() == 1) {
      return Why.ONLY_PLACE;
    }
    return yard.grown().costPerM2() > 0 ? Why.LAST_WITH_PRICE : Why.LAST;
  }

  private boolean isShared() {
    return yard.plant().crops().size() > 1
        && yard.places().stream().anyMatch(place -> place.crops().size() != 1);
  }

  /** The quantile of a share p has an upper limit from the least n with pⁿ ≤ 0.025. */
  private static int needed(double share) {
    return (int) Math.ceil(Math.log(HALF_OF_THE_DOUBT) / Math.log(share) - 1e-9);
  }
}
