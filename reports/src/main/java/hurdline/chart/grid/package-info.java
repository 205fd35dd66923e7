/**
 * The charts of a grid: curves with intervals for one key, tiles with figures for two.
 *
 * <p>Where an option or plan leads in each cell is a picture of its own. Each class draws one chart
 * from the records of {@code hurdline.answer}; which of them a page shows, and in which order,
 * stands in {@link hurdline.chart.grid.GridCharts}. Read it first.
 */
package hurdline.chart.grid;
