/**
 * Charts as SVG, each with its text alternative and the table of its figures.
 *
 * <p>Read {@link hurdline.chart.run.RunCharts} first; one class draws one kind of chart. Text stays text,
 * ids carry the chart's name so that all can share one page, and the same answer gives the same
 * bytes on every machine: the font is brought along, and nothing asks for the clock, the zone or
 * the locale's month names. Colours are told apart by colour-blind readers, and patterns or place
 * do the same on a print in grey.
 *
 * <p>Amounts are worded by {@code hurdline.text}. May use {@code hurdline.measure}, {@code
 * hurdline.answer} and {@code hurdline.text}, JFreeChart and Batik.
 */
package hurdline.chart;
