package hurdline.sample;

import hurdline.answer.BottleneckRow;
import hurdline.answer.BreakEvenRow;
import hurdline.answer.CashRow;
import hurdline.answer.CompareAnswer;
import hurdline.answer.CompareAnswer.Option;
import hurdline.answer.DifferenceRow;
import hurdline.answer.FollowUps;
import hurdline.answer.GainRow;
import hurdline.answer.Header;
import hurdline.answer.Increase;
import hurdline.answer.Increase.Kind;
import hurdline.answer.LifeTerms;
import hurdline.answer.MillRow;
import hurdline.answer.MonthRow;
import hurdline.answer.PaybackRow;
import hurdline.answer.PaybackRow.Gaps;
import hurdline.answer.PaybackRow.Quantity;
import hurdline.answer.Replayed;
import hurdline.answer.RunAnswer;
import hurdline.answer.Samples;
import hurdline.answer.Selection;
import hurdline.answer.ServiceLifeRow;
import hurdline.answer.SummaryRow;
import hurdline.answer.TornadoRow;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Invented answers of a comparison, for tests of what is made of them. No figure in here is a
 * result.
 */
public final class SampleCompare {
  private static final double NONE = Double.NaN;
  private static final RunAnswer YEAR = SampleAnswer.year();

  private SampleCompare() {}

