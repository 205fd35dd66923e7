/**
 * From the accumulators of a replication to its measures.
 *
 * <p>Mass balance by component and for water, money, periods, shares of crops that use one
 * building, what is left over. Measures are named here and nowhere else in the engine. Nothing here
 * runs while the clock does: it is called once, when a replication has ended. Read {@link
 * hurdline.simulation.results.OutcomeBuilder} first, then Balance.
 */
package hurdline.simulation.results;
