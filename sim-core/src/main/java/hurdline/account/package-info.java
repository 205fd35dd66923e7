/**
 * The books of one replication: what came in, what lay where and for how long, what ran, stood, was
 * lost and was paid.
 *
 * <p>Knows indices and seconds, no machine, truck or bale: whoever acts tells the books what
 * happened, and when. Books are accumulators in flat arrays, touched only when something changes,
 * and are emptied for the next replication. Means over time are integrals, peaks are taken at every
 * rise.
 *
 * <p>Read {@link hurdline.account.IntakeBooks} for the side of the yard. Masses are kg as-is unless
 * a name says dry.
 */
package hurdline.account;