  /** Two options, one that pays and one of which it is not sure that it does anything. */
  public static CompareAnswer two() {
    return Draft.of(CompareAnswer.class)
        .with(CompareAnswer::header, YEAR.header())
        .with(CompareAnswer::outline, YEAR.outline())
        .with(
            CompareAnswer::options,
            List.of(
                new Option(
                    "bigger_mill", "75 hp mill <in place> of the 25 hp one", 140_000, 12, 12_000),
                new Option("bigger_mill+hand", "", 152_000, 2.5, 0)))
        .with(CompareAnswer::summary, summaries())
        .with(
            CompareAnswer::differences,
            List.of(
                row("bigger_mill", "mass.stalk.fed", "t", 3_484, 844, 80, true, 3),
                row("bigger_mill", "money.margin", "USD", 167_000, 213_000, 14_000, true, 2),
                row("bigger_mill", "energy.total", "kWh", 0, 0, 0, false, NONE),
                row("bigger_mill+hand", "mass.stalk.fed", "t", 3_484, 4, 20, false, 1_000),
                row("bigger_mill+hand", "money.margin", "USD", 167_000, 0, 0, false, NONE)))
        .with(
            CompareAnswer::holders,
            List.of(
                new BottleneckRow("base", "stalk_line", "mill", 1_100, 0.57, 0.54, 0.61, "student"),
                new BottleneckRow(
                    "base", "stalk_line", "no_bales", 20, 0.01, 0.009, 0.011, "student"),
                new BottleneckRow(
                    "bigger_mill", "stalk_line", "feeder", 1_100, 0.67, 0.65, 0.69, "student"),
                new BottleneckRow(
                    "bigger_mill", "stalk_line", "mill", 100, 0.05, 0.04, 0.06, "student"),
                new BottleneckRow(
                    "bigger_mill+hand", "stalk_line", "feeder", 1_200, 0.8, 0.78, 0.82, "student")))
        .with(CompareAnswer::months, months())
        .with(
            CompareAnswer::mills,
            List.of(
                new MillRow("base", "mill", "coarse", "coarse_hurd", 0.6, 0),
                new MillRow("base", "mill", "fine", "fine_hurd", 0.4, 54.4),
                new MillRow("bigger_mill", "mill", "coarse", "coarse_hurd", 0.6, 0),
                new MillRow("bigger_mill", "mill", "fine", "fine_hurd", 0.4, 54.4)))
        .with(CompareAnswer::payback, payback())
        .with(
            CompareAnswer::cash,
            List.of(
                new CashRow("bigger_mill", 0, "USD", -140_000, -140_000, -140_000, -140_000),
                new CashRow("bigger_mill", 1, "USD", 55_000, 2_000, 60_000, 104_000),
                new CashRow("bigger_mill", 12, "USD", 1_390_000, 1_330_000, 1_385_000, 1_460_000),
                new CashRow("bigger_mill+hand", 0, "USD", 0, 0, 0, 0),
                new CashRow("bigger_mill+hand", 2.5, "USD", 10, -20, 10, 30)))
        .with(CompareAnswer::lives, lives())
        .with(
            CompareAnswer::terms,
            new LifeTerms(362, "yearly", List.of(), 0.09, 40, LifeTerms.Carried.STOCK_ON_HAND))
        .with(
            CompareAnswer::further,
            new FollowUps(
                5,
                Draft.of(Selection.class)
                    .with(Selection::measure, "money.margin")
                    .with(Selection::unit, "USD")
                    .with(Selection::zone, 10_000)
                    .with(Selection::confidence, 0.95)
                    .with(Selection::first, 40)
                    .with(Selection::decided, true)
                    .with(Selection::option, "bigger_mill")
                    .with(
                        Selection::rows,
                        List.of(
                            new Selection.Row("base", 167_000, 40, false),
                            new Selection.Row("bigger_mill", 380_400, 61, true),
                            new Selection.Row("bigger_mill+hand", 366_000, 61, false)))
                    .made(),
                gains(),
                List.of(
                    Draft.of(TornadoRow.class)
                        .with(TornadoRow::option, "bigger_mill")
                        .with(TornadoRow::input, "products.fine.price")
                        .with(TornadoRow::low, 0.8)
                        .with(TornadoRow::high, 1.2)
                        .with(TornadoRow::unit, "x")
                        .with(TornadoRow::netPresentValueAtLow, 900_000)
                        .with(TornadoRow::netPresentValueAtHigh, 1_880_000)
                        .with(TornadoRow::netPresentValue, 1_390_000)
                        .with(TornadoRow::halfWidthAtLow, 41_000)
                        .with(TornadoRow::halfWidthAtHigh, 36_000)
                        .made(),
                    Draft.of(TornadoRow.class)
                        .with(TornadoRow::option, "bigger_mill")
                        .with(TornadoRow::input, "money.wage")
                        .with(TornadoRow::low, 20)
                        .with(TornadoRow::high, 30.5)
                        .with(TornadoRow::unit, "USD/h")
                        .with(TornadoRow::netPresentValueAtLow, 1_400_000)
                        .with(TornadoRow::netPresentValueAtHigh, 1_380_000)
                        .with(TornadoRow::netPresentValue, 1_390_000)
                        .made()),
                List.of(
                    Draft.of(BreakEvenRow.class)
                        .with(BreakEvenRow::option, "bigger_mill")
                        .with(BreakEvenRow::input, "money.crop_prices.stalk")
                        .with(BreakEvenRow::unit, "USD/ton")
                        .with(BreakEvenRow::value, 201.53)
                        .with(BreakEvenRow::from, 42.9)
                        .with(BreakEvenRow::to, 217.5)
                        .with(BreakEvenRow::found, true)
                        .with(BreakEvenRow::inFile, 145)
                        .with(BreakEvenRow::netPresentValue, 1_390_000)
                        .with(BreakEvenRow::low95, 198.2)
                        .with(BreakEvenRow::high95, 204.9)
                        .made(),
                    Draft.of(BreakEvenRow.class)
                        .with(BreakEvenRow::option, "bigger_mill")
                        .with(BreakEvenRow::input, "products.*.price")
                        .with(BreakEvenRow::unit, "x")
                        .with(BreakEvenRow::from, 0.0585)
                        .with(BreakEvenRow::to, 17.0859375)
                        .with(BreakEvenRow::inFile, 1)
                        .with(BreakEvenRow::netPresentValue, 1_390_000)
                        .made())))
        .with(
            CompareAnswer::assumptions,
            Stream.concat(SampleFacts.ofComparisons().stream(), SampleFacts.ofFollowUps().stream())
                .toList())
        .with(CompareAnswer::cautions, YEAR.cautions())
        .with(CompareAnswer::warnings, YEAR.warnings())
        .with(CompareAnswer::samples, new Replayed(List.of(samples(1), samples(2), samples(NONE))))
        .made();
  }

