package hurdline.audit;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import hurdline.measure.Measure;
import hurdline.measure.State;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The page of a run against its tables. */
final class RunPageCheck implements Check {
  private static final List<String> BAND =
      List.of(Columns.MEAN, Columns.P05, Columns.P50, Columns.P95);

  @Override
  public void compare(WrittenAnswer answer, Ledger ledger) {
    PageBook page = new PageBook(answer, ledger);
    String option = answer.options().get(0);
    main(page, option);
    page.adjusted();
    for (String line : answer.plant("base").names("lines")) {
      bottlenecks(page, option, line);
      flows(page, line);
      weeks(page, option, line, MassCheck.crop(answer.plant("base"), line));
    }
    hours(page, option);
    named(
        page,
        option,
        PageNames.STOPS,
        "machines",
        Measure.MACHINE_STOP_COUNT,
        Measure.MACHINE_STOP_HOURS);
    named(
        page,
        option,
        PageNames.RESOURCES,
        "resources",
        Measure.RESOURCE_BUSY,
        Measure.RESOURCE_WAIT_MEAN,
        Measure.RESOURCE_QUEUE_PEAK);
    named(
        page,
        option,
        PageNames.TRUCKS,
        "crops",
        Measure.TRUCKS_TRIPS,
        Measure.TRUCKS_WAIT_MEAN,
        Measure.TRUCKS_TURNAROUND_MEAN);
    products(page, option);
    named(
        page,
        option,
        PageNames.MARGIN_BY_LINE,
        "lines",
        Measure.MONEY_LINE_MARGIN,
        Measure.MONEY_LINE_MARGIN_PER_TONNE);
    money(page, option);
    months(page, PageNames.ENERGY_BY_MONTH, Measure.ENERGY_TOTAL);
    months(page, PageNames.PEAK_BY_MONTH, Measure.ENERGY_PEAK);
    for (String crop : answer.plant("base").names("crops")) {
      yard(page, crop);
    }
    for (String store : answer.plant("base").names("stores")) {
      store(page, store);
    }
    named(
        page,
        option,
        PageNames.STORES,
        "stores",
        Measure.STORE_LEVEL_MEAN,
        Measure.STORE_LEVEL_PEAK,
        Measure.STORE_LEVEL_END,
        Measure.STORE_HOURS_FULL);
    named(
        page,
        option,
        PageNames.IN_STORES,
        "products",
        Measure.PRODUCT_LEFT,
        Measure.PRODUCT_PICK_UPS,
        Measure.PRODUCT_STOCK,
        Measure.PRODUCT_STOCK_WORTH);
  }

  private static void main(PageBook page, String option) {
    page.lines(PageNames.ANSWER)
        .forEach(
            line ->
                PageNames.ofRun(page.answer(), line.name())
                    .ifPresent(
                        measure -> {
                          Figure figure = Figure.summary(page.answer(), option, measure);
                          Statistic values = page.answer().samples(option).statistic(measure);
                          page.cell(line, 1, figure);
                          page.limits(line, 3, figure);
                          page.cell(line, 4, figure.withValue(values.quantile(0.05)));
                          page.cell(line, 5, figure.withValue(values.quantile(0.95)));
                        }));
  }

  private static void bottlenecks(PageBook page, String option, String line) {
    Samples samples = page.answer().samples(option);
    page.lines(PageNames.BOTTLENECKS, page.answer().names().shown("lines", line))
        .forEach(
            row -> {
              Figure share = BottleneckCheck.share(samples, line, row.cell(1));
              double hours =
                  samples.statistic(Measure.LINE_HOURS_LIMITED_BY.of(line, row.cell(1))).mean();
              double half = share.halfWidth() / share.value() * hours;
              page.cell(row, 2, new Figure(hours, hours - half, hours + half, "h"));
              page.cell(row, 3, share);
              page.limits(row, 4, share);
            });
  }

  /** Flows stand in no table, so the record is what the page is held against. */
  private static void flows(PageBook page, String line) {
    for (JsonElement each : page.answer().record().getAsJsonArray("flows")) {
      JsonObject flow = each.getAsJsonObject();
      if (flow.get("line").getAsString().equals(line)) {
        page.lines(PageNames.FLOWS, page.answer().names().shown("lines", line))
            .forEach(
                row -> {
                  for (JsonElement edge : flow.getAsJsonArray("edges")) {
                    JsonObject of = edge.getAsJsonObject();
                    if (node(page, of.get("from").getAsString()).equals(row.name())
                        && node(page, of.get("to").getAsString()).equals(row.cell(1))) {
                      page.cell(row, 2, Figure.alone(of.get("t_per_h").getAsDouble(), "t/h"));
                    }
                  }
                });
      }
    }
  }

  /** What stands for a machine, a bin or a product, none of which has the name of another. */
  private static String node(PageBook page, String name) {
    boolean product = page.answer().plant("base").has("products." + name);
    return page.answer().names().shown(product ? "products" : "machines", name);
  }

  private static void hours(PageBook page, String option) {
    List<State> told =
        Stream.of(State.values())
            .filter(
                state ->
                    page.lines(PageNames.MACHINE_HOURS)
                        .anyMatch(line -> hours(page, option, line.name(), state).value() > 0))
            .toList();
    page.lines(PageNames.MACHINE_HOURS)
        .forEach(
            line -> {
              for (int at = 0; at < told.size(); at++) {
                page.cell(line, 1 + at, hours(page, option, line.name(), told.get(at)));
              }
            });
  }

