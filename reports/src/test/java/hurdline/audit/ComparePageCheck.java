package hurdline.audit;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import hurdline.measure.Cause;
import hurdline.measure.Measure;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The page of a comparison against its tables. */
final class ComparePageCheck implements Check {
  @Override
  public void compare(WrittenAnswer answer, Ledger ledger) {
    PageBook page = new PageBook(answer, ledger);
    List<String> options = answer.options().subList(1, answer.options().size());
    for (String line : answer.plant("base").names("lines")) {
      bottlenecks(page, line);
    }
    for (String option : options) {
      differences(page, option);
      ranked(page, option);
      paidBack(page, option);
      cash(page, option);
      sensitivity(page, option);
    }
    months(page, PageNames.MEAN_PEAK_BY_MONTH, Measure.ENERGY_PEAK);
    months(page, PageNames.DEMAND_BY_MONTH, Measure.MONEY_DEMAND);
    worth(page);
    page.adjusted();
    breakEven(page);
  }

  private static void differences(PageBook page, String option) {
    page.lines(PageNames.DIFFERENCES, page.answer().names().shown("options", option))
        .forEach(
            line ->
                PageNames.measure(page.answer(), line.name())
                    .ifPresent(
                        measure -> {
                          Table.Row row =
                              page.answer()
                                  .table(Tables.DIFFERENCES)
                                  .row(
                                      of ->
                                          of.is(Columns.OPTION, option)
                                              && of.is(Columns.MEASURE, measure));
                          Figure own =
                              Figure.of(row, Columns.DIFFERENCE, Columns.LOW_95, Columns.HIGH_95);
                          page.cell(line, 2, own.withValue(row.number(Columns.BASE_MEAN)));
                          page.cell(line, 3, own.withValue(row.number(Columns.OPTION_MEAN)));
                          page.cell(line, 4, own);
                          page.limits(line, 5, own);
                          page.limits(
                              line,
                              6,
                              Figure.of(
                                  row, Columns.DIFFERENCE, Columns.LOW_JOINT, Columns.HIGH_JOINT));
                          page.text(line, 7, row.text(Columns.SIGNIFICANT));
                          page.cell(line, 8, Figure.alone(row.number(Columns.NEEDED), "count"));
                          page.cell(
                              line, 9, Figure.alone(row.number(Columns.VARIANCE_REMOVED), "share"));
                        }));
  }

  /** Margin with its joint limits, then what limits, then what is fed. */
  private static void ranked(PageBook page, String option) {
    page.lines(PageNames.RANKED)
        .filter(
            line -> line.name().equalsIgnoreCase(page.answer().names().shown("options", option)))
        .forEach(
            line -> {
              Figure margin = joint(page, option, Measure.MONEY_MARGIN.of());
              page.cell(line, 1, margin);
              page.limits(line, 3, margin);
              List<String> lines = page.answer().plant("base").names("lines");
              double longest =
                  page.answer()
                      .table(Tables.BOTTLENECKS)
                      .rows(Columns.OPTION, option)
                      .filter(row -> row.is(Columns.LINE, lines.get(0)))
                      .mapToDouble(row -> row.number(Columns.SHARE))
                      .max()
                      .orElseThrow();
              page.number(
                  line,
                  4,
                  Shown.all(line.cell(4)).get(0),
                  longest,
                  new Figure(longest, longest - 0.01, longest + 0.01, "share"));
              page.cell(line, 5, joint(page, option, Measure.MASS_FED.of("stalk")));
            });
  }

  private static Figure joint(PageBook page, String option, String measure) {
    Table.Row row =
        page.answer()
            .table(Tables.DIFFERENCES)
            .row(of -> of.is(Columns.OPTION, option) && of.is(Columns.MEASURE, measure));
    return Figure.of(row, Columns.DIFFERENCE, Columns.LOW_JOINT, Columns.HIGH_JOINT);
  }

