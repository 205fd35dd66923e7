/**
 * The charts of a yard's sizing.
 *
 * <p>Peaks of the yard without limit, chance of overflow and cost by size, ground, acres that
 * finish, and what shortens the peak. Each class draws one chart from the records of {@code
 * hurdline.answer}; which of them a page shows, and in which order, stands in {@link
 * hurdline.chart.yard.YardCharts}. Read it first.
 */
package hurdline.chart.yard;
