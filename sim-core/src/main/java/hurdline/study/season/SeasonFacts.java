package hurdline.study.season;

import hurdline.answer.CompareFact;
import hurdline.answer.CompareFact.PairedDifferences.Between;
import hurdline.answer.Fact;
import hurdline.answer.SeasonFact;
import java.util.ArrayList;
import java.util.List;

/** What a comparison of season plans takes for granted beyond what a run does. */
final class SeasonFacts {
  private SeasonFacts() {}

  /**
   * @param plans how many are compared
   * @param avoided whether each was simulated without its changeovers too
   */
  static List<Fact> facts(int plans, boolean avoided) {
    List<Fact> facts = new ArrayList<>();
    facts.add(new CompareFact.PairedDifferences(Between.ALL_PLANS, plans * (plans - 1) / 2));
    facts.add(new SeasonFact.FinishedCrop());
    facts.add(new SeasonFact.CropLeftOver());
    facts.add(new SeasonFact.HoursOfTheBuilding());
    if (avoided) {
      facts.add(new SeasonFact.AvoidedChangeovers());
    }
    return facts;
  }
}