  /**
   * A row for each cause by its label, a column for each plant; a plant in which it holds nothing
   * shows 0.
   */
  private static void bottlenecks(PageBook page, String line) {
    Table table = page.answer().table(Tables.BOTTLENECKS);
    page.lines(PageNames.BOTTLENECKS_SIDE_BY_SIDE, page.answer().names().shown("lines", line))
        .forEach(
            row -> {
              List<String> plants = page.answer().options();
              for (int at = 0; at < plants.size(); at++) {
                String plant = plants.get(at);
                Optional<Table.Row> of =
                    table
                        .rows(Columns.OPTION, plant)
                        .filter(each -> each.is(Columns.LINE, line))
                        .filter(each -> label(page, each.text(Columns.CAUSE)).equals(row.name()))
                        .findFirst();
                page.cell(
                    row, at + 1, of.map(ComparePageCheck::share).orElse(Figure.alone(0, "share")));
              }
            });
  }

  private static String label(PageBook page, String cause) {
    TitledNames names = page.answer().names();
    return Cause.label(
        cause,
        new Cause.Reader() {
          @Override
          public String machine(String name) {
            return names.shown("machines", name);
          }

          @Override
          public String stop(String machine, String name) {
            String shown = names.shown("machines." + machine.split("\\+")[0] + ".stops", name);
            return shown.substring(0, 1).toLowerCase(Locale.ROOT) + shown.substring(1);
          }

          @Override
          public String store(String name) {
            return names.shown("stores", name);
          }

          @Override
          public String resource(String name) {
            String shown = names.shown("resources", name);
            return shown.substring(0, 1).toLowerCase(Locale.ROOT) + shown.substring(1);
          }
        });
  }

  private static Figure share(Table.Row row) {
    return new Figure(
        row.number(Columns.SHARE),
        row.number(Columns.SHARE_LOW),
        row.number(Columns.SHARE_HIGH),
        "share");
  }

  private static void months(PageBook page, String label, Measure measure) {
    page.lines(label)
        .forEach(
            line -> {
              List<String> plants = page.answer().options();
              for (int at = 0; at < plants.size(); at++) {
                String plant = plants.get(at);
                Table.Row month =
                    page.answer()
                        .table(Tables.MONTHS)
                        .row(
                            of ->
                                of.is(Columns.OPTION, plant)
                                    && of.is(Columns.MONTH, line.name())
                                    && of.is(Columns.MEASURE, measure.of()));
                page.cell(
                    line,
                    at + 1,
                    Figure.alone(month.number(Columns.MEAN), month.text(Columns.UNIT)));
              }
            });
  }

  /** Rows such as "bigger_mill: net present value". */
  private static void worth(PageBook page) {
    page.lines(PageNames.WORTH)
        .forEach(
            line -> {
              String[] name = line.name().split(": ");
              Table.Row row =
                  page.answer()
                      .table(Tables.PAYBACK)
                      .row(
                          of ->
                              of.is(Columns.OPTION, page.answer().names().named("options", name[0]))
                                  && of.is(Columns.QUANTITY, name[1].replace(' ', '_')));
              Figure mean = Figure.of(row, Columns.MEAN, Columns.LOW_95, Columns.HIGH_95);
              if (mean.unit().equals("share") && Shown.all(line.cell(1)).size() == 4) {
                chance(page, line, mean);
              } else {
                page.cell(line, 1, mean);
              }
              page.cell(line, 2, Figure.alone(row.number(Columns.P05), mean.unit()));
              page.cell(line, 3, Figure.alone(row.number(Columns.P50), mean.unit()));
              page.cell(line, 4, Figure.alone(row.number(Columns.P95), mean.unit()));
            });
  }

  /** "7 % of 30 service lives (1 to 22 %)", or of few "2 of 12" and the same limits. */
  private static void chance(PageBook page, PageBook.Line line, Figure chance) {
    List<Shown> shown = Shown.all(line.cell(1));
    boolean isCount = line.cell(1).matches("\\d+ of .*");
    double happened = isCount ? chance.value() * shown.get(1).value() : chance.value();
    page.number(
        line, 1, shown.get(0), happened, isCount ? Figure.alone(happened, "count") : chance);
    page.number(line, 1, shown.get(2), chance.low(), chance);
    page.number(line, 1, shown.get(3), chance.high(), chance);
  }

