/**
 * The compiled plant: what a plant file describes, worked out once, frozen, and shared by all
 * replications.
 *
 * <p>Dates, shifts and rests become seconds of the horizon in plain arrays; machines, components
 * and causes become indices. Nothing here changes once it is made, and nothing here runs: a
 * replication keeps what it changes elsewhere.
 *
 * <p>Read {@link hurdline.compiled.Roster} for who works when. Time zero is 00:00 of the calendar's
 * first day; times are s. Dates appear while a plant is compiled and in labels, never where a
 * replication asks.
 */
package hurdline.compiled;
