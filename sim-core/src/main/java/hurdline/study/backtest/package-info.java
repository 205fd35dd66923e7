/**
 * The model against a season that has been: shifts, stock and loads as they were, chance for the
 * rest, and each figure of the records beside what the replications gave.
 *
 * <p>Read {@link hurdline.study.backtest.Backtest} first; {@link
 * hurdline.study.backtest.PastSeason} makes the plant of that season, and records and simulation
 * give the same series, one from the files, one from the events of a replication.
 */
package hurdline.study.backtest;
