package hurdline.audit;

import hurdline.measure.Measure;

/** The page of a yard that is sized against its tables. */
final class YardPageCheck implements Check {
  @Override
  public void compare(WrittenAnswer answer, Ledger ledger) {
    PageBook page = new PageBook(answer, ledger);
    page.lines(PageNames.YARD_OVERFLOW).forEach(line -> overflow(page, line, size(page, line)));
    page.lines(PageNames.YARD_LOSSES).forEach(line -> losses(page, line, size(page, line)));
    page.lines(PageNames.YARD_MONEY).forEach(line -> money(page, line, size(page, line)));
    page.lines(PageNames.YARD_PEAK).forEach(line -> peak(page, line));
    page.lines(PageNames.PLACES).forEach(line -> place(page, line));
    String crop = answer.record().getAsJsonObject("asked").get("crop").getAsString();
    page.lines(PageNames.YARD_WITHOUT_LIMIT, answer.names().shown("crops", crop))
        .forEach(line -> level(page, line, crop));
  }

  /** The row of the size that a line of the page begins with. */
  private static Table.Row size(PageBook page, PageBook.Line line) {
    double bales = Shown.all(line.name()).get(0).value();
    return page.answer().table(Tables.YARD_SIZES).row(row -> row.number(Columns.BALES) == bales);
  }

  private static void overflow(PageBook page, PageBook.Line line, Table.Row row) {
    Figure chance =
        new Figure(
            row.number(Columns.CHANCE),
            row.number(Columns.LOW_95),
            row.number(Columns.HIGH_95),
            "share");
    page.cell(line, 1, Figure.alone(row.number(Columns.AREA_M2), "m2"));
    page.cell(line, 2, chance);
    page.limits(line, 3, chance);
  }

  private static void losses(PageBook page, PageBook.Line line, Table.Row row) {
    page.cell(line, 1, Figure.alone(row.number(Columns.HELD_AT_FIELD), "bales"));
    page.cell(line, 2, Figure.alone(row.number(Columns.LOST_T), "t"));
    page.cell(line, 3, Figure.alone(row.number(Columns.WAITING_D), "d"));
  }

  private static void money(PageBook page, PageBook.Line line, Table.Row row) {
    Figure money =
        new Figure(
            row.number(Columns.MONEY),
            row.number(Columns.MONEY_LOW),
            row.number(Columns.MONEY_HIGH),
            "money");
    Table.Row above =
        page.answer()
            .table(Tables.CHEAPEST)
            .row(of -> of.text(Columns.BALES).equals(row.text(Columns.BALES)));
    Figure more =
        new Figure(
            above.number(Columns.ABOVE),
            above.number(Columns.LOW_JOINT),
            above.number(Columns.HIGH_JOINT),
            "money");
    String[] parts = {Columns.GROUND, Columns.WAITING, Columns.MARGIN_BELOW};
    for (int at = 0; at < parts.length; at++) {
      page.cell(line, at + 1, Figure.alone(row.number(parts[at]), "money"));
    }
    page.cell(line, 4, money);
    if (more.value() > 0) { // else words say that it is the cheapest
      page.cell(line, 5, more);
      page.text(line, 6, above.text(Columns.SIGNIFICANT));
    }
    page.cell(line, 7, Figure.alone(row.number(Columns.RECEIVING), "money"));
  }

  /** Rows such as "95 %". */
  private static void peak(PageBook page, PageBook.Line line) {
    long percent = Math.round(Shown.all(line.name()).get(0).value());
    Table.Row row =
        page.answer()
            .table(Tables.PEAKS)
            .row(of -> of.text(Columns.QUANTILE).equals(String.format("p%02d", percent)));
    page.cell(line, 1, Figure.alone(row.number(Columns.VALUE), "bales"));
    page.cell(line, 2, Figure.alone(row.number(Columns.LOW_95), "bales"));
    page.cell(line, 3, Figure.alone(row.number(Columns.HIGH_95), "bales"));
  }

  private static void place(PageBook page, PageBook.Line line) {
    Measure[] measures = {
      Measure.YARD_PLACE_PEAK,
      Measure.YARD_PLACE_AGE_MEAN,
      Measure.YARD_PLACE_MOISTURE_MEAN,
      Measure.YARD_PLACE_LOST
    };
    String option = page.answer().options().get(0);
    for (int at = 0; at < measures.length; at++) {
      page.cell(
          line,
          at + 1,
          Figure.summary(
              page.answer(),
              option,
              measures[at].of(page.answer().names().named("yard.places", line.name()))));
    }
  }

  private static void level(PageBook page, PageBook.Line line, String crop) {
    Table.Row row =
        page.answer()
            .table(Tables.YARD_LEVELS)
            .row(
                of ->
                    of.is(Columns.DATE, line.name())
                        && of.is(Columns.CROP, crop)
                        && of.is(Columns.PLACE, Columns.ALL_PLACES));
    String[] columns = {Columns.MEAN, Columns.P05, Columns.P50, Columns.P95};
    double spread = row.number(Columns.P95) - row.number(Columns.P05);
    for (int at = 0; at < columns.length; at++) {
      double value = row.number(columns[at]);
      page.cell(
          line,
          at + 1,
          new Figure(value, value - spread / 2, value + spread / 2, row.text(Columns.UNIT)));
    }
  }
}
