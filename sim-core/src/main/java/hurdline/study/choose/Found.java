package hurdline.study.choose;

import java.util.List;
import java.util.Map;

/**
 * What came of a choosing.
 *
 * @param years that chose and judged
 * @param fresh the last years
 * @param outOfBounds which bound plans do not meet
 * @param shown plans in the last years
 * @param simulated years in all
 */
record Found(
    Verdict verdict,
    PlanYears years,
    PlanYears fresh,
    Map<Integer, String> outOfBounds,
    List<Integer> shown,
    long simulated) {}
