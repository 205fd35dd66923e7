package hurdline.sample;

import hurdline.answer.ChooseFact;
import hurdline.answer.CompareFact;
import hurdline.answer.CompareFact.PairedDifferences.Between;
import hurdline.answer.CompareFact.YearsOfLife.Next;
import hurdline.answer.Fact;
import hurdline.answer.FollowUpFact;
import hurdline.answer.FollowUpFact.NotIncreased;
import hurdline.answer.GridFact;
import hurdline.answer.RunFact;
import hurdline.answer.RunFact.Group;
import hurdline.answer.SafetyFact;
import hurdline.answer.SeasonFact;
import hurdline.answer.YardFact;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/** Invented facts, one of each kind. */
public final class SampleFacts {
  private SampleFacts() {}

  public static List<Fact> all() {
    return Stream.of(
            ofRuns(),
            ofComparisons(),
            ofFollowUps(),
            ofSeasons(),
            ofYards(),
            ofGrids(),
            ofChoices(),
            cautions(),
            stored())
        .flatMap(List::stream)
        .toList();
  }

  public static List<Fact> ofChoices() {
    return List.of(
        new ChooseFact.OneLeader(0.05, 6, 3),
        new ChooseFact.TwoStages(0.05, 1_240, 20, 6.1034, 48_120, 310),
        new ChooseFact.RareYears(),
        new ChooseFact.LongTails(3),
        new ChooseFact.NewYears(40),
        new ChooseFact.CostOfCapital(0.09),
        new ChooseFact.CostsNotTakenOff(),
        new ChooseFact.Bounds(20),
        new ChooseFact.FiguresOfPlans(true),
        new ChooseFact.OnlyThesePlans());
  }

  public static List<Fact> ofRuns() {
    return List.of(
        new RunFact.Inputs(),
        new RunFact.Horizon(),
        new RunFact.RandomDraws(),
        new RunFact.Replications(1_200, true),
        new RunFact.Aim(
            "money.margin:1%",
            RunFact.Aim.Outcome.NOT_REACHED, 12_345.6, 5_000, "USD", 7_314, 10_000, false),
        new RunFact.AimOutOfReach("money.margin:1%", 40, 4_196_000, 10_000),
        new RunFact.LoanAndTax(0.6, 0.08, 10, 0.25, 7, 2, true),
        new RunFact.OpeningContents(
            List.of(
                new RunFact.OpeningContents.Found(
                    "hurd_bin", "", 2.5, "t", LocalDate.of(2027, 11, 15))),
            List.of(new RunFact.OpeningContents.NotGiven("shed", "tow", "2027-11-08"))),
        new RunFact.EvenFlow(),
        new RunFact.NotModeled(),
        new RunFact.Intervals(
            new Group(
                1_412, List.of("yard.stalk.peak", "mass.stalk.lost", "machine.mill.choke.stops")),
            new Group(0, List.of()),
            new Group(1, List.of("mass.stalk.lost"))));
  }

  public static List<Fact> ofComparisons() {
    return List.of(
        new CompareFact.PairedDifferences(Between.BASE_AND_OPTIONS, 2),
        new CompareFact.AimOfDifferences("money.margin:1%", true),
        new CompareFact.LoanOfOption("bigger_mill", 0.8, 0.07, 5),
        new CompareFact.LoanOfOption("hand", 0, 0, 1),
        new CompareFact.ChangesWithoutCost(List.of("hand", "money.wage=x2")),
        new CompareFact.CalendarNotRepeated(List.of("hired")),
        new CompareFact.LivesStopped(List.of("bigger_mill", "hand")),
        new CompareFact.YearsOfLife(30, false, 1_461, Next.END_TO_END, 1_080, 960),
        new CompareFact.MoneyOverLife(0.0825, true, 0.025, 0.02, 0.035, 0.0125, 2.5));
  }

  public static List<Fact> ofFollowUps() {
    return List.of(
        new FollowUpFact.SelectionOfTheBest(),
        new FollowUpFact.TenthMore(
            List.of(
                new NotIncreased(NotIncreased.Why.MACHINE_WITHOUT_RATE, "scale"),
                new NotIncreased(NotIncreased.Why.SHIFT_WITHOUT_ROOM, "gin_day"))),
        new FollowUpFact.Sensitivity(),
        new FollowUpFact.BreakEvenSearch(0.0001));
  }

  public static List<Fact> ofSeasons() {
    return List.of(
        new CompareFact.PairedDifferences(Between.ALL_PLANS, 3),
        new SeasonFact.FinishedCrop(),
        new SeasonFact.CropLeftOver(),
        new SeasonFact.HoursOfTheBuilding(),
        new SeasonFact.AvoidedChangeovers());
  }

  public static List<Fact> ofYards() {
    return List.of(
        new YardFact.AimWithoutLimit(),
        new YardFact.SizesOfTheYard(
            "stalk", "open", YardFact.SizesOfTheYard.Why.LAST_WITH_PRICE, true),
        new YardFact.Overflow(false),
        new YardFact.SeasonQuantiles(40, 0.0005, 7_377),
        new YardFact.MoneyOfTheYard(true),
        new YardFact.Acres(20, 36, 0),
        new YardFact.PeakReductions());
  }

  public static List<Fact> ofGrids() {
    return List.of(
        new GridFact.CellReplications(1_000),
        new GridFact.OnlyTheseValues(),
        new GridFact.AllPairs(),
        new GridFact.ValueInACell(),
        new GridFact.NoValue(89),
        new GridFact.LeftOut());
  }

  public static List<Fact> cautions() {
    return List.of(
        new SafetyFact.WetBales(List.of("stalk", "bottom_land")),
        new SafetyFact.DampPlaces(List.of("open")),
        new SafetyFact.ShortStops(List.of("mill.choke"), 600),
        new SafetyFact.LockedOutWork(
            List.of(new SafetyFact.StopsOf("mill", List.of("choke", "hammers")))),
        new SafetyFact.SparksAndDust(List.of("mill")),
        new SafetyFact.LongShifts(List.of("gin_night"), 36_000));
  }

  public static List<Fact> stored() {
    return List.of(
        new SafetyFact.StoredInPlace("open", 5_200, "bales", 1_429_000, 160, 7.62),
        new SafetyFact.StoredInPlace("shed", 800, "bales", 219_800, 0, Double.NaN),
        new SafetyFact.StoredInBin("hurd_bin", 62.5, Double.NaN),
        new SafetyFact.StoredInBin("seed_bin", Double.NaN, 12_345.6));
  }
}
