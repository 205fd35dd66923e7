/**
 * The plant at work: one replication from time zero to the end of its horizon.
 *
 * <p>Each file is one activity, told by the loop what is due: hauling and stacking bring bales in
 * and lay them down, feeding takes them away again. They draw chance, change their own state, ask
 * resources for servers, and tell the books. Descriptions and numbering come frozen from {@code
 * hurdline.compiled}; what a replication changes lives here and is used again for the next.
 *
 * <p>Of the yard's side read {@link hurdline.simulation.yard.Hauling} first, then {@link
 * hurdline.simulation.yard.Stacking}. Seconds, kilograms.
 */
package hurdline.simulation;
