package hurdline.compiled;

import hurdline.plant.Calendar;
import hurdline.plant.SeasonEntry;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/**
 * Lays campaigns and changeovers on the horizon, in the season's order, since each may wait for the
 * one before it.
 *
 * <p>A changeover takes the first dates after the campaign before it on which that campaign's
 * shifts would start. It begins at 00:00 of the first of them, or when a shift of that campaign
 * that runs past this ends. A campaign waits for the changeovers that stand directly before it in
 * the list, and a second changeover in a row follows the first.
 */
final class SeasonPlan {
  private final Horizon horizon;
  private final ShiftPlan plan;
  private final List<CampaignHours> campaigns = new ArrayList<>();
  private final List<ChangeoverHours> changeovers = new ArrayList<>();
  private final Map<String, Integer> campaignsOfLine = new HashMap<>();

  private final int campaignsInAll;
  private SeasonEntry.Campaign last;
  private int changedByDay;
  private double changedByS;

  SeasonPlan(Horizon horizon, ShiftPlan plan, List<SeasonEntry> season) {
    this.horizon = horizon;
    this.plan = plan;
    campaignsInAll = (int) season.stream().filter(SeasonEntry.Campaign.class::isInstance).count();
    for (int entry = 0; entry < season.size(); entry++) {
      if (season.get(entry) instanceof SeasonEntry.Campaign campaign) {
        add(entry, campaign);
      } else if (season.get(entry) instanceof SeasonEntry.Changeover changeover) {
        add(entry, changeover);
      }
    }
  }

  List<CampaignHours> campaigns() {
    return campaigns;
  }

  List<ChangeoverHours> changeovers() {
    return changeovers;
  }

  private void add(int entry, SeasonEntry.Campaign campaign) {
    double plannedS = horizon.cutS(horizon.day(campaign.from()) * Horizon.DAY_S);
    double beginS = Math.max(plannedS, changedByS);
    List<PaidShift> shifts = shiftsOf(campaign, beginS);
    double untilS =
        Math.max(beginS, horizon.cutS((horizon.day(campaign.to()) + 1) * Horizon.DAY_S));
    for (PaidShift shift : shifts) {
      untilS = Math.max(untilS, shift.toS());
    }
    int ordinal = campaignsOfLine.merge(campaign.line(), 1, Integer::sum);
    campaigns.add(
        new CampaignHours(
            entry,
            campaign.line(),
            ordinal,
            plannedS,
            beginS,
            untilS,
            plan.worked(shifts),
            shifts));
    last = campaign;
    changedByDay = horizon.day(campaign.to());
    changedByS = 0;
  }

  private List<PaidShift> shiftsOf(SeasonEntry.Campaign campaign, double beginS) {
    List<Calendar.Shift> named = plan.named(campaign.shifts());
    List<PaidShift> shifts = new ArrayList<>();
    int end = Math.min(horizon.day(campaign.to()) + 1, horizon.days());
    for (int day = Math.max(0, horizon.day(campaign.from())); day < end; day++) {
      for (PaidShift shift : plan.on(day, campaign.line(), named)) {
        if (shift.fromS() >= beginS) {
          shifts.add(shift);
        }
      }
    }
    return shifts;
  }

  private void add(int entry, SeasonEntry.Changeover changeover) {
    if (last == null) {
      throw new IllegalArgumentException(
          "season entry " + entry + " is a changeover; expected a campaign before it");
    }
    int before = campaigns.size() - 1;
    List<Calendar.Shift> shifts = plan.named(last.shifts());
    List<Integer> dates = datesAfter(changedByDay, changeover.days(), shifts);
    double freeS = Math.max(campaigns.get(before).untilS(), changedByS);
    double fromS = Math.max(freeS, startS(dates, changeover.days()));
    double toS = Math.max(fromS, endS(dates, changeover.days()));
    OptionalInt after =
        before + 1 < campaignsInAll ? OptionalInt.of(before + 1) : OptionalInt.empty();
    double paidS = changeover.hands() * earliestShiftsS(dates, shifts);
    changeovers.add(
        new ChangeoverHours(entry, fromS, toS, before, after, changeover.hands(), paidS));
    changedByDay = dates.isEmpty() ? changedByDay : dates.get(dates.size() - 1);
    changedByS = toS;
  }

  private double startS(List<Integer> dates, int wanted) {
    if (wanted == 0) {
      return 0;
    }
    return dates.isEmpty() ? horizon.lengthS() : dates.get(0) * Horizon.DAY_S;
  }

  /** Where the horizon holds too few dates the changeover runs past its end, and is cut there. */
  private double endS(List<Integer> dates, int wanted) {
    if (wanted == 0) {
      return 0;
    }
    return dates.size() < wanted ? horizon.lengthS() : (dates.get(wanted - 1) + 1) * Horizon.DAY_S;
  }

  private double earliestShiftsS(List<Integer> dates, List<Calendar.Shift> shifts) {
    double sumS = 0;
    for (int day : dates) {
      PaidShift earliest = plan.on(day, last.line(), shifts).get(0);
      sumS += earliest.toS() - earliest.fromS();
    }
    return sumS;
  }

  private List<Integer> datesAfter(int day, int count, List<Calendar.Shift> shifts) {
    List<Integer> dates = new ArrayList<>();
    for (int next = Math.max(0, day + 1); next < horizon.days() && dates.size() < count; next++) {
      if (plan.anyStartsOn(next, shifts)) {
        dates.add(next);
      }
    }
    return dates;
  }
}
