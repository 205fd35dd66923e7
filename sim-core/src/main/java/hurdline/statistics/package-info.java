/**
 * What replications allow to be said: means, quantiles and chances with their intervals, and
 * differences between two plants that met the same chance, means adjusted for a draw whose own mean
 * is known.
 *
 * <p>Replications are independent, so classical intervals hold: Student's t for means, order
 * statistics for quantiles, Clopper and Pearson's for chances. Where the replications are too few
 * for an interval there is none, and it says so; nothing is made up. Numbers come in as arrays, one
 * value a replication, in whatever unit.
 *
 * <p>Read {@link hurdline.statistics.Summary} first, then {@link
 * hurdline.statistics.PairedDifference}. Distribution functions, moments and quantiles come from
 * Apache Commons.
 */
package hurdline.statistics;
