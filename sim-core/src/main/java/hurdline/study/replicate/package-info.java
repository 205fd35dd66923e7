/**
 * Replications on several threads, in order and with common random numbers.
 *
 * <p>{@link hurdline.study.replicate.ReplicationRunner} is the only class of the program that
 * starts threads; {@link hurdline.study.replicate.InterleavedRuns} simulates several plants on the
 * same replications; the stopping rule says when a mean is known well enough. Outcomes are handed
 * on in the order of their replications, so answers have the same bits on any number of threads.
 */
package hurdline.study.replicate;
