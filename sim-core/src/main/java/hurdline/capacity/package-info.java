/**
 * What machines and lines can do on average, by formula: rated capacity, where nothing stops, and
 * expected capacity, where each machine has its mean stops, package changes and screen changes.
 *
 * <p>No clock and no draws. Queues are left out: waits for a mechanic or a hand that is busy
 * elsewhere, bins that run full or empty, the yard, the weather. Read {@link
 * hurdline.capacity.LineCapacity} first.
 */
package hurdline.capacity;
