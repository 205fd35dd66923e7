package hurdline.sample;

import hurdline.answer.AdjustedRow;
import hurdline.answer.BottleneckRow;
import hurdline.answer.Capacity;
import hurdline.answer.CheckAnswer;
import hurdline.answer.Header;
import hurdline.answer.LineFlow;
import hurdline.answer.LineFlow.Edge;
import hurdline.answer.LineFlow.Kind;
import hurdline.answer.LineFlow.Node;
import hurdline.answer.MachineTime;
import hurdline.answer.MonthRow;
import hurdline.answer.Outline;
import hurdline.answer.RunAnswer;
import hurdline.answer.Samples;
import hurdline.answer.SummaryRow;
import hurdline.answer.Titles;
import hurdline.answer.WeekRow;
import hurdline.answer.YardLevelRow;
import hurdline.measure.Measure;
import hurdline.measure.State;
import hurdline.problem.LocatedProblem;
import hurdline.problem.LocatedProblem.Severity;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;

/**
 * Invented answers of the shape that a study gives, for tests of what is made of them. No figure in
 * here is a result.
 */
public final class SampleAnswer {
  private static final LocalDate FROM = LocalDate.of(2027, 1, 4);
  private static final LocalDate TO = LocalDate.of(2027, 12, 31);
  private static final List<String> STALK_MACHINES =
      List.of(
          "feeder",
          "incline_1",
          "stalk_saw",
          "incline_2",
          "lint_cleaner",
          "fiber_press",
          "tow_press",
          "mill",
          "hurd_bagger",
          "dust_cyclone",
          "stalk_fans");
  private static final List<String> STALK_PRODUCTS =
      List.of(
          "long_fiber_bales",
          "short_fiber_bales",
          "coarse_hurd",
          "medium_hurd",
          "fine_hurd",
          "dust");
  private static final List<String> COTTON_MACHINES =
      List.of(
          "feeder", "drier", "incline_1", "gin_stands", "lint_cleaner", "bale_press", "gin_fans");
  private static final List<String> COTTON_PRODUCTS = List.of("trash", "cottonseed", "lint");

  private SampleAnswer() {}

  /** Two lines, a year, every chart filled. */
  public static RunAnswer year() {
    List<SummaryRow> summary = summary();
    return Draft.of(RunAnswer.class)
        .with(RunAnswer::header, header())
        .with(RunAnswer::outline, outline())
        .with(RunAnswer::summary, summary)
        .with(RunAnswer::holders, holders())
        .with(RunAnswer::machines, machines())
        .with(RunAnswer::weeks, weeks())
        .with(RunAnswer::months, months())
        .with(RunAnswer::levels, levels())
        .with(RunAnswer::flows, List.of(stalkFlow(), cottonFlow()))
        .with(
            RunAnswer::capacity,
            new Capacity(List.of(capacity("mill", "mill")), List.of(orders(0.31))))
        .with(RunAnswer::assumptions, SampleFacts.ofRuns())
        .with(RunAnswer::cautions, SampleFacts.cautions())
        .with(RunAnswer::samples, samples(summary))
        .made();
  }

  /** {@link #year()} whose stalk line these limit. */
  public static RunAnswer limitedBy(List<BottleneckRow> holders) {
    return of(year().summary(), holders);
  }

  /** {@link #year()} with other figures. */
  public static RunAnswer with(List<SummaryRow> summary) {
    return of(summary, year().holders());
  }

  private static RunAnswer of(List<SummaryRow> summary, List<BottleneckRow> holders) {
    RunAnswer year = year();
    return Draft.from(year)
        .with(RunAnswer::summary, summary)
        .with(RunAnswer::holders, holders)
        .made();
  }

