/**
 * The charts of season plans.
 *
 * <p>The calendar of each plan, how full the building is, ends of the crops, machines by crop,
 * margins and months. Each class draws one chart from the records of {@code hurdline.answer}; which
 * of them a page shows, and in which order, stands in {@link hurdline.chart.season.PlanCharts}.
 * Read it first; PlanPaints has the colors that plans keep in all of them.
 */
package hurdline.chart.season;
