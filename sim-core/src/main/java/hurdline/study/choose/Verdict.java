package hurdline.study.choose;

import hurdline.answer.ChoiceRound;
import hurdline.answer.Fact;
import hurdline.answer.FrontierRow;
import hurdline.statistics.LeaderScreening;
import java.util.List;
import java.util.Map;

/**
 * What was judged of the plans.
 *
 * @param named number of the plan that is named
 * @param left plans that may be the best, the named one among them
 * @param exits plans that went out
 * @param frontier the best without a limit, then under each budget
 * @param rounds of every budget; none where no rounds are judged
 * @param gaps what the best may be above a plan, of those of which it is known
 * @param how it was judged
 * @param unsure plans whose limits may fail more often than stated
 */
record Verdict(
    int named,
    List<Integer> left,
    List<LeaderScreening.Exit> exits,
    List<FrontierRow> frontier,
    List<ChoiceRound> rounds,
    Map<Integer, Double> gaps,
    List<Fact> how,
    int unsure) {}