  /**
   * {@link #year()} whose years brought more crop than the mean year; what is left over follows it,
   * the margin hardly.
   */
  public static RunAnswer richYears() {
    RunAnswer year = year();
    List<SummaryRow> summary = new ArrayList<>(year.summary());
    summary.add(
        Draft.of(SummaryRow.class)
            .with(SummaryRow::option, "base")
            .with(SummaryRow::measure, "mass.stalk.drawn_over_mean")
            .with(SummaryRow::unit, "share")
            .with(SummaryRow::mean, 1.0193)
            .with(SummaryRow::low95, 0.976)
            .with(SummaryRow::high95, 1.063)
            .with(SummaryRow::sd, 0.1364)
            .with(SummaryRow::p05, 0.84)
            .with(SummaryRow::p50, 1)
            .with(SummaryRow::p95, 1.23)
            .with(SummaryRow::least, 0.83)
            .with(SummaryRow::most, 1.29)
            .with(SummaryRow::replications, 40)
            .with(SummaryRow::interval, "student")
            .made());
    return Draft.from(year)
        .with(RunAnswer::summary, summary)
        .with(
            RunAnswer::adjusted,
            List.of(
                Draft.of(AdjustedRow.class)
                    .with(AdjustedRow::option, "base")
                    .with(AdjustedRow::measure, "season.stalk_line.left_over")
                    .with(AdjustedRow::unit, "bales")
                    .with(AdjustedRow::crop, "stalk")
                    .with(AdjustedRow::mean, 2420)
                    .with(AdjustedRow::error, 65)
                    .with(AdjustedRow::adjusted, 2302.8)
                    .with(AdjustedRow::adjustedError, 18.5)
                    .with(AdjustedRow::low95, 2265.3)
                    .with(AdjustedRow::high95, 2340.3)
                    .made(),
                Draft.of(AdjustedRow.class)
                    .with(AdjustedRow::option, "base")
                    .with(AdjustedRow::measure, "money.margin")
                    .with(AdjustedRow::unit, "USD")
                    .with(AdjustedRow::crop, "stalk")
                    .with(AdjustedRow::mean, 167_000)
                    .with(AdjustedRow::error, 1700)
                    .with(AdjustedRow::adjusted, 168_000)
                    .with(AdjustedRow::adjustedError, 1690)
                    .with(AdjustedRow::low95, 164_600)
                    .with(AdjustedRow::high95, 171_400)
                    .made()))
        .made();
  }

  /** One line, no money, no yard, one replication: everything that may be missing is. */
  public static RunAnswer bare() {
    Header header =
        Draft.of(Header.class)
            .with(Header::plant, "Bare & <plain>")
            .with(Header::file, "bare.yaml")
            .with(Header::contentHash, "00ff")
            .with(Header::version, "0.1.0")
            .with(Header::option, "base")
            .with(Header::changes, List.of("machines.mill.power=50 hp"))
            .with(Header::seed, 7)
            .with(Header::replicationsAsked, 1)
            .with(Header::replications, 1)
            .with(Header::from, FROM)
            .with(Header::to, FROM.plusDays(6))
            .made();
    Outline outline =
        new Outline(
            List.of(new Outline.Crop("stalk", "bales")),
            List.of(new Outline.Line("only", "stalk", "feeder", List.of("feeder"), List.of())),
            List.of(),
            List.of(),
            Titles.none());
    SummaryRow fed =
        Draft.of(SummaryRow.class)
            .with(SummaryRow::option, "base")
            .with(SummaryRow::measure, Measure.MASS_FED.of("stalk"))
            .with(SummaryRow::unit, "t")
            .each(
                88,
                SummaryRow::mean,
                SummaryRow::p05,
                SummaryRow::p50,
                SummaryRow::p95,
                SummaryRow::least,
                SummaryRow::most)
            .with(SummaryRow::replications, 1)
            .made();
    BottleneckRow holder =
        new BottleneckRow("base", "only", "feeder", 44, 1, Double.NaN, Double.NaN, "");
    MachineTime time =
        new MachineTime(
            "feeder", "bale-feeder", List.of(0.0, 0.0, 124.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 44.0));
    return Draft.of(RunAnswer.class)
        .with(RunAnswer::header, header)
        .with(RunAnswer::outline, outline)
        .with(RunAnswer::summary, List.of(fed))
        .with(RunAnswer::holders, List.of(holder))
        .with(RunAnswer::machines, List.of(time))
        .with(
            RunAnswer::samples,
            new Samples(List.of(new Samples.Measured(fed.measure(), "t")), new double[][] {{88}}))
        .made();
  }

