/**
 * Material in motion between two events: the rates that every limit allows, and what then lies in
 * the bins.
 *
 * <p>A head is a draw from a bale store or a bin, seen as the thing whose rate is set. {@link
 * hurdline.flow.rates.RateSolver} sets the rates of all heads from bare numbers; the rest of the
 * package makes those numbers from machines, lots and bins, moves the levels along straight lines
 * and follows a holder to its root.
 *
 * <p>Pure computation: a stretch of time comes in as seconds, never as a clock, and chance stays
 * outside. Read {@code RateSolver} first. Masses are kg as-is, rates kg/s, times s. May use {@code
 * hurdline.compiled} and nothing else of ours.
 */
package hurdline.flow;