  private static Figure hours(PageBook page, String option, String title, State state) {
    return Figure.mean(
        page.answer(),
        option,
        Measure.MACHINE_HOURS,
        page.answer().names().named("machines", title),
        state.word());
  }

  /** A row for each name, a column for each measure. */
  private static void named(
      PageBook page, String option, String label, String section, Measure... measures) {
    page.lines(label)
        .forEach(
            line -> {
              for (int at = 0; at < measures.length; at++) {
                String[] names = line.name().split(": ");
                names[0] = page.answer().names().named(section, names[0]);
                if (names.length > 1) {
                  String stops = section + "." + names[0] + ".stops";
                  names[1] = page.answer().names().named(stops, names[1]).replace(' ', '_');
                }
                String measure = measures[at].of(names);
                if (page.answer().samples(option).has(measure)) {
                  page.cell(line, at + 1, Figure.summary(page.answer(), option, measure));
                } else {
                  page.text(line, at + 1, "");
                }
              }
            });
  }

  private static void products(PageBook page, String option) {
    List<Measure> measures = new ArrayList<>(List.of(Measure.PRODUCT_MASS));
    if (!page.answer().samples(option).names(Measure.PRODUCT_TOO_WET).isEmpty()) {
      measures.add(Measure.PRODUCT_TOO_WET);
    }
    measures.add(Measure.PRODUCT_SOLD);
    if (!page.answer().samples(option).names(Measure.PRODUCT_BEYOND_MARKET).isEmpty()) {
      measures.add(Measure.PRODUCT_BEYOND_MARKET);
    }
    measures.add(Measure.PRODUCT_PACKAGES);
    if (!page.answer().samples(option).names(Measure.PRODUCT_PURGE_PACKAGES).isEmpty()) {
      measures.add(Measure.PRODUCT_PURGE_PACKAGES);
    }
    measures.add(Measure.PRODUCT_REVENUE);
    named(page, option, PageNames.PRODUCTS, "products", measures.toArray(Measure[]::new));
  }

  private static void weeks(PageBook page, String option, String line, String crop) {
    page.lines(PageNames.FED_BY_WEEK, page.answer().names().shown("crops", crop))
        .forEach(row -> band(page, row, 2, week(page, row, Measure.MASS_FED.of(crop))));
    page.lines(PageNames.PRODUCTS_BY_WEEK, page.answer().names().shown("lines", line))
        .forEach(
            row -> {
              for (int column = 2; column < row.cells().size(); column++) {
                String product =
                    page.answer()
                        .names()
                        .named("products", row.head(column).replaceFirst(" \\S+$", ""));
                Table.Row of = week(page, row, Measure.PRODUCT_MASS.of(product));
                page.cell(
                    row, column, Figure.alone(of.number(Columns.MEAN), of.text(Columns.UNIT)));
              }
            });
  }

  private static Table.Row week(PageBook page, PageBook.Line line, String measure) {
    return page.answer()
        .table(Tables.WEEKS)
        .row(of -> of.is(Columns.WEEK, line.name()) && of.is(Columns.MEASURE, measure));
  }

  private static void band(PageBook page, PageBook.Line line, int column, Table.Row row) {
    double spread = row.number(Columns.P95) - row.number(Columns.P05);
    for (int at = 0; at < BAND.size(); at++) {
      double value = row.number(BAND.get(at));
      page.cell(
          line,
          column + at,
          new Figure(value, value - spread / 2, value + spread / 2, row.text(Columns.UNIT)));
    }
  }

  private static void money(PageBook page, String option) {
    page.lines(PageNames.MONEY)
        .forEach(
            line -> {
              Figure figure =
                  Figure.summary(page.answer(), option, "money." + line.name().replace(' ', '_'));
              page.cell(line, 1, figure);
              page.limits(line, 2, figure);
            });
  }

  private static void months(PageBook page, String label, Measure measure) {
    page.lines(label)
        .forEach(
            line -> {
              Table.Row month =
                  page.answer()
                      .table(Tables.MONTHS)
                      .row(
                          of ->
                              of.is(Columns.MONTH, line.name())
                                  && of.is(Columns.MEASURE, measure.of()));
              band(page, line, 1, month);
            });
  }

  private static void store(PageBook page, String store) {
    page.lines(PageNames.IN_THE_STORE, page.answer().names().shown("stores", store))
        .forEach(
            line -> {
              Table.Row level =
                  page.answer()
                      .table(Tables.STORE_LEVELS)
                      .row(of -> of.is(Columns.DATE, line.name()) && of.is("store", store));
              for (int at = 0; at < BAND.size(); at++) {
                page.cell(line, at + 1, Figure.alone(level.number(BAND.get(at)), "t"));
              }
            });
  }

  private static void yard(PageBook page, String crop) {
    page.lines(PageNames.IN_THE_YARD, page.answer().names().shown("crops", crop))
        .forEach(
            line -> {
              Table.Row level =
                  page.answer()
                      .table(Tables.YARD_LEVELS)
                      .row(
                          of ->
                              of.is(Columns.DATE, line.name())
                                  && of.is(Columns.CROP, crop)
                                  && of.is(Columns.PLACE, Columns.ALL_PLACES));
              band(page, line, 1, level);
            });
  }
}