  public static CheckAnswer paper() {
    return new CheckAnswer(
        header(),
        outline(),
        new Capacity(List.of(capacity("hurd_bagger.change", "hurd_bagger")), List.of(orders(1.4))),
        List.of(),
        List.of(
            new LocatedProblem(
                Severity.WARNING,
                "sweetgum-bend.yaml",
                12,
                3,
                "resources.loader.count",
                "is 0 and never serves",
                "expected at least 1",
                "",
                "")));
  }

  private static Capacity.Line capacity(String cause, String freed) {
    return new Capacity.Line(
        "stalk_line",
        "stalk",
        "feeder",
        3.6,
        1840,
        new Capacity.Limits(
            new Capacity.Limit(1.93, List.of("mill"), ""),
            new Capacity.Limit(1.71, List.of("mill", "hurd_bagger"), ""),
            List.of(
                new Capacity.Next(
                    cause,
                    List.of(freed),
                    new Capacity.Limit(3.6, List.of("feeder"), ""),
                    new Capacity.Limit(2.4, List.of(), "bag_hand")))),
        List.of(
            new Capacity.Machine("feeder", "bale-feeder", 1, 3.6, 3.6, 3.42, -0.05),
            new Capacity.Machine("stalk_saw", "separating-saw", 0.951, 4.1, 4.311, 3.96, 0.1),
            new Capacity.Machine("mill", "hammer-mill", 0.6441, 1.2432, 1.93, 1.81, -0.497),
            new Capacity.Machine("dust_cyclone", "cyclone", 0.049, 2, 40.8, 40.8, 10.3),
            new Capacity.Machine(
                "stalk_fans", "fan", 0, Double.NaN, Double.NaN, Double.NaN, Double.NaN)),
        List.of(new Capacity.Resource("bag_hand", 2.4, -0.333)));
  }

  private static Capacity.Orders orders(double ofCrop) {
    return new Capacity.Orders(
        List.of("coarse_hurd", "fine_hurd"),
        412.5,
        ofCrop / 2,
        ofCrop,
        ofCrop > 1 ? "2027-05-14" : "");
  }

  public static Header header() {
    return Draft.of(Header.class)
        .with(Header::plant, "Sweetgum Bend shared gin")
        .with(Header::file, "sweetgum-bend.yaml")
        .with(Header::contentHash, "5f2a90c1d4e87b36")
        .with(Header::version, "0.1.0")
        .with(Header::option, "base")
        .with(Header::seed, 1)
        .with(Header::replicationsAsked, 40)
        .with(Header::replications, 40)
        .with(Header::currency, "USD")
        .with(Header::from, FROM)
        .with(Header::to, TO)
        .made();
  }

  private static Outline outline() {
    return new Outline(
        List.of(new Outline.Crop("stalk", "bales"), new Outline.Crop("seed_cotton", "modules")),
        List.of(
            new Outline.Line("stalk_line", "stalk", "feeder", STALK_MACHINES, STALK_PRODUCTS),
            new Outline.Line(
                "cotton_line", "seed_cotton", "feeder", COTTON_MACHINES, COTTON_PRODUCTS)),
        List.of(
            new Outline.Place("shed", List.of("stalk"), 1200, "bales"),
            new Outline.Place("open", List.of("stalk"), 3000, "bales"),
            new Outline.Place("module_row", List.of("seed_cotton"), 500, "modules")),
        List.of(),
        Titles.none());
  }