  /** {@link #two()} stopped after seven replications and without money. */
  public static CompareAnswer stopped() {
    CompareAnswer of = two();
    Header header =
        Draft.from(of.header())
            .with(Header::changes, List.of("calendar.to=2027-06-01"))
            .with(Header::replications, 7)
            .with(Header::stopped, true)
            .with(Header::currency, "")
            .made();
    return Draft.from(of)
        .with(CompareAnswer::header, header)
        .with(
            CompareAnswer::differences,
            of.differences().stream()
                .filter(row -> !row.unit().equals("USD"))
                .map(row -> from(row, 7))
                .toList())
        .with(CompareAnswer::months, List.of())
        .with(CompareAnswer::mills, List.of())
        .with(CompareAnswer::payback, List.of())
        .with(CompareAnswer::cash, List.of())
        .with(CompareAnswer::lives, List.of())
        .with(CompareAnswer::terms, LifeTerms.none())
        .with(CompareAnswer::further, FollowUps.nothing())
        .made();
  }

  private static DifferenceRow from(DifferenceRow r, int replications) {
    return Draft.from(r).with(DifferenceRow::replications, replications).made();
  }

  /** In its third month the mill of the option ran nearly empty. */
  public static CompareAnswer idleMill() {
    CompareAnswer of = two();
    List<MonthRow> months = new ArrayList<>(of.months());
    month(months, "bigger_mill", "2027-03", "machine.mill.screen.coarse.mass_in", "t", 0);
    month(months, "bigger_mill", "2027-03", "machine.mill.screen.coarse.energy", "kWh", 0);
    month(months, "bigger_mill", "2027-03", "machine.mill.screen.fine.mass_in", "t", 4);
    month(months, "bigger_mill", "2027-03", "machine.mill.screen.fine.energy", "kWh", 2_500);
    return Draft.from(of).with(CompareAnswer::months, months).made();
  }

  /** {@link #two()} with other worths, lives and what they rest on. */
  public static CompareAnswer with(
      List<PaybackRow> payback, List<ServiceLifeRow> lives, LifeTerms terms) {
    CompareAnswer of = two();
    return Draft.from(of)
        .with(CompareAnswer::payback, payback)
        .with(CompareAnswer::cash, List.of())
        .with(CompareAnswer::lives, lives)
        .with(CompareAnswer::terms, terms)
        .with(CompareAnswer::further, FollowUps.nothing())
        .made();
  }

  /** {@link #two()} with other inputs put to their ends. */
  public static CompareAnswer with(List<TornadoRow> tornado) {
    CompareAnswer of = two();
    FollowUps further = new FollowUps(NONE, Selection.none(), List.of(), tornado, List.of());
    return Draft.from(of).with(CompareAnswer::further, further).made();
  }

  private static Samples samples(double value) {
    return new Samples(
        List.of(new Samples.Measured("mass.stalk.fed", "t")), new double[][] {{value}, {3}});
  }

  private static SummaryRow summary(String option, double mean) {
    return Draft.of(SummaryRow.class)
        .with(SummaryRow::option, option)
        .with(SummaryRow::measure, "mass.stalk.fed")
        .with(SummaryRow::unit, "t")
        .with(SummaryRow::mean, mean)
        .with(SummaryRow::low95, mean - 9)
        .with(SummaryRow::high95, mean + 9)
        .with(SummaryRow::sd, 20)
        .with(SummaryRow::p05, mean - 30)
        .with(SummaryRow::p50, mean)
        .with(SummaryRow::p95, mean + 30)
        .with(SummaryRow::least, mean - 40)
        .with(SummaryRow::most, mean + 40)
        .with(SummaryRow::replications, 40)
        .with(SummaryRow::interval, "student")
        .made();
  }

