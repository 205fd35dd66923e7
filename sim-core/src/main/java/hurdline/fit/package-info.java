/**
 * From a plant's records to the figures of its file, each with its error.
 *
 * <p>{@link hurdline.fit.Fit} is the whole; read {@link hurdline.fit.Law} and {@link
 * hurdline.fit.MaximumLikelihood} for how a law is fitted to amounts of which some are not seen
 * whole, {@link hurdline.fit.LawChoice} for which is taken, {@link hurdline.fit.GoodnessOfFit} for
 * whether it fits, and {@link hurdline.fit.StopAmounts} for how a log becomes amounts on the
 * engine's own clocks. What the records cannot tell is said and left as the file has it. The rules
 * are those of {@code line-configs/RECORDS.md}.
 */
package hurdline.fit;
