/**
 * What a purchase is worth: payments over the years brought to one date.
 *
 * <p>Read {@link hurdline.economics.Cash} first: payments with their times, the outlay at time 0
 * below zero. From it come the net present value, the internal rate with its none and its several,
 * simple and discounted payback; and the yearly payment that recovers a capital. Times are in
 * years, rates are shares a year, money is in whatever currency. Nothing here knows a plant, chance
 * or replications; who draws the years decides what a payment is.
 *
 * <p>Uses commons-math for finding roots and nothing else of the project.
 */
package hurdline.economics;
