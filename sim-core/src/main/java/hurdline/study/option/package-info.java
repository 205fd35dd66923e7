/**
 * What an option is worth over its service life.
 *
 * <p>Lives are chains of simulated calendars laid end to end at their true dates; from them come
 * cash flows, net present value, internal rate, payback, the chance of loss, tornado and
 * break-even. What differs in prices alone is priced anew and not simulated again. The formulas
 * stand in {@code hurdline.economics}. Read ServiceLives and OptionCashFlow first.
 */
package hurdline.study.option;
