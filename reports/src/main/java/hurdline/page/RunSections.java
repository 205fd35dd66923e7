package hurdline.page;

import hurdline.answer.BottleneckRow;
import hurdline.answer.Capacity;
import hurdline.answer.RunAnswer;
import hurdline.chart.kit.Chart;
import hurdline.chart.run.RunCharts;
import hurdline.measure.Cause;
import hurdline.measure.State;
import hurdline.problem.LocatedProblem;
import hurdline.text.CapacityWords;
import hurdline.text.CashWords;
import hurdline.text.CleanlinessWords;
import hurdline.text.CoverWords;
import hurdline.text.DrawnCropWords;
import hurdline.text.HandsWords;
import hurdline.text.InputWords;
import hurdline.text.MainTable;
import hurdline.text.MarketWords;
import hurdline.text.OrderWords;
import hurdline.text.PlaceLimitWords;
import hurdline.text.PriceWords;
import hurdline.text.PurchaseWords;
import hurdline.text.PurgeWords;
import hurdline.text.RepeatCall;
import hurdline.text.RowSentences;
import hurdline.text.RunHeadline;
import hurdline.text.RunTable;
import hurdline.text.TonWords;
import hurdline.text.Wording;
import hurdline.text.YardMoistureWords;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The parts of a run's report, in the order in which one reads them who runs the plant and then who
 * lends the money.
 */
final class RunSections {
  private final RunAnswer answer;
  private final Wording wording;
  private final RunCharts figures;
  private final MeasureTables tables;

  RunSections(RunAnswer answer, Wording wording, RunCharts figures) {
    this.answer = answer;
    this.wording = wording;
    this.figures = figures;
    this.tables = new MeasureTables(answer, wording);
  }

  List<Section> all() {
    List<Chart> holders = figures.holders();
    List<Chart> flows = figures.flows();
    List<Chart> yard = figures.yard();
    List<Chart> stores = figures.stores();
    List<Chart> money = figures.money();
    return List.of(
        new Section("answer", "The answer", true, this::writeAnswer),
        new RestSection(answer, wording).section(),
        new Section(
            "bottleneck",
            "What limits the line",
            !holders.isEmpty(),
            html -> writeHolders(html, holders)),
        new Section(
            "flow", "The line and its flows", !flows.isEmpty(), html -> writeFlows(html, flows)),
        new Section(
            "time",
            "Where each machine's time goes",
            !answer.machines().isEmpty(),
            html -> writeTime(html, figures.machineTime())),
        Section.of("weeks", "Week by week", figures.weeks()),
        new Section(
            "day",
            "A day under the glass",
            answer.trace().day() != null,
            html -> new DaySection(answer.trace(), wording).write(html, figures.day())),
        new Section(
            "yard",
            "The yard",
            !yard.isEmpty() || tables.hasTrucks(),
            html -> writeYard(html, yard)),
        new Section(
            "stores", "Finished goods", !stores.isEmpty(), html -> writeStores(html, stores)),
        new Section("orders", "Orders", !answer.orders().isEmpty(), this::writeOrders),
        new Section("money", "Money", !money.isEmpty(), html -> writeMoney(html, money)),
        Section.of("energy", "Electricity", figures.energy()),
        Assumptions.section(answer.header(), wording, this::writeAgain, answer.assumptions()),
        Cautions.section(answer, wording, answer.cautions(), warnings()));
  }

  private List<String> warnings() {
    return Stream.concat(
            answer.warnings().stream().map(LocatedProblem::text),
            new OrderWords(answer.capacity(), wording).warnings().stream())
        .toList();
  }

  private void writeAnswer(Html html) {
    html.answer(new RunHeadline(answer, wording).sentences());
    if (answer.header().stopped()) {
      html.paragraph(
          "The run was stopped: "
              + answer.header().replications()
              + " of "
              + answer.header().replicationsAsked()
              + " replications are in this answer.");
    }
    MainTable main = RunTable.of(answer, wording);
    html.wholeTable("the answer", main);
    html.paragraph(main.legend(answer.header().replications()));
    new DrawnCropPart(DrawnCropWords.of(answer, wording), wording).write(html);
    new InputPart(new InputWords(answer.inputs(), answer.outline(), wording), wording).write(html);
  }

  private void writeHolders(Html html, List<Chart> holders) {
    html.paragraph(
        "Each scheduled hour of a line is put down to the one thing that kept its feeder from"
            + " running faster, followed through full and empty bins to its root. The hours add up"
            + " to the scheduled hours.");
    html.figures(holders);
    writeNext(html);
    html.list(
        Stream.of(Cause.values())
            .filter(this::isCause)
            .map(kind -> word(kind) + ": " + kind.sentence())
            .toList());
  }

