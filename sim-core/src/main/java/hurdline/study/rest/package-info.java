/**
 * A season of which a part has been: what was comes from the records, what comes is simulated from
 * the stock, the ages of stops and the open orders of a day, as planned and with a shift more or
 * less.
 *
 * <p>Read {@link hurdline.study.rest.RestStudy} first; {@link hurdline.study.rest.SeasonSoFar} says
 * what has been, {@link hurdline.study.rest.RestOfSeason} makes the plant of the rest.
 */
package hurdline.study.rest;