  private static DifferenceRow row(
      String option,
      String measure,
      String unit,
      double base,
      double by,
      double half,
      boolean apart,
      double needed) {
    return Draft.of(DifferenceRow.class)
        .with(DifferenceRow::option, option)
        .with(DifferenceRow::measure, measure)
        .with(DifferenceRow::unit, unit)
        .with(DifferenceRow::baseMean, base)
        .with(DifferenceRow::optionMean, base + by)
        .with(DifferenceRow::difference, by)
        .with(DifferenceRow::low95, by - 0.8 * half)
        .with(DifferenceRow::high95, by + 0.8 * half)
        .with(DifferenceRow::lowJoint, by - half)
        .with(DifferenceRow::highJoint, by + half)
        .with(DifferenceRow::interval, "student")
        .with(DifferenceRow::significant, apart)
        .with(DifferenceRow::replicationsNeeded, needed)
        .with(DifferenceRow::varianceRemoved, half == 0 ? NONE : 0.82)
        .with(DifferenceRow::replications, 40)
        .made();
  }

  private static List<PaybackRow> payback() {
    List<PaybackRow> rows = new ArrayList<>();
    String mill = "bigger_mill";
    rows.add(
        Draft.of(PaybackRow.class)
            .with(PaybackRow::option, mill)
            .with(PaybackRow::quantity, Quantity.NET_PRESENT_VALUE)
            .with(PaybackRow::unit, "USD")
            .with(PaybackRow::mean, 1_390_000)
            .with(PaybackRow::low95, 1_300_000)
            .with(PaybackRow::high95, 1_480_000)
            .with(PaybackRow::p05, 1_330_000)
            .with(PaybackRow::p50, 1_385_000)
            .with(PaybackRow::p95, 1_460_000)
            .with(PaybackRow::gaps, Gaps.none(40))
            .made());
    rows.add(
        Draft.of(PaybackRow.class)
            .with(PaybackRow::option, mill)
            .with(PaybackRow::quantity, Quantity.INTERNAL_RATE_OF_RETURN)
            .with(PaybackRow::unit, "share")
            .with(PaybackRow::gaps, new Gaps(40, 2, 0, NONE, NONE))
            .made());
    rows.add(
        Draft.of(PaybackRow.class)
            .with(PaybackRow::option, mill)
            .with(PaybackRow::quantity, Quantity.SIMPLE_PAYBACK)
            .with(PaybackRow::unit, "yr")
            .with(PaybackRow::mean, 0.68)
            .with(PaybackRow::low95, 0.36)
            .with(PaybackRow::high95, 1.0)
            .with(PaybackRow::p05, 0.53)
            .with(PaybackRow::p50, 0.64)
            .with(PaybackRow::p95, 0.9)
            .with(PaybackRow::gaps, Gaps.none(40))
            .made());
    rows.add(
        Draft.of(PaybackRow.class)
            .with(PaybackRow::option, mill)
            .with(PaybackRow::quantity, Quantity.DISCOUNTED_PAYBACK)
            .with(PaybackRow::unit, "yr")
            .with(PaybackRow::p05, 0.57)
            .with(PaybackRow::p50, 0.7)
            .with(PaybackRow::gaps, new Gaps(40, 3, 0, NONE, NONE))
            .made());
    rows.add(
        Draft.of(PaybackRow.class)
            .with(PaybackRow::option, mill)
            .with(PaybackRow::quantity, Quantity.CHANCE_OF_PAYBACK)
            .with(PaybackRow::unit, "share")
            .with(PaybackRow::mean, 1)
            .with(PaybackRow::low95, 0.91)
            .with(PaybackRow::high95, 1)
            .with(PaybackRow::gaps, Gaps.none(40))
            .made());
    rows.add(
        Draft.of(PaybackRow.class)
            .with(PaybackRow::option, mill)
            .with(PaybackRow::quantity, Quantity.CHANCE_OF_LOSS)
            .with(PaybackRow::unit, "share")
            .with(PaybackRow::mean, 0.05)
            .with(PaybackRow::low95, 0.01)
            .with(PaybackRow::high95, 0.17)
            .with(PaybackRow::gaps, Gaps.none(40))
            .made());
    rows.add(
        Draft.of(PaybackRow.class)
            .with(PaybackRow::option, mill)
            .with(PaybackRow::quantity, Quantity.ADDED_IN_FIRST_YEAR)
            .with(PaybackRow::unit, "USD")
            .with(PaybackRow::mean, 213_000)
            .with(PaybackRow::low95, 205_000)
            .with(PaybackRow::high95, 221_000)
            .with(PaybackRow::p05, 180_000)
            .with(PaybackRow::p50, 212_000)
            .with(PaybackRow::p95, 240_000)
            .with(PaybackRow::gaps, Gaps.none(40))
            .made());
    rows.add(
        Draft.of(PaybackRow.class)
            .with(PaybackRow::option, mill)
            .with(PaybackRow::quantity, Quantity.ADDED_IN_EACH_LATER_YEAR)
            .with(PaybackRow::unit, "USD")
            .with(PaybackRow::mean, 190_000)
            .with(PaybackRow::low95, 180_000)
            .with(PaybackRow::high95, 200_000)
            .with(PaybackRow::p05, 170_000)
            .with(PaybackRow::p50, 191_000)
            .with(PaybackRow::p95, 210_000)
            .with(PaybackRow::gaps, Gaps.none(40))
            .made());
    String both = "bigger_mill+hand";
    rows.add(
        Draft.of(PaybackRow.class)
            .with(PaybackRow::option, both)
            .with(PaybackRow::quantity, Quantity.NET_PRESENT_VALUE)
            .with(PaybackRow::unit, "USD")
            .with(PaybackRow::mean, 10)
            .with(PaybackRow::low95, -5)
            .with(PaybackRow::high95, 25)
            .with(PaybackRow::p05, -20)
            .with(PaybackRow::p50, 10)
            .with(PaybackRow::p95, 30)
            .with(PaybackRow::gaps, Gaps.none(2))
            .made());
    rows.add(
        Draft.of(PaybackRow.class)
            .with(PaybackRow::option, both)
            .with(PaybackRow::quantity, Quantity.CHANCE_OF_LOSS)
            .with(PaybackRow::unit, "share")
            .with(PaybackRow::mean, 0.5)
            .with(PaybackRow::low95, 0.01)
            .with(PaybackRow::high95, 0.99)
            .with(PaybackRow::gaps, Gaps.none(2))
            .made());
    return rows;
  }

