/**
 * How large the yard must be, what it costs and how many acres it carries.
 *
 * <p>The yard without limit gives each season's peak; sizes around its quantiles are simulated on
 * the same random draws and judged by the margin of the plant. Quantiles of few seasons have limits
 * by order statistics, or say that there is none. Read {@link hurdline.study.yard.YardSizing}
 * first.
 */
package hurdline.study.yard;
