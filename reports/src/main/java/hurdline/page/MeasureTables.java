package hurdline.page;

import hurdline.answer.RunAnswer;
import hurdline.answer.SummaryRow;
import hurdline.answer.Titles;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.GridColumns;
import hurdline.measure.Measure;
import hurdline.measure.MeasureName;
import hurdline.text.Wording;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Tables of the page that have no chart: rows of the summary picked by what they measure. */
final class MeasureTables {
  private final RunAnswer answer;
  private final Wording wording;

  MeasureTables(RunAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  boolean hasStops() {
    return has(Measure.MACHINE_STOP_COUNT);
  }

  Chart.Grid stops() {
    return grid(
        "stop",
        new Column("count", Measure.MACHINE_STOP_COUNT),
        new Column("hours", Measure.MACHINE_STOP_HOURS));
  }

  boolean hasResources() {
    return has(Measure.RESOURCE_BUSY);
  }

  Chart.Grid resources() {
    return grid(
        "resource",
        new Column("utilization, % of its hours", Measure.RESOURCE_BUSY),
        new Column("mean wait min", Measure.RESOURCE_WAIT_MEAN),
        new Column("longest queue", Measure.RESOURCE_QUEUE_PEAK));
  }

  boolean hasTrucks() {
    return has(Measure.TRUCKS_TRIPS);
  }

  Chart.Grid trucks() {
    return grid(
        "trips with",
        new Column("trips", Measure.TRUCKS_TRIPS),
        new Column("mean wait min", Measure.TRUCKS_WAIT_MEAN),
        new Column("mean turnaround min", Measure.TRUCKS_TURNAROUND_MEAN));
  }

  Chart.Grid products() {
    String ton = wording.unit("t");
    List<Column> columns = new ArrayList<>();
    columns.add(new Column("made " + ton, Measure.PRODUCT_MASS));
    if (has(Measure.PRODUCT_TOO_WET)) {
      columns.add(new Column("of it too wet " + ton, Measure.PRODUCT_TOO_WET));
    }
    columns.add(new Column("sold, at its moisture basis " + ton, Measure.PRODUCT_SOLD));
    if (has(Measure.PRODUCT_BEYOND_MARKET)) {
      columns.add(new Column("beyond its market " + ton, Measure.PRODUCT_BEYOND_MARKET));
    }
    columns.add(new Column("packages", Measure.PRODUCT_PACKAGES));
    if (has(Measure.PRODUCT_PURGE_PACKAGES)) {
      columns.add(new Column("of them purge", Measure.PRODUCT_PURGE_PACKAGES));
    }
    columns.add(new Column("revenue " + answer.header().currency(), Measure.PRODUCT_REVENUE));
    return grid("product", columns.toArray(Column[]::new));
  }

  /** What lay in each store. */
  Chart.Grid stores() {
    String ton = wording.unit("t");
    return grid(
        "store",
        new Column("mean " + ton, Measure.STORE_LEVEL_MEAN),
        new Column("most " + ton, Measure.STORE_LEVEL_PEAK),
        new Column("at the end " + ton, Measure.STORE_LEVEL_END),
        new Column("hours without room", Measure.STORE_HOURS_FULL));
  }

  boolean hasStock() {
    return has(Measure.PRODUCT_STOCK);
  }

  /** What left the stores, and what has not. */
  Chart.Grid stock() {
    String ton = wording.unit("t");
    List<Column> columns = new ArrayList<>();
    columns.add(new Column("left " + ton, Measure.PRODUCT_LEFT));
    if (has(Measure.PRODUCT_PICK_UPS)) {
      columns.add(new Column("trucks", Measure.PRODUCT_PICK_UPS));
    }
    columns.add(new Column("not left at the end " + ton, Measure.PRODUCT_STOCK));
    if (has(Measure.PRODUCT_STOCK_WORTH)) {
      columns.add(new Column("worth " + answer.header().currency(), Measure.PRODUCT_STOCK_WORTH));
    }
    return grid("product", columns.toArray(Column[]::new));
  }

  boolean hasCleanliness() {
    return has(Measure.PRODUCT_SHARE_MEAN);
  }

  /** What is left in packages that are paid by it. */
  Chart.Grid cleanliness() {
    String currency = answer.header().currency();
    return grid(
        "product, and what is left in it",
        new Column("mean share %", Measure.PRODUCT_SHARE_MEAN),
        new Column("standard deviation %", Measure.PRODUCT_SHARE_SD),
        new Column("share of its price %", Measure.PRODUCT_PRICE_FACTOR),
        new Column("a percentage point more costs " + currency, Measure.PRODUCT_POINT_COST));
  }

  boolean hasLineMoney() {
    return has(Measure.MONEY_LINE_MARGIN);
  }

  Chart.Grid lineMoney() {
    String currency = answer.header().currency();
    return grid(
        "line",
        new Column("margin " + currency, Measure.MONEY_LINE_MARGIN),
        new Column(
            "per " + wording.units().ton() + " fed " + wording.unit(currency + "/t"),
            Measure.MONEY_LINE_MARGIN_PER_TONNE));
  }

  boolean hasCash() {
    return has(Measure.CASH_LEFT);
  }

  /** From the margin to what is left of it, in the order in which it is reckoned. */
  Chart.Grid cash() {
    Map<Measure, String> rows = new LinkedHashMap<>();
    rows.put(Measure.MONEY_MARGIN, "margin");
    rows.put(Measure.CASH_INTEREST, "less interest");
    rows.put(Measure.CASH_REPAYMENT, "less repayment");
    rows.put(Measure.CASH_TAX, "less tax");
    rows.put(Measure.CASH_LEFT, "left");
    rows.put(Measure.CASH_DEPRECIATION, "depreciation, which lowers the tax alone");
    String currency = answer.header().currency();
    return new GridColumns<Map.Entry<Measure, String>>(wording)
        .text("over the calendar", Map.Entry::getValue)
        .mean("", currency, row -> answer.find(row.getKey().of()))
        .text("5th percentile", row -> percentile(row.getKey(), SummaryRow::p05))
        .text("95th percentile", row -> percentile(row.getKey(), SummaryRow::p95))
        .of(rows.entrySet());
  }

  private String percentile(Measure measure, ToDoubleFunction<SummaryRow> of) {
    return answer
        .find(measure.of())
        .map(row -> wording.number(of.applyAsDouble(row), row.low95(), row.high95(), row.unit()))
        .orElse("");
  }

  private boolean has(Measure measure) {
    return answer.summary().stream().anyMatch(row -> isOf(row, measure));
  }

  private static boolean isOf(SummaryRow row, Measure measure) {
    return Measure.find(row.measure())
        .map(match -> match.measure() == measure && !match.dry())
        .orElse(false);
  }

  /** What a measure is of. */
  private String read(MeasureName match) {
    String name = match.names().get(0);
    Titles titles = wording.titles();
    return switch (match.measure()) {
      case MACHINE_STOP_COUNT, MACHINE_STOP_HOURS ->
          titles.machine(name) + ": " + Titles.inText(titles.stop(name, match.names().get(1)));
      case RESOURCE_BUSY, RESOURCE_WAIT_MEAN, RESOURCE_QUEUE_PEAK -> titles.resource(name);
      case STORE_LEVEL_MEAN, STORE_LEVEL_PEAK, STORE_LEVEL_END, STORE_HOURS_FULL ->
          titles.store(name);
      case TRUCKS_TRIPS, TRUCKS_WAIT_MEAN, TRUCKS_TURNAROUND_MEAN -> titles.crop(name);
      case MONEY_LINE_MARGIN, MONEY_LINE_MARGIN_PER_TONNE -> titles.line(name);
      default -> titles.product(name);
    };
  }

  /** A column of a measure. */
  private record Column(String head, Measure measure) {}

  /** One row per name, each measure with its interval. */
  private Chart.Grid grid(String head, Column... columns) {
    Map<String, Map<Measure, SummaryRow>> rows = new LinkedHashMap<>();
    Set<Measure> wanted = Stream.of(columns).map(Column::measure).collect(Collectors.toSet());
    for (SummaryRow row : answer.summary()) {
      MeasureName match = Measure.find(row.measure()).orElse(null);
      if (match != null && wanted.contains(match.measure()) && !match.dry()) {
        rows.computeIfAbsent(read(match), name -> new EnumMap<>(Measure.class))
            .put(match.measure(), row);
      }
    }
    GridColumns<Map.Entry<String, Map<Measure, SummaryRow>>> grid =
        new GridColumns<Map.Entry<String, Map<Measure, SummaryRow>>>(wording)
            .text(head, Map.Entry::getKey);
    for (Column column : columns) {
      grid.text(column.head, row -> cell(row.getValue().get(column.measure)));
    }
    return grid.of(rows.entrySet());
  }

  private String cell(SummaryRow row) {
    return row == null ? "" : wording.cell(row.mean(), row.low95(), row.high95(), row.unit());
  }
}