  private static SummaryRow row(String measure, String unit, double mean, double sd) {
    double half = 2.0227 * sd / Math.sqrt(40);
    return Draft.of(SummaryRow.class)
        .with(SummaryRow::option, "base")
        .with(SummaryRow::measure, measure)
        .with(SummaryRow::unit, unit)
        .with(SummaryRow::mean, mean)
        .with(SummaryRow::low95, mean - half)
        .with(SummaryRow::high95, mean + half)
        .with(SummaryRow::sd, sd)
        .with(SummaryRow::p05, mean - 1.64 * sd)
        .with(SummaryRow::p50, mean)
        .with(SummaryRow::p95, mean + 1.64 * sd)
        .with(SummaryRow::least, mean - 2.2 * sd)
        .with(SummaryRow::most, mean + 2.3 * sd)
        .with(SummaryRow::replications, 40)
        .with(SummaryRow::interval, "student")
        .made();
  }

  private static List<SummaryRow> summary() {
    List<SummaryRow> rows = new ArrayList<>();
    rows.add(row(Measure.INTAKE_FED.of("stalk"), "bales", 7312.4, 140.3));
    rows.add(row(Measure.YARD_PEAK.of("stalk"), "bales", 4188, 33));
    rows.add(row(Measure.YARD_PEAK.of("seed_cotton"), "modules", 143.2, 21.7));
    rows.add(row(Measure.MASS_FED.of("stalk"), "t", 3482.6541, 61.2));
    rows.add(row(Measure.MASS_FED.dryOf("stalk"), "t", 3047.3, 55.1));
    rows.add(row(Measure.MASS_FED.of("seed_cotton"), "t", 9120.3, 210.9));
    rows.add(row(Measure.LINE_HOURS_SCHEDULED.of("stalk_line"), "h", 2048, 0));
    rows.add(row(Measure.LINE_HOURS_SCHEDULED.of("cotton_line"), "h", 1242.5, 11.4));
    rows.add(row(Measure.LINE_THROUGHPUT.of("stalk_line"), "t/h", 1.7005, 0.0299));
    rows.add(row(Measure.LINE_THROUGHPUT.of("cotton_line"), "t/h", 7.34, 0.12));
    double[] made = {431.2, 246.9, 761.4, 1092.8, 322.5, 210.1};
    for (int at = 0; at < made.length; at++) {
      rows.add(row(Measure.PRODUCT_MASS.of(STALK_PRODUCTS.get(at)), "t", made[at], made[at] / 40));
      rows.add(
          row(
              Measure.PRODUCT_SOLD.of(STALK_PRODUCTS.get(at)),
              "t",
              made[at] * 0.99,
              made[at] / 40));
      rows.add(
          row(
              Measure.PRODUCT_REVENUE.of(STALK_PRODUCTS.get(at)),
              "USD",
              310 * made[at],
              8 * made[at]));
    }
    double[] ginned = {912.3, 5021.6, 3050.2};
    for (int at = 0; at < ginned.length; at++) {
      rows.add(
          row(Measure.PRODUCT_MASS.of(COTTON_PRODUCTS.get(at)), "t", ginned[at], ginned[at] / 40));
    }
    rows.add(row(Measure.SEASON_LEFT_OVER.of("stalk_line"), "bales", 2417, 412));
    rows.add(row(Measure.SEASON_LEFT_OVER.of("cotton_line"), "modules", 0, 0));
    rows.add(row(Measure.ENERGY_TOTAL.of(), "kWh", 1184302.25, 20114));
    rows.add(row(Measure.ENERGY_PEAK.of(), "kW", 498.75, 3.2));
    String[] names = {
      "revenue",
      "crops",
      "wages",
      "electricity",
      "packages",
      "stops",
      "late",
      "overhead",
      "stock",
      "margin"
    };
    double[] money = {
      2011432.5, 612400.1, 531200, 221093.4, 142077, 31200, 5100, 240000, -61044.2, 167318.2
    };
    for (int at = 0; at < names.length; at++) {
      rows.add(
          row(
              "money." + names[at],
              "USD",
              money[at],
              names[at].equals("overhead") ? 0 : 9300 + money[at] / 90));
    }
    rows.add(row(Measure.MONEY_LINE_MARGIN.of("stalk_line"), "USD", 88231.1, 20131));
    rows.add(row(Measure.MONEY_LINE_MARGIN_PER_TONNE.of("stalk_line"), "USD/t", 25.334, 5.9));
    rows.add(row(Measure.MONEY_LINE_MARGIN.of("cotton_line"), "USD", 540180.6, 24000));
    rows.add(row(Measure.MONEY_LINE_MARGIN_PER_TONNE.of("cotton_line"), "USD/t", 59.23, 2.5));
    rows.add(
        Draft.of(SummaryRow.class)
            .with(SummaryRow::option, "base")
            .with(SummaryRow::measure, Measure.TRUCKS_WAIT_MEAN.of("stalk"))
            .with(SummaryRow::unit, "min")
            .made());
    return rows;
  }

