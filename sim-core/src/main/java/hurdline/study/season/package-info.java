/**
 * Season plans of a shared building, side by side on the same random draws.
 *
 * <p>How full the building is, when each crop is finished and what is left over, what each plan
 * earns, what each changeover is worth, which plan earns the most and which most surely finishes;
 * the margin less what is forgone with crop left over stands beside the margin. Read {@link
 * hurdline.study.season.Season} first.
 */
package hurdline.study.season;
