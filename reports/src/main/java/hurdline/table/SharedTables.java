package hurdline.table;

import hurdline.answer.AdjustedRow;
import hurdline.answer.DifferenceRow;
import hurdline.answer.GainRow;
import hurdline.answer.InputUncertainty;
import hurdline.answer.MonthRow;
import hurdline.answer.Samples;
import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import hurdline.measure.MeasureName;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The tables that every verb which simulates writes. */
final class SharedTables {
  /** Columns of a difference behind those that say of what. */
  static final String DIFFERENCE =
      "measure,unit,base_mean,alternative_mean,difference,low_95,high_95,low_joint,high_joint,"
          + "interval,significant,replications_needed,variance_removed,replications";

  private SharedTables() {}

  /**
   * @param of what, for the columns before those of {@link #DIFFERENCE}
   */
  static Object[] difference(DifferenceRow r, String... of) {
    return Stream.concat(Stream.of(of), Stream.of(figures(r))).toArray();
  }

  private static Object[] figures(DifferenceRow r) {
    return row(
        r.measure(),
        r.unit(),
        r.baseMean(),
        r.optionMean(),
        r.difference(),
        r.low95(),
        r.high95(),
        r.lowJoint(),
        r.highJoint(),
        r.interval(),
        r.significant() ? "yes" : "no",
        r.replicationsNeeded(),
        r.varianceRemoved(),
        r.replications());
  }

  /**
   * @param samples the replications of each option, in the order of {@code options}
   */
  static Table measures(List<String> options, List<Samples> samples) {
    return table(
        "measures.csv",
        "alternative,replication,measure,unit,value",
        () ->
            IntStream.range(0, samples.size())
                .boxed()
                .flatMap(at -> rows(options.get(at), samples.get(at))));
  }

  private static Stream<Object[]> rows(String option, Samples samples) {
    return IntStream.range(0, samples.values().length)
        .boxed()
        .flatMap(replication -> replication(samples, option, replication));
  }

  private static Stream<Object[]> replication(Samples samples, String option, int replication) {
    double[] values = samples.values()[replication];
    return IntStream.range(0, values.length)
        .mapToObj(
            at -> {
              Samples.Measured measured = samples.measures().get(at);
              return row(option, replication + 1, measured.measure(), measured.unit(), values[at]);
            });
  }

  static Table summary(List<SummaryRow> rows) {
    return table(
        "summary.csv",
        "alternative,measure,unit,mean,low_95,high_95,sd,p05,p50,p95,min,max,replications,interval,definition",
        rows,
        r ->
            row(
                r.option(),
                r.measure(),
                r.unit(),
                r.mean(),
                r.low95(),
                r.high95(),
                r.sd(),
                r.p05(),
                r.p50(),
                r.p95(),
                r.least(),
                r.most(),
                r.replications(),
                r.interval(),
                definition(r.measure())));
  }

  private static String definition(String measure) {
    return Measure.find(measure).map(MeasureName::definition).orElse("");
  }

  /** What the drawn crop explains of headline measures; written only where there is any. */
  static List<Table> adjusted(List<AdjustedRow> rows) {
    Table table =
        table(
            "adjusted.csv",
            AdjustedRow.class,
            "alternative,measure,unit,crop,mean,error,adjusted,adjusted_error,low_95,high_95",
            rows);
    return rows.isEmpty() ? List.of() : List.of(table);
  }

  /** What drawn inputs make of each figure, and which of them; written only where there are any. */
  static List<Table> inputs(InputUncertainty of) {
    return of.isGiven()
        ? List.of(
            table(
                "input_uncertainty.csv",
                InputUncertainty.Row.class,
                "alternative,against,measure,unit,mean,chance,inputs,low_95,high_95,bound,shift,shift_error,bends,p05,p95,replications",
                of.rows()),
            table(
                "input_shares.csv",
                InputUncertainty.Share.class,
                "alternative,against,measure,input,share,significant",
                of.shares()),
            table(
                "input_plants.csv",
                InputUncertainty.Plants.class,
                "holds,alternative,against,line,cost_per_yr,unit,plants,in,years,years_given,done_given",
                of.plants()))
        : List.of();
  }

  static Table months(List<MonthRow> rows) {
    return table(
        "months.csv", MonthRow.class, "alternative,month,measure,unit,mean,p05,p50,p95", rows);
  }

  /** What more of each thing brings. */
  static Table gain(List<GainRow> gains) {
    return table(
        "gain.csv",
        GainRow.class,
        "what,measure,unit,gain,low_95,high_95,interval,significant",
        gains);
  }

  /** Columns are named like the parts of the rows in {@code record.json}. */
  static <R extends Record> Table table(String file, Class<R> row, String columns, List<R> rows) {
    Columns cells = new Columns(row, columns);
    return new Table(file, cells.names(), () -> rows.stream().map(cells::cells));
  }

  /**
   * @param cells of a row, in the order of the columns
   */
  static <R> Table table(String file, String columns, List<R> rows, Function<R, Object[]> cells) {
    return table(file, columns, () -> rows.stream().map(cells));
  }

  static Table table(String file, String columns, Supplier<Stream<Object[]>> rows) {
    return new Table(file, List.of(columns.split(",")), rows);
  }

  static Object[] row(Object... cells) {
    return cells;
  }
}
