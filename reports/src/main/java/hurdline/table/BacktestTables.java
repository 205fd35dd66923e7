package hurdline.table;

import hurdline.answer.BacktestAnswer;
import java.util.List;

/** The tables of a backtest. */
public final class BacktestTables {
  private final BacktestAnswer answer;

  public BacktestTables(BacktestAnswer answer) {
    this.answer = answer;
  }

  public List<Table> all() {
    return List.of(
        SharedTables.table(
            "series.csv",
            BacktestAnswer.Series.class,
            "kind,of,unit,seen,mean,sd,off,low_95,high_95,tolerance,chance,chance_together,crps,crps_chance,rank_chance,"
                + "outside,outside_chance,verdict",
            answer.series()),
        SharedTables.table(
            "periods.csv",
            BacktestAnswer.Period.class,
            "kind,of,unit,from,seen,mean,p05,p50,p95",
            answer.periods()),
        SharedTables.table(
            "moves.csv",
            BacktestAnswer.Move.class,
            "input,was,becomes,errors,told",
            answer.moves()));
  }
}
