/**
 * The charts of {@code fit}: one for each figure that a law was fitted to, with the recorded
 * amounts beside the law.
 *
 * <p>Read {@link hurdline.chart.fit.LawChart}: on the left the share of amounts up to each size,
 * recorded and by the law, on the right each recorded amount against the one the law has at its
 * rank, which lies on the diagonal where the law fits.
 */
package hurdline.chart.fit;