  private static List<SummaryRow> summaries() {
    List<SummaryRow> rows = new ArrayList<>();
    rows.add(summary("base", 2_000));
    mill(rows, "base", 900, 5_400, 300, 6_900);
    rows.add(summary("bigger_mill", 2_400));
    mill(rows, "bigger_mill", 1_200, 7_300, 410, 9_500);
    rows.add(summary("bigger_mill+hand", 2_004));
    return rows;
  }

  private static void mill(
      List<SummaryRow> rows,
      String option,
      double coarse,
      double coarseKwh,
      double fine,
      double fineKwh) {
    rows.add(known(option, "machine.mill.screen.coarse.hours", "h", 800));
    rows.add(known(option, "machine.mill.screen.coarse.mass_in", "t", coarse));
    rows.add(known(option, "machine.mill.screen.coarse.energy", "kWh", coarseKwh));
    rows.add(known(option, "machine.mill.screen.fine.hours", "h", 700));
    rows.add(known(option, "machine.mill.screen.fine.mass_in", "t", fine));
    rows.add(known(option, "machine.mill.screen.fine.energy", "kWh", fineKwh));
    rows.add(known(option, "machine.mill.screen_changes", "count", 31));
    rows.add(known(option, "product.fine_hurd.mass", "t", fine));
    rows.add(known(option, "product.fine_hurd.late_days", "d", 3));
    rows.add(known(option, "money.demand", "USD", 40 * coarse));
  }

