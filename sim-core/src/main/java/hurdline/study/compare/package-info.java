/**
 * Options beside the plant as it stands, paired on the same random draws.
 *
 * <p>Differences with joint intervals, which option is the best with a stated chance of being
 * right, and the further questions of a comparison (capacity gains, tornado, break-even), each of
 * which may need replications of its own. Service lives come from {@code hurdline.study.option}.
 * Read {@link hurdline.study.compare.Compare} first.
 */
package hurdline.study.compare;
