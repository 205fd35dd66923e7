package hurdline.audit;

import hurdline.measure.Kpi;
import hurdline.measure.Measure;
import hurdline.measure.State;
import hurdline.measure.Use;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The page of season plans against its tables. */
final class SeasonPageCheck implements Check {
  private static final Pattern WEEKS = Pattern.compile("weeks? (\\d+)(?:\\D(\\d+))? h");

  @Override
  public void compare(WrittenAnswer answer, Ledger ledger) {
    PageBook page = new PageBook(answer, ledger);
    page.lines(PageNames.PLANS).forEach(line -> plan(page, line));
    page.lines(PageNames.BUILDING).forEach(line -> building(page, line));
    page.lines(PageNames.CROPS).forEach(line -> crop(page, line));
    page.lines(PageNames.RATIOS).forEach(line -> ratios(page, line));
    page.lines(PageNames.PLAN_MONEY).forEach(line -> money(page, line));
    page.lines(PageNames.OWNER)
        .forEach(
            line ->
                summary(
                    page,
                    line,
                    1,
                    plan(page, line.name()),
                    Measure.MONEY_OWNER,
                    Measure.MONEY_TENANT,
                    Measure.MONEY_RENT));
    page.lines(PageNames.CREWS).forEach(line -> crew(page, line));
    page.lines(PageNames.PLAN_AGAINST_PLAN).forEach(line -> difference(page, line));
    changeovers(page);
    page.adjusted();
    for (String plan : answer.options()) {
      page.lines(PageNames.MACHINES_OF_PLAN, answer.names().shown("plans", plan))
          .forEach(line -> machine(page, plan, line));
      page.lines(PageNames.WEEKS_OF_PLAN, answer.names().shown("plans", plan))
          .forEach(line -> weeks(page, plan, line));
    }
    months(page, PageNames.ENERGY_BY_MONTH, Measure.ENERGY_TOTAL);
    months(page, PageNames.PEAK_BY_MONTH, Measure.ENERGY_PEAK);
  }

  private static void summary(
      PageBook page, PageBook.Line line, int from, String plan, Measure... measures) {
    for (int at = 0; at < measures.length; at++) {
      page.cell(line, from + at, Figure.summary(page.answer(), plan, measures[at].of()));
    }
  }

  private static void plan(PageBook page, PageBook.Line line) {
    summary(
        page,
        line,
        2,
        plan(page, line.name()),
        Measure.MONEY_MARGIN,
        Measure.MONEY_MARGIN_LESS_FORGONE,
        Measure.SEASON_FINISHED);
  }

  private static String plan(PageBook page, String shown) {
    return page.answer().names().named("plans", shown);
  }

  /** A column whose head names a line is of the hours in which it alone worked. */
  private static void building(PageBook page, PageBook.Line line) {
    for (int column = 1; column < line.cells().size(); column++) {
      String head = line.head(column);
      Optional<String> alone =
          page.answer().plant("base").names("lines").stream()
              .filter(name -> head.startsWith(page.answer().names().shown("lines", name) + " "))
              .findFirst();
      Optional<Use> use =
          Arrays.stream(Use.values()).filter(of -> head.startsWith(of.word())).findFirst();
      if (alone.isPresent()) {
        page.cell(
            line,
            column,
            Figure.mean(
                page.answer(), plan(page, line.name()), Measure.BUILDING_ALONE, alone.get()));
      } else if (use.isPresent()) {
        page.cell(
            line,
            column,
            Figure.mean(
                page.answer(), plan(page, line.name()), Measure.BUILDING_HOURS, use.get().word()));
      }
    }
  }

  /** Rows such as "base: stalk_line". */
  private static void crop(PageBook page, PageBook.Line line) {
    String plan = plan(page, line.name().split(": ")[0]);
    String of = page.answer().names().named("lines", line.name().split(": ")[1]);
    PlantFacts plant = page.answer().plant(plan);
    String feed = plant.text("lines." + of + ".feed").orElseThrow();
    String crop = MassCheck.crop(plant, of);
    String[] measures = {
      Measure.MASS_FED.of(crop),
      Measure.LINE_HOURS_SCHEDULED.of(of),
      Measure.MACHINE_CROP_HOURS.of(feed, crop, State.STARVED.word()),
      Measure.MACHINE_CROP_HOURS.of(feed, crop, State.BLOCKED.word()),
      Measure.MONEY_LINE_MARGIN.of(of),
      Measure.SEASON_LINE_FINISHED.of(of)
    };
    for (int at = 0; at < measures.length; at++) {
      page.cell(line, at + 1, Figure.summary(page.answer(), plan, measures[at]));
    }
    page.cell(line, 8, Figure.summary(page.answer(), plan, Measure.SEASON_LEFT_OVER.of(of)));
    page.cell(line, 9, Figure.summary(page.answer(), plan, Measure.SEASON_MARGIN_FORGONE.of(of)));
  }

  /** Rows such as "feeder, stalk"; heads are states. */
  private static void machine(PageBook page, String plan, PageBook.Line line) {
    String[] names = line.name().split(", ");
    names[0] = page.answer().names(plan).named("machines", names[0]);
    names[1] = page.answer().names(plan).named("crops", names[1]);
    for (int column = 1; column < line.cells().size() - 1; column++) {
      String word = line.head(column).replaceAll(" h$", "").replace(' ', '_');
      Optional<State> state =
          Arrays.stream(State.values()).filter(of -> of.word().equals(word)).findFirst();
      if (state.isPresent()) {
        String hours = state.get().word();
        page.cell(
            line,
            column,
            Figure.mean(
                page.answer(), plan, Measure.MACHINE_CROP_HOURS, names[0], names[1], hours));
      }
    }
    Figure mass =
        Figure.mean(page.answer(), plan, Measure.MACHINE_CROP_MASS_IN, names[0], names[1]);
    page.cell(line, line.cells().size() - 1, mass);
  }