  private static SummaryRow known(String option, String measure, String unit, double mean) {
    return Draft.of(SummaryRow.class)
        .with(SummaryRow::option, option)
        .with(SummaryRow::measure, measure)
        .with(SummaryRow::unit, unit)
        .each(
            mean,
            SummaryRow::mean,
            SummaryRow::p05,
            SummaryRow::p50,
            SummaryRow::p95,
            SummaryRow::least,
            SummaryRow::most)
        .with(SummaryRow::low95, 0.98 * mean)
        .with(SummaryRow::high95, 1.02 * mean)
        .with(SummaryRow::sd, mean / 10)
        .with(SummaryRow::replications, 40)
        .with(SummaryRow::interval, "student")
        .made();
  }

  private static List<MonthRow> months() {
    List<MonthRow> rows = new ArrayList<>();
    for (String option : List.of("base", "bigger_mill")) {
      double more = option.equals("base") ? 1 : 1.2;
      for (String month : List.of("2027-01", "2027-02")) {
        month(rows, option, month, "energy.peak", "kW", 210 * more);
        month(rows, option, month, "money.demand", "USD", 3_570 * more);
        month(
            rows,
            option,
            month,
            "machine.mill.screen.coarse.mass_in",
            "t",
            month.endsWith("1") ? 70 : 0);
        month(
            rows,
            option,
            month,
            "machine.mill.screen.coarse.energy",
            "kWh",
            month.endsWith("1") ? 420 * more : 0);
        month(
            rows,
            option,
            month,
            "machine.mill.screen.fine.mass_in",
            "t",
            month.endsWith("1") ? 30 : 0);
        month(
            rows,
            option,
            month,
            "machine.mill.screen.fine.energy",
            "kWh",
            month.endsWith("1") ? 690 * more : 0);
      }
    }
    return rows;
  }

  private static void month(
      List<MonthRow> rows, String option, String month, String measure, String unit, double mean) {
    rows.add(new MonthRow(option, month, measure, unit, mean, mean - 1, mean, mean + 1));
  }

  private static List<ServiceLifeRow> lives() {
    List<ServiceLifeRow> rows = new ArrayList<>();
    for (int life = 1; life <= 40; life++) {
      boolean loses = life > 38;
      rows.add(
          new ServiceLifeRow(
              "bigger_mill",
              life,
              loses ? -4_000 : 1_330_000 + 3_000 * life,
              loses ? NONE : 1.5,
              life == 1 ? 0.1 : NONE,
              0.53 + 0.01 * life,
              life > 37 ? NONE : 0.57 + 0.01 * life));
    }
    rows.add(new ServiceLifeRow("bigger_mill+hand", 1, 10, NONE, NONE, NONE, NONE));
    rows.add(new ServiceLifeRow("bigger_mill+hand", 2, -5, NONE, NONE, NONE, NONE));
    return rows;
  }

  private static List<GainRow> gains() {
    List<GainRow> rows = new ArrayList<>();
    gain(rows, "feeder", Increase.tenth(Kind.RATE), 20, 12, 9_000, 8_000);
    gain(rows, "mill", Increase.tenth(Kind.POWER), 190, 14, 52_000, 6_000);
    gain(rows, "hurd_bin", Increase.tenth(Kind.ROOM), 2, 9, -300, 700);
    gain(rows, "resource.bag_hand", new Increase(Kind.COUNT, 1, 1), 64, 13, 21_000, 5_000);
    gain(rows, "shift.day", new Increase(Kind.LONGER_FROM, 3_060, 18_540), 150, 30, -2_000, 9_000);
    return rows;
  }

  private static void gain(
      List<GainRow> rows,
      String what,
      Increase more,
      double fed,
      double fedHalf,
      double margin,
      double marginHalf) {
    rows.add(
        new GainRow(
            what,
            more,
            "mass.stalk.fed",
            "t",
            fed,
            fed - fedHalf,
            fed + fedHalf,
            "student",
            fed > fedHalf));
    rows.add(
        new GainRow(
            what,
            more,
            "money.margin",
            "USD",
            margin,
            margin - marginHalf,
            margin + marginHalf,
            "student",
            margin > marginHalf));
  }
}
