/**
 * Everything from the field to the feed table within one replication.
 *
 * <p>Ripening, baling on dry days, trucks and loads, gate, scale, unloading, places, losses,
 * picking. A bale is a row of the flat arrays of {@link hurdline.simulation.yard.Bales}; lists and
 * heaps of bales are indices into it. Knows no machine of a line. Seconds, kilograms as is. Read
 * {@link hurdline.simulation.yard.Hauling} first, then Stacking.
 */
package hurdline.simulation.yard;