  private static Samples samples(List<SummaryRow> summary) {
    List<Samples.Measured> measures =
        summary.stream().map(r -> new Samples.Measured(r.measure(), r.unit())).toList();
    double[][] values = new double[40][measures.size()];
    for (int replication = 0; replication < values.length; replication++) {
      for (int at = 0; at < measures.size(); at++) {
        SummaryRow row = summary.get(at);
        values[replication][at] = row.mean() + row.sd() * Math.sin(replication * 1.7 + at);
      }
    }
    return new Samples(measures, values);
  }

  private static List<BottleneckRow> holders() {
    List<BottleneckRow> rows = new ArrayList<>();
    String[] causes = {
      "mill",
      "no_bales",
      "stalk_saw.choke",
      "hurd_bagger.change",
      "feeder.cleaning",
      "stalk_saw",
      "mill.swap",
      "mill.hammers",
      "resource.bag_hand",
      "set_on_table"
    };
    double[] shares = {0.571, 0.132, 0.081, 0.064, 0.052, 0.041, 0.028, 0.017, 0.0095, 0.0045};
    for (int at = 0; at < causes.length; at++) {
      rows.add(
          new BottleneckRow(
              "base",
              "stalk_line",
              causes[at],
              2048 * shares[at],
              shares[at],
              shares[at] * 0.94,
              shares[at] * 1.06,
              "student"));
    }
    rows.add(
        new BottleneckRow("base", "cotton_line", "feeder", 830.2, 0.668, 0.643, 0.693, "student"));
    rows.add(
        new BottleneckRow(
            "base", "cotton_line", "no_bales", 290.1, 0.2335, 0.21, 0.257, "student"));
    rows.add(
        new BottleneckRow(
            "base", "cotton_line", "lint_cleaner.choke", 122.2, 0.0985, 0.09, 0.107, "student"));
    return rows;
  }

  private static List<MachineTime> machines() {
    List<MachineTime> times = new ArrayList<>();
    List<String> all = new ArrayList<>(STALK_MACHINES);
    COTTON_MACHINES.stream().filter(m -> !all.contains(m)).forEach(all::add);
    for (int at = 0; at < all.size(); at++) {
      double used = at < STALK_MACHINES.size() ? 2048 : 1242;
      double[] part = {
        0, 0, 0, 0, 0.05 + 0.01 * (at % 4), at == 7 ? 0.05 : 0.02, 0.13, 0.04 * (at % 3), 0, 0
      };
      double full = at == 7 ? 0.57 : 0.1 + 0.05 * (at % 5);
      part[State.FULL_RATE.ordinal()] = full;
      double sum = 0;
      for (double share : part) {
        sum += share;
      }
      part[State.SLOWED.ordinal()] = 1 - sum;
      List<Double> hours = new ArrayList<>();
      for (State state : State.values()) {
        hours.add(used * part[state.ordinal()]);
      }
      hours.set(State.CHANGEOVER.ordinal(), 240.0);
      hours.set(State.UNCREWED.ordinal(), 4000.0);
      hours.set(State.UNUSED.ordinal(), 362 * 24 - 4240 - used);
      times.add(
          new MachineTime(
              all.get(at), all.get(at).equals("mill") ? "hammer-mill" : "conveyor", hours));
    }
    return times;
  }

