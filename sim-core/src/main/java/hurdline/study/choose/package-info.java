/**
 * Which of very many plans is the best, and with what certainty.
 *
 * <p>{@link hurdline.study.choose.PlanSpace} counts the plans, {@link hurdline.study.choose.Choose}
 * goes through the rounds of {@link hurdline.statistics.LeaderScreening}, and a {@link
 * hurdline.study.choose.BlockRunner} simulates blocks of plans and years, here on the threads of
 * this machine. All decisions are taken where the numbers come together, so who simulates does not
 * show. Read {@link hurdline.study.choose.Choose} first.
 */
package hurdline.study.choose;
