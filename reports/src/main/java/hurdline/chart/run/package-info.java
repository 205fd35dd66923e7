/**
 * The charts of a run.
 *
 * <p>What limits each line, machines by state, weeks and months, the yard's level, energy and
 * money, and the day of a trace with all that happened on one time axis. Each class draws one chart
 * from the records of {@code hurdline.answer}; which of them a page shows, and in which order,
 * stands in {@link hurdline.chart.run.RunCharts}. Read it first.
 */
package hurdline.chart.run;