  private static List<WeekRow> weeks() {
    List<WeekRow> rows = new ArrayList<>();
    for (int week = 1; week <= 52; week++) {
      boolean stalk = week <= 38;
      boolean cotton = week >= 40 && week <= 50;
      double swing = 1 + 0.2 * Math.sin(week);
      rows.add(
          week(
              week, Measure.MASS_FED.of("stalk"), "t", stalk ? (week > 23 ? 120 : 62) * swing : 0));
      rows.add(week(week, Measure.MASS_FED.of("seed_cotton"), "t", cotton ? 810 * swing : 0));
      for (int at = 0; at < STALK_PRODUCTS.size(); at++) {
        rows.add(
            week(
                week,
                Measure.PRODUCT_MASS.of(STALK_PRODUCTS.get(at)),
                "t",
                stalk ? (8 + 6 * at) * swing : 0));
      }
      for (String product : COTTON_PRODUCTS) {
        rows.add(week(week, Measure.PRODUCT_MASS.of(product), "t", cotton ? 270 * swing : 0));
      }
      rows.add(
          week(
              week,
              Measure.LINE_HOURS_LIMITED_BY.of("stalk_line", "mill"),
              "h",
              stalk ? 22 * swing : 0));
      rows.add(week(week, Measure.MACHINE_HOURS.of("mill", "down"), "h", stalk ? 2 * swing : 0));
    }
    return rows;
  }

  private static WeekRow week(int week, String measure, String unit, double mean) {
    return new WeekRow(
        "base",
        week,
        FROM.plusWeeks(week - 1),
        measure,
        unit,
        mean,
        mean * 0.8,
        mean * 0.99,
        mean * 1.15);
  }

  private static List<MonthRow> months() {
    List<MonthRow> rows = new ArrayList<>();
    for (int month = 1; month <= 12; month++) {
      String name = YearMonth.of(2027, month).toString();
      double power = month >= 10 ? 490 : 260;
      rows.add(month(name, Measure.ENERGY_TOTAL.of(), "kWh", power * 210));
      rows.add(month(name, Measure.ENERGY_PEAK.of(), "kW", power));
      rows.add(month(name, Measure.MONEY_WAGES.of(), "USD", 41000));
      rows.add(month(name, Measure.MONEY_REVENUE.of(), "USD", 160000 + 3000 * month));
    }
    return rows;
  }

  private static MonthRow month(String month, String measure, String unit, double mean) {
    return new MonthRow("base", month, measure, unit, mean, mean * 0.93, mean, mean * 1.06);
  }

  private static List<YardLevelRow> levels() {
    List<YardLevelRow> rows = new ArrayList<>();
    for (LocalDate date = FROM; !date.isAfter(TO); date = date.plusDays(1)) {
      double day = date.getDayOfYear();
      double stalk =
          day < 165
              ? Math.max(0, 3200 - 20 * day)
              : day < 215 ? Math.min(4150, 60 * (day - 165)) : Math.max(0, 4150 - 32 * (day - 215));
      rows.add(level(date, "stalk", "shed", "bales", Math.min(1200, stalk)));
      rows.add(level(date, "stalk", "open", "bales", Math.max(0, stalk - 1200)));
      rows.add(level(date, "stalk", "*", "bales", stalk));
      double modules = day < 277 || day > 350 ? 0 : 60 + 70 * Math.sin((day - 277) / 24);
      rows.add(level(date, "seed_cotton", "module_row", "modules", Math.max(0, modules)));
      rows.add(level(date, "seed_cotton", "*", "modules", Math.max(0, modules)));
    }
    return rows;
  }

  private static YardLevelRow level(
      LocalDate date, String crop, String place, String unit, double mean) {
    return new YardLevelRow(
        "base", date, crop, place, unit, mean, mean * 0.85, mean, Math.min(mean * 1.1, 4200));
  }