  /** Hours by a machine's own rate read as hours lost, unless what is behind it is told. */
  private void writeNext(Html html) {
    List<String> next = new ArrayList<>();
    for (Capacity.Line line : answer.capacity().lines()) {
      CapacityWords words = new CapacityWords(line, wording);
      words
          .next()
          .ifPresent(
              text ->
                  next.add(
                      wording.titles().line(line.line())
                          + ", expected "
                          + words.expected()
                          + "; rated "
                          + words.rated()
                          + "; "
                          + text
                          + "."));
    }
    if (!next.isEmpty()) {
      html.paragraph(
          "Hours limited by a machine's own rate are hours of work at that rate, not hours lost."
              + " What would come of it if the bottleneck did not limit, by formula and at most,"
              + " since queues come on top; compare --gain simulates 10 % more of each machine:");
      html.list(next);
    }
  }

  private boolean isCause(Cause kind) {
    return answer.holders().stream()
        .filter(row -> row.hours() > 0)
        .map(BottleneckRow::cause)
        .anyMatch(cause -> Cause.kindOf(cause) == kind);
  }

  private static String word(Cause kind) {
    return switch (kind) {
      case RATE -> "own rate";
      case STOP -> "a stop";
      case PACKAGE_CHANGE -> "package change";
      case SCREEN_CHANGE -> "screen change";
      case RESOURCE -> "wait for a resource";
      case STORE -> "a full store";
      case LIFT -> "lift to the table";
      case NO_BALES -> "no bales";
      case KEPT_APART -> "kept apart";
      case CROP_DONE -> "crop done";
      case NO_ORDER -> "no order";
      case NO_CREW -> "no crew";
    };
  }

  private void writeFlows(Html html, List<Chart> flows) {
    html.paragraph(
        "Mean flows over the scheduled hours, stops and waits included. The box with the heavy"
            + " frame limited the line for the largest share of them. What several streams go to"
            + " stands at the end of each"
            + (flows.stream().anyMatch(flow -> flow.svg().contains(">to part "))
                ? "; a pipe that ends at a letter goes on at the same letter in another part."
                : "."));
    html.figures(flows);
  }

  private void writeTime(Html html, List<Chart> time) {
    html.figures(time);
    html.list(
        Stream.of(State.values())
            .map(state -> state.word().replace('_', ' ') + ": " + state.sentence() + ".")
            .toList());
    if (tables.hasStops()) {
      html.table("stops", tables.stops());
    }
    if (tables.hasResources()) {
      html.table("resources", tables.resources());
    }
  }

  private void writeYard(Html html, List<Chart> yard) {
    html.figures(yard);
    say(html, new PlaceLimitWords(answer.summary(), wording));
    say(html, new CoverWords(answer.summary(), wording));
    say(html, new YardMoistureWords(answer.summary(), wording));
    if (tables.hasTrucks()) {
      html.table("trucks", tables.trucks());
    }
  }

  private static void say(Html html, RowSentences words) {
    words.sentences().forEach(sentence -> html.paragraph(sentence + "."));
  }

  private void writeStores(Html html, List<Chart> stores) {
    html.figures(stores);
    html.table("stores", tables.stores());
    if (tables.hasStock()) {
      html.table("products in stores", tables.stock());
      html.paragraph(
          "Full packages wait in their store until they leave, and are sold then. What has not left"
              + " by the end, begun packages too, is stock at the file's worth or, where it names"
              + " none, at what it would sell for.");
    }
  }

  private void writeOrders(Html html) {
    html.table("orders by due date", new OrderTable(answer, wording).grid());
    html.paragraph(
        "Orders are met by due date from what is fit to sell as it is made or, of a product with a"
            + " store, as it leaves that. Days late are those begun after the date until the order"
            + " is met, or to the end of the calendar, with 0 where it is on time.");
  }

  private void writeMoney(Html html, List<Chart> money) {
    html.figures(money);
    html.table("products", tables.products());
    new PriceWords(answer, wording)
        .sentence()
        .ifPresent(sentence -> html.paragraph(sentence + "."));
    say(html, new MarketWords(answer.summary(), wording));
    say(html, new PurgeWords(answer.summary(), wording));
    say(html, new HandsWords(answer.summary(), wording));
    if (tables.hasCleanliness()) {
      html.table("cleanliness", tables.cleanliness());
      say(html, new CleanlinessWords(answer.summary(), wording.titles(), wording));
    }
    say(html, new PurchaseWords(answer.summary(), wording));
    new TonWords(answer, wording).sentences().forEach(sentence -> html.paragraph(sentence + "."));
    if (tables.hasLineMoney()) {
      html.table("margin by line", tables.lineMoney());
      html.paragraph(
          "A line's margin is before electricity and overhead, which serve all lines. Per "
              + wording.units().ton()
              + " it is the mean of each year's own figure, and so may differ a little from sums"
              + " of all years divided.");
    }
    html.paragraph("The margin is before interest and tax, and before the cost of any option.");
    if (tables.hasCash()) {
      html.table("after loan and tax, before your accountant", tables.cash());
    }
    new CashWords(answer, wording).sentence().ifPresent(sentence -> html.paragraph(sentence + "."));
  }

  private void writeAgain(Html html) {
    html.paragraph("The same answer again, from the folder of the plant file:");
    html.raw("<p><code>")
        .text(new RepeatCall(answer.header()).run(answer.inputs(), answer.rest()))
        .raw("</code></p>\n");
  }
}
