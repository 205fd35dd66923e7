package hurdline.answer;

/** What a comparison of season plans takes for granted. */
public sealed interface SeasonFact extends Fact {
  /** When a crop counts as finished. */
  record FinishedCrop() implements SeasonFact {}

  /** What crop left over would have brought. */
  record CropLeftOver() implements SeasonFact {}

  /** How the hours of building and machines are divided. */
  record HoursOfTheBuilding() implements SeasonFact {}

  /** How it is found what a changeover costs. */
  record AvoidedChangeovers() implements SeasonFact {}
}