  private static LineFlow stalkFlow() {
    return new LineFlow(
        "stalk_line",
        List.of(
            node("feeder", Kind.MACHINE, "bale-feeder", 0.052),
            node("incline_1", Kind.MACHINE, "inclined-cleaner", 0),
            node("dust_cyclone", Kind.MACHINE, "cyclone", 0),
            node("stalk_saw", Kind.MACHINE, "separating-saw", 0.122),
            node("incline_2", Kind.MACHINE, "inclined-cleaner", 0),
            node("lint_cleaner", Kind.MACHINE, "lint-cleaner", 0),
            node("fiber_press", Kind.MACHINE, "press", 0),
            node("tow_press", Kind.MACHINE, "press", 0),
            node("hurd_bin", Kind.BIN, "", 0),
            node("mill", Kind.MACHINE, "hammer-mill", 0.616),
            node("hurd_bagger", Kind.MACHINE, "bag-filler", 0.064),
            node("long_fiber_bales", Kind.PRODUCT, "", 0),
            node("short_fiber_bales", Kind.PRODUCT, "", 0),
            node("coarse_hurd", Kind.PRODUCT, "", 0),
            node("medium_hurd", Kind.PRODUCT, "", 0),
            node("fine_hurd", Kind.PRODUCT, "", 0),
            node("dust", Kind.PRODUCT, "", 0),
            node("air", Kind.AIR, "", 0)),
        List.of(
            new Edge("feeder", "incline_1", 1.7),
            new Edge("incline_1", "dust_cyclone", 0.085),
            new Edge("incline_1", "stalk_saw", 1.615),
            new Edge("stalk_saw", "hurd_bin", 0.98),
            new Edge("stalk_saw", "incline_2", 0.63),
            new Edge("incline_2", "hurd_bin", 0.085),
            new Edge("incline_2", "lint_cleaner", 0.545),
            new Edge("lint_cleaner", "hurd_bin", 0.04),
            new Edge("lint_cleaner", "tow_press", 0.13),
            new Edge("lint_cleaner", "fiber_press", 0.375),
            new Edge("fiber_press", "long_fiber_bales", 0.375),
            new Edge("tow_press", "short_fiber_bales", 0.13),
            new Edge("hurd_bin", "mill", 1.1),
            new Edge("mill", "hurd_bagger", 1.1),
            new Edge("hurd_bagger", "coarse_hurd", 0.385),
            new Edge("hurd_bagger", "medium_hurd", 0.55),
            new Edge("hurd_bagger", "fine_hurd", 0.165),
            new Edge("dust_cyclone", "dust", 0.0837),
            new Edge("dust_cyclone", "air", 0.0013)));
  }

  private static LineFlow cottonFlow() {
    return new LineFlow(
        "cotton_line",
        List.of(
            node("feeder", Kind.MACHINE, "bale-feeder", 0.668),
            node("drier", Kind.MACHINE, "drier", 0),
            node("incline_1", Kind.MACHINE, "inclined-cleaner", 0),
            node("gin_stands", Kind.MACHINE, "gin-stand", 0),
            node("lint_cleaner", Kind.MACHINE, "lint-cleaner", 0.0985),
            node("bale_press", Kind.MACHINE, "press", 0),
            node("trash", Kind.PRODUCT, "", 0),
            node("cottonseed", Kind.PRODUCT, "", 0),
            node("lint", Kind.PRODUCT, "", 0)),
        List.of(
            new Edge("feeder", "drier", 7.34),
            new Edge("drier", "incline_1", 7.16),
            new Edge("incline_1", "trash", 0.43),
            new Edge("incline_1", "gin_stands", 6.73),
            new Edge("gin_stands", "cottonseed", 4.04),
            new Edge("gin_stands", "lint_cleaner", 2.69),
            new Edge("lint_cleaner", "trash", 0.3),
            new Edge("lint_cleaner", "bale_press", 2.39),
            new Edge("bale_press", "lint", 2.39),
            new Edge("lint_cleaner", "gin_stands", 0.05)));
  }

  private static Node node(String name, Kind kind, String what, double held) {
    return new Node(name, kind, what, held);
  }
}