  /** Columns such as "weeks 5–8 h". */
  private static void weeks(PageBook page, String plan, PageBook.Line line) {
    String[] names = line.name().split(", ");
    names[0] = page.answer().names(plan).named("machines", names[0]);
    names[1] = page.answer().names(plan).named("crops", names[1]);
    List<Table.Row> rows =
        page.answer()
            .table(Tables.MACHINE_WEEKS)
            .rows(Columns.PLAN, plan)
            .filter(row -> row.is(Columns.MACHINE, names[0]) && row.is(Columns.CROP, names[1]))
            .toList();
    for (int column = 1; column < line.cells().size(); column++) {
      Matcher head = WEEKS.matcher(line.head(column));
      if (head.matches()) {
        int from = Integer.parseInt(head.group(1));
        int to = head.group(2) == null ? from : Integer.parseInt(head.group(2));
        double hours =
            rows.stream()
                .filter(row -> from <= row.number(Columns.WEEK) && row.number(Columns.WEEK) <= to)
                .mapToDouble(row -> row.number(Columns.HOURS))
                .sum();
        page.cell(line, column, Figure.alone(hours, "h"));
      }
    }
  }

  private static void ratios(PageBook page, PageBook.Line line) {
    String[] names = line.name().split(": ");
    names[0] = plan(page, names[0]);
    names[1] = page.answer().names(names[0]).named("machines", names[1]);
    for (Kpi kpi : Kpi.values()) {
      String measure = Measure.MACHINE_KPI.of(names[1], kpi.word());
      page.cell(line, 1 + kpi.ordinal(), Figure.summary(page.answer(), names[0], measure));
    }
  }

  private static void money(PageBook page, PageBook.Line line) {
    page.cell(
        line, 1, Figure.summary(page.answer(), plan(page, line.name()), Measure.MONEY_MARGIN.of()));
    for (int column = 2; column < line.cells().size(); column++) {
      String of =
          page.answer().names().named("lines", line.head(column).replaceFirst(" \\S+$", ""));
      page.cell(
          line,
          column,
          Figure.summary(page.answer(), plan(page, line.name()), Measure.MONEY_LINE_MARGIN.of(of)));
    }
  }

  private static void crew(PageBook page, PageBook.Line line) {
    String plan = plan(page, line.name().split(": ")[0]);
    String of = page.answer().names().named("lines", line.name().split(": ")[1]);
    Measure[] measures = {
      Measure.CREW_LABOR_HOURS,
      Measure.CREW_OVERTIME,
      Measure.CREW_SENT_HOME,
      Measure.CREW_CHANGEOVER
    };
    for (int at = 0; at < measures.length; at++) {
      page.cell(line, at + 1, Figure.summary(page.answer(), plan, measures[at].of(of)));
    }
    String crop = MassCheck.crop(page.answer().plant(plan), of);
    page.cell(line, 5, Figure.summary(page.answer(), plan, Measure.CREW_RECEIVING.of(crop)));
  }

  private static void difference(PageBook page, PageBook.Line line) {
    String[] pair = line.cell(1).split(PageNames.LESS);
    PageNames.measure(page.answer(), line.name())
        .ifPresent(
            measure -> {
              Table.Row row =
                  page.answer()
                      .table(Tables.DIFFERENCES)
                      .row(
                          of ->
                              of.is(Columns.PLAN, plan(page, pair[0]))
                                  && of.is(Columns.AGAINST, plan(page, pair[1]))
                                  && of.is(Columns.MEASURE, measure));
              Figure joint =
                  Figure.of(row, Columns.DIFFERENCE, Columns.LOW_JOINT, Columns.HIGH_JOINT);
              page.cell(line, 2, joint);
              page.limits(line, 4, joint);
              page.text(line, 5, row.text(Columns.SIGNIFICANT));
            });
  }

  /** Rows such as "base, 2027-09-13 to 2027-09-15", in the order of the table. */
  private static void changeovers(PageBook page) {
    List<Table.Row> rows = page.answer().table(Tables.CHANGEOVERS).rows().toList();
    List<PageBook.Line> lines = page.lines(PageNames.CHANGEOVERS).toList();
    for (int at = 0; at < lines.size(); at++) {
      Figure worth = Figure.of(rows.get(at), Columns.WORTH, Columns.LOW_95, Columns.HIGH_95);
      page.cell(lines.get(at), 1, worth);
      page.limits(lines.get(at), 2, worth);
      page.text(lines.get(at), 3, rows.get(at).text(Columns.SIGNIFICANT));
    }
  }

  /** A column for each plan, its 5 % and 95 % quantiles in the bracket. */
  private static void months(PageBook page, String label, Measure measure) {
    page.lines(label)
        .forEach(
            line -> {
              List<String> plans = page.answer().options();
              for (int at = 0; at < plans.size(); at++) {
                String plan = plans.get(at);
                Table.Row month =
                    page.answer()
                        .table(Tables.MONTHS)
                        .row(
                            of ->
                                of.is(Columns.OPTION, plan)
                                    && of.is(Columns.MONTH, line.name())
                                    && of.is(Columns.MEASURE, measure.of()));
                page.cell(line, at + 1, Figure.of(month, Columns.MEAN, Columns.P05, Columns.P95));
              }
            });
  }
}
