package hurdline.page;

import hurdline.answer.RunAnswer;
import hurdline.answer.SummaryRow;
import hurdline.answer.Titles;
import hurdline.chart.kit.Chart;
import hurdline.measure.Measure;
import hurdline.text.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

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
        List.of("stop", "count", "hours"),
        List.of(Measure.MACHINE_STOP_COUNT, Measure.MACHINE_STOP_HOURS));
  }

  boolean hasResources() {
    return has(Measure.RESOURCE_BUSY);
  }

  Chart.Grid resources() {
    return grid(
        List.of("resource", "utilization, % of its hours", "mean wait min", "longest queue"),
        List.of(Measure.RESOURCE_BUSY, Measure.RESOURCE_WAIT_MEAN, Measure.RESOURCE_QUEUE_PEAK));
  }

  boolean hasTrucks() {
    return has(Measure.TRUCKS_TRIPS);
  }

  Chart.Grid trucks() {
    return grid(
        List.of("trips with", "trips", "mean wait min", "mean turnaround min"),
        List.of(Measure.TRUCKS_TRIPS, Measure.TRUCKS_WAIT_MEAN, Measure.TRUCKS_TURNAROUND_MEAN));
  }

  Chart.Grid products() {
    String ton = wording.unit("t");
    List<String> head = new ArrayList<>(List.of("product", "made " + ton));
    List<Measure> measures = new ArrayList<>(List.of(Measure.PRODUCT_MASS));
    if (has(Measure.PRODUCT_TOO_WET)) {
      head.add("of it too wet " + ton);
      measures.add(Measure.PRODUCT_TOO_WET);
    }
    head.addAll(
        List.of(
            "sold, at its moisture basis " + ton,
            "packages",
            "revenue " + answer.header().currency()));
    measures.addAll(
        List.of(Measure.PRODUCT_SOLD, Measure.PRODUCT_PACKAGES, Measure.PRODUCT_REVENUE));
    return grid(head, measures);
  }

  boolean hasCleanliness() {
    return has(Measure.PRODUCT_SHARE_MEAN);
  }

  /** What is left in packages that are paid by it. */
  Chart.Grid cleanliness() {
    String currency = answer.header().currency();
    return grid(
        List.of(
            "product, and what is left in it",
            "mean share %",
            "standard deviation %",
            "share of its price %",
            "a percentage point more costs " + currency),
        List.of(
            Measure.PRODUCT_SHARE_MEAN,
            Measure.PRODUCT_SHARE_SD,
            Measure.PRODUCT_PRICE_FACTOR,
            Measure.PRODUCT_POINT_COST));
  }

  boolean hasLineMoney() {
    return has(Measure.MONEY_LINE_MARGIN);
  }

  Chart.Grid lineMoney() {
    String currency = answer.header().currency();
    return grid(
        List.of(
            "line",
            "margin " + currency,
            "per " + wording.units().ton() + " fed " + wording.unit(currency + "/t")),
        List.of(Measure.MONEY_LINE_MARGIN, Measure.MONEY_LINE_MARGIN_PER_TONNE));
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
  private String read(Measure.Match match) {
    String name = match.names().get(0);
    Titles titles = wording.titles();
    return switch (match.measure()) {
      case MACHINE_STOP_COUNT, MACHINE_STOP_HOURS ->
          titles.machine(name) + ": " + Titles.inText(titles.stop(name, match.names().get(1)));
      case RESOURCE_BUSY, RESOURCE_WAIT_MEAN, RESOURCE_QUEUE_PEAK -> titles.resource(name);
      case TRUCKS_TRIPS, TRUCKS_WAIT_MEAN, TRUCKS_TURNAROUND_MEAN -> titles.crop(name);
      case MONEY_LINE_MARGIN, MONEY_LINE_MARGIN_PER_TONNE -> titles.line(name);
      default -> titles.product(name);
    };
  }

  /** One row per name, one column per measure, each with its interval. */
  private Chart.Grid grid(List<String> head, List<Measure> measures) {
    Map<String, String[]> rows = new LinkedHashMap<>();
    Set<Measure> wanted = Set.copyOf(measures);
    for (SummaryRow row : answer.summary()) {
      Measure.Match match = Measure.find(row.measure()).orElse(null);
      if (match != null && wanted.contains(match.measure()) && !match.dry()) {
        String[] cells = rows.computeIfAbsent(read(match), name -> new String[measures.size()]);
        cells[measures.indexOf(match.measure())] =
            wording.cell(row.mean(), row.low95(), row.high95(), row.unit());
      }
    }
    List<List<String>> table = new ArrayList<>();
    rows.forEach(
        (name, cells) -> {
          List<String> line = new ArrayList<>(List.of(name));
          for (String cell : cells) {
            line.add(cell == null ? "" : cell);
          }
          table.add(line);
        });
    return new Chart.Grid(head, table);
  }
}