  /** Rows such as "25 % of lives by": the quantile of the times, as in payback.csv. */
  private static void paidBack(PageBook page, String option) {
    page.lines(PageNames.PAID_BACK, page.answer().names().shown("options", option))
        .forEach(
            line -> {
              double share = Shown.all(line.name()).get(0).value() / 100;
              String[] quantities = {"simple_payback", "discounted_payback"};
              for (int at = 0; at < quantities.length; at++) {
                String quantity = quantities[at];
                double[] values =
                    page.answer()
                        .table(Tables.SERVICE_LIVES)
                        .rows(Columns.OPTION, option)
                        .filter(row -> row.is(Columns.QUANTITY, quantity))
                        .mapToDouble(row -> row.number(Columns.VALUE))
                        .toArray();
                double by = paidBackBy(share, values);
                page.cell(line, at + 1, Figure.alone(by, "yr"));
              }
            });
  }

  /** A straight line between neighbors; lives that never pay back come last and have no time. */
  private static double paidBackBy(double share, double[] values) {
    double[] paid = Arrays.stream(values).filter(value -> !Double.isNaN(value)).sorted().toArray();
    double place = share * (values.length - 1);
    int below = (int) Math.floor(place);
    int above = (int) Math.ceil(place);
    return above < paid.length
        ? paid[below] + (place - below) * (paid[above] - paid[below])
        : Double.NaN;
  }

  /** A row for each date, in the order of the table; dates that are no whole years are rounded. */
  private static void cash(PageBook page, String option) {
    List<Table.Row> rows = page.answer().table(Tables.CASH).rows(Columns.OPTION, option).toList();
    List<PageBook.Line> lines =
        page.lines(PageNames.CASH, page.answer().names().shown("options", option)).toList();
    String[] columns = {Columns.MEAN, Columns.P05, Columns.P50, Columns.P95};
    for (int date = 0; date < lines.size(); date++) {
      Table.Row row = rows.get(date);
      page.cell(lines.get(date), 0, Figure.alone(row.number(Columns.YEAR), "yr"));
      double spread = row.number(Columns.P95) - row.number(Columns.P05);
      for (int at = 0; at < columns.length; at++) {
        double value = row.number(columns[at]);
        Figure figure = new Figure(value, value - spread, value + spread, row.text(Columns.UNIT));
        page.cell(lines.get(date), at + 1, figure);
      }
    }
  }

  /** The ends of a row carry intervals that stand in the record alone. */
  private static void sensitivity(PageBook page, String option) {
    JsonArray record = page.answer().record().getAsJsonObject("further").getAsJsonArray("tornado");
    page.lines(PageNames.SENSITIVITY, page.answer().names().shown("options", option))
        .forEach(
            line -> {
              Table.Row row =
                  page.answer()
                      .table(Tables.TORNADO)
                      .row(
                          of ->
                              of.is(Columns.OPTION, option) && of.is(Columns.INPUT, line.cell(1)));
              JsonObject more = record.get(row.at()).getAsJsonObject();
              end(
                  page,
                  line,
                  3,
                  row.number(Columns.NPV_AT_LOW),
                  more.get("half_width_at_low").getAsDouble());
              end(
                  page,
                  line,
                  4,
                  row.number(Columns.NPV_AT_HIGH),
                  more.get("half_width_at_high").getAsDouble());
            });
  }

  private static void end(
      PageBook page, PageBook.Line line, int column, double worth, double half) {
    page.cell(line, column, new Figure(worth, worth - half, worth + half, "money"));
  }

  private static double number(JsonObject object, String field) {
    return object.get(field).isJsonNull() ? Double.NaN : object.get(field).getAsDouble();
  }

  private static void breakEven(PageBook page) {
    JsonArray record =
        page.answer().record().getAsJsonObject("further").getAsJsonArray("break_even");
    page.lines(PageNames.BREAK_EVEN)
        .forEach(
            line -> {
              String[] name = line.name().split(": ");
              Table.Row row =
                  page.answer()
                      .table(Tables.BREAK_EVEN)
                      .row(
                          of ->
                              of.is(Columns.OPTION, page.answer().names().named("options", name[0]))
                                  && of.is(Columns.INPUT, line.cell(1)));
              if (row.is(Columns.FOUND, "yes")) {
                JsonObject more = record.get(row.at()).getAsJsonObject();
                page.cell(
                    line,
                    4,
                    new Figure(
                        row.number(Columns.VALUE),
                        number(more, "low_95"),
                        number(more, "high_95"),
                        ""));
              } else {
                page.cell(line, 4, Figure.alone(Double.NaN, ""));
              }
              page.limits(
                  line, 5, new Figure(0, row.number(Columns.FROM), row.number(Columns.TO), ""));
            });
  }
}
