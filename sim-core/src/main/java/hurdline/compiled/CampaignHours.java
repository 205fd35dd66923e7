package hurdline.compiled;

import java.util.List;

/**
 * One campaign of the season, compiled.
 *
 * @param entry its place in the season's list, changeovers counted too
 * @param ordinal the how-manieth campaign of its line it is, from 1
 * @param plannedS 00:00 of its first date
 * @param beginS when it has its machines: {@code plannedS}, or the end of the changeover before it
 *     if that is later
 * @param untilS when it gives them up at the latest: 24:00 of its last date, or the end of a shift
 *     that runs past it; never before {@code beginS}
 * @param hours its shifts less their rests
 * @param shifts in order of their start, then as the campaign names them
 */
public record CampaignHours(
    int entry,
    String line,
    int ordinal,
    double plannedS,
    double beginS,
    double untilS,
    TimeWindows hours,
    List<PaidShift> shifts) {
  public CampaignHours {
    shifts = List.copyOf(shifts);
  }
}
