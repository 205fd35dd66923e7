/**
 * What is due and who waits: the due times of a fixed number of slots, calendars of many things
 * behind one slot, and resources with their queues.
 *
 * <p>Knows ints and seconds only: a job, a gate, a resource is a number, and no machine, bale or
 * truck has a name here. What an event does is the business of {@code hurdline.simulation}. All
 * state lies in primitive arrays that grow during the first replication and are kept for the next.
 * Read {@link hurdline.event.FutureEvents} first, then {@link hurdline.event.Resources}. Times are
 * seconds from time zero.
 */
package hurdline.event;
