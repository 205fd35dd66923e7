/**
 * The charts of a comparison.
 *
 * <p>Differences with their intervals, what limits the lines under each option, cash over the
 * service life, payback, tornado, capacity gains and what mill screens made. Each class draws one
 * chart from the records of {@code hurdline.answer}; which of them a page shows, and in which
 * order, stands in {@link hurdline.chart.compare.CompareCharts}. Read it first.
 */
package hurdline.chart.compare;
