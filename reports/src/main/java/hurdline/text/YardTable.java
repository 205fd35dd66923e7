package hurdline.text;

import hurdline.answer.AcresRow;
import hurdline.answer.SummaryRow;
import hurdline.answer.Titles;
import hurdline.answer.YardAnswer;
import hurdline.answer.YardSizeRow;
import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The main figures of a yard: what it needs, what it does as it stands, and which size costs least.
 */
public final class YardTable {
  private static final double NONE = Double.NaN;

  private final YardAnswer answer;
  private final Wording wording;
  private final String unit;
  private final List<MainTable.Row> rows = new ArrayList<>();

  private YardTable(YardAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
    this.unit = answer.asked().unit();
  }

  public static MainTable of(YardAnswer answer, Wording wording) {
    YardTable table = new YardTable(answer, wording);
    table.needed("Needed");
    table.noLimit("Without limit");
    answer.at(answer.asked().holds()).ifPresent(row -> table.now("As it stands", row));
    answer.cheapest().ifPresent(row -> table.cheapest("Cheapest size", row));
    table.land("Land");
    return new MainTable(table.rows, "figure", wording);
  }

  private void needed(String group) {
    YardAnswer.Size size = answer.byRule();
    if (Double.isNaN(size.bales())) {
      rows.add(MainTable.Row.text(group, "room", "not found", "count"));
      return;
    }
    rows.add(counted(group, "room", size.bales(), size.low95(), size.high95()));
    double others = answer.asked().others();
    if (others > 0) {
      String place = Titles.inText(answer.outline().titles().place(answer.asked().place()));
      rows.add(whole(group, "of it in " + place, size.bales() - others));
    }
    if (!Double.isNaN(size.areaM2())) {
      rows.add(MainTable.Row.text(group, "ground", wording.roughly(size.areaM2(), "m2"), "m2"));
    }
    rows.add(
        whole(
            group,
            "overflows in seasons",
            size.chance(),
            size.chanceLow95(),
            size.chanceHigh95(),
            "share"));
  }

  private void noLimit(String group) {
    find(YardAnswer.noLimit(), Measure.YARD_PEAK)
        .ifPresent(row -> rows.add(MainTable.Row.of(group, "peak, mean", row)));
    answer.peaks().stream()
        .filter(row -> row.quantile().equals("p95"))
        .forEach(
            row ->
                rows.add(
                    counted(
                        group, "peak, 95th percentile", row.value(), row.low95(), row.high95())));
  }

  private void now(String group, YardSizeRow row) {
    rows.add(whole(group, "room", row.bales()));
    rows.add(
        whole(group, "overflows in seasons", row.chance(), row.low95(), row.high95(), "share"));
    find(answer.header().option(), Measure.INTAKE_HELD_AT_FIELD_PEAK)
        .filter(held -> held.mean() > 0)
        .ifPresent(held -> rows.add(MainTable.Row.of(group, "most at the fields", held)));
    rows.add(MainTable.Row.text(group, "dry matter lost", wording.roughly(row.lostT(), "t"), "t"));
    find(answer.header().option(), Measure.TRUCKS_WAITED_FOR_ROOM)
        .filter(waited -> row.waitingD() > 0)
        .ifPresentOrElse(
            waited -> rows.add(MainTable.Row.of(group, "wait for room, in total", waited)),
            () ->
                rows.add(
                    MainTable.Row.text(
                        group,
                        "wait for room, in total",
                        wording.roughly(row.waitingD(), "d"),
                        "d")));
  }

  private void cheapest(String group, YardSizeRow row) {
    List<YardSizeRow> alike = answer.hardlyMatters();
    rows.add(whole(group, "room", row.bales()));
    YardSizeRow.Cost cost = row.cost();
    rows.add(
        MainTable.Row.of(
            group,
            "costs a year",
            answer.header().currency(),
            MainTable.Figures.of(cost.perYear(), cost.low95(), cost.high95())));
    if (alike.size() > 1) {
      rows.add(whole(group, "hardly dearer from", alike.get(0).bales()));
      rows.add(whole(group, "hardly dearer up to", alike.get(alike.size() - 1).bales()));
    }
  }

  private void land(String group) {
    YardAnswer.Land land = answer.land();
    Optional<AcresRow> most = answer.acresAt(land.times());
    if (!land.isAsked()) {
      return;
    }
    if (most.isEmpty()) {
      rows.add(MainTable.Row.text(group, "to contract at most", "not found", "count"));
      return;
    }
    rows.add(
        whole(
            group,
            "to contract at most",
            most.get().acres(),
            acres(land.low95()),
            acres(land.high95()),
            "acre"));
    rows.add(
        MainTable.Row.text(
            group, "times the file's fields", wording.fixed(land.times(), 3, "times"), "count"));
    rows.add(whole(group, "carry-over then", most.get().leftOver()));
  }

  private double acres(double times) {
    return answer.acresAt(times).map(AcresRow::acres).orElse(NONE);
  }

  private Optional<SummaryRow> find(String option, Measure measure) {
    return answer.find(option, measure.of(answer.asked().crop()));
  }

  private MainTable.Row whole(String group, String label, double bales) {
    return whole(group, label, bales, NONE, NONE, unit);
  }

  private MainTable.Row counted(String group, String label, double bales, double low, double high) {
    return whole(group, label, bales, low, high, unit);
  }

  /** Whole numbers, as they stand in the tables, with the limits that there are. */
  private MainTable.Row whole(
      String group, String label, double value, double low, double high, String of) {
    return MainTable.Row.written(
        group, label, wording.fixed(value, 0, of), of, limits(low, high, of));
  }

  private String limits(double low, double high, String of) {
    if (Double.isNaN(low) && Double.isNaN(high)) {
      return "";
    }
    return Double.isNaN(low)
        ? wording.fixed(high, 0, of) + " or less"
        : wording.fixed(low, 0, of)
            + (Double.isNaN(high) ? " or more" : " to " + wording.fixed(high, 0, of));
  }
}
