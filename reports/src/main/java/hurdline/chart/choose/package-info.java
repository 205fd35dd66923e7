/**
 * The charts of a choice among very many plans: what each budget buys, drawn over what the best
 * plan under it costs, and what another value of one choice does to the plan that is named, with
 * the interval of each difference.
 *
 * <p>Read {@link hurdline.chart.choose.ChooseCharts} first. Figures come from the answer alone; the
 * tables under the charts say the same in words and numbers.
 */
package hurdline.chart.choose;
