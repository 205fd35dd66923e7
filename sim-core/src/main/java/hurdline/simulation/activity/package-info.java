/**
 * What happens at the lines within one replication, an activity a class.
 *
 * <p>Feeding, milling, filling, stops, crews and campaigns, orders, and the rates between two
 * events. {@link hurdline.simulation.activity.ReplicationState} is what they share; each changes
 * its own state, asks resources for servers and tells the accumulators what happened. Seconds and
 * kilograms. Results are made in {@code hurdline.simulation.results}. Read Stopping and Solving
 * first.
 */
package hurdline.simulation.activity;
