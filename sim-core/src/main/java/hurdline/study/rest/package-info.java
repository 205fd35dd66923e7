/**
 * A season of which a part has been: records for what was, simulation for what comes.
 *
 * <p>Read {@link hurdline.study.rest.RestStudy} first; {@link hurdline.study.rest.SeasonSoFar} says
 * what has been, {@link hurdline.study.rest.RestOfSeason} makes the plant of the rest.
 */
package hurdline.study.rest;
