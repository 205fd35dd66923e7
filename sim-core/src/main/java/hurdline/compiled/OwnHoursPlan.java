package hurdline.compiled;

import hurdline.plant.SeasonEntry.Campaign;
import hurdline.plant.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * Lays the hours that a bin's draw keeps for itself on the horizon.
 *
 * <p>Without dates they follow each campaign of the line, from when it begins. With one date or
 * both they are one range, what is missing taken from the line's first or last campaign. Shifts
 * left out are, on each date, those of the campaign that the date lies in, or of the last one
 * before it, or of the first. No shift starts in a changeover of the line, and one that runs into
 * it is broken off in its hours, though paid whole.
 */
final class OwnHoursPlan {
  private final Horizon horizon;
  private final ShiftPlan plan;
  private final List<Campaign> campaigns;
  private final SeasonPlan season;

  /**
   * @param campaigns of the season, in its order
   */
  OwnHoursPlan(Horizon horizon, ShiftPlan plan, List<Campaign> campaigns, SeasonPlan season) {
    this.horizon = horizon;
    this.plan = plan;
    this.campaigns = campaigns;
    this.season = season;
  }

  /** Days of one range and the instant before which nothing begins. */
  private record Range(int firstDay, int lastDay, double beginS) {}

  BinHours of(RosterBasis.Own of) {
    Step.OwnHours own = of.hours();
    TimeWindows changing = changeoversOf(of.line());
    List<PaidShift> shifts = new ArrayList<>();
    TimeWindowsBuilder owned = new TimeWindowsBuilder();
    for (Range range : ranges(of.line(), own)) {
      List<PaidShift> inRange = shiftsIn(range, of.line(), own, changing);
      double untilS = horizon.cutS((range.lastDay() + 1) * Horizon.DAY_S);
      for (PaidShift shift : inRange) {
        untilS = Math.max(untilS, shift.toS());
      }
      owned.add(Math.max(range.beginS(), horizon.cutS(range.firstDay() * Horizon.DAY_S)), untilS);
      shifts.addAll(inRange);
    }
    List<PaidShift> once = shifts.stream().distinct().toList();
    return new BinHours(
        of.line(), of.bin(), plan.worked(once).minus(changing), owned.build(), once);
  }

  private List<Range> ranges(String line, Step.OwnHours own) {
    List<Range> ofCampaigns = new ArrayList<>();
    for (int i = 0; i < campaigns.size(); i++) {
      Campaign campaign = campaigns.get(i);
      if (campaign.line().equals(line)) {
        double beginS = season.campaigns().get(i).beginS();
        ofCampaigns.add(
            new Range(horizon.day(campaign.from()), horizon.day(campaign.to()), beginS));
      }
    }
    if (own.from().isEmpty() && own.to().isEmpty()) {
      return ofCampaigns;
    }
    if (ofCampaigns.isEmpty() && (own.from().isEmpty() || own.to().isEmpty())) {
      return List.of();
    }
    int first = own.from().map(horizon::day).orElseGet(() -> ofCampaigns.get(0).firstDay());
    int last =
        own.to()
            .map(horizon::day)
            .orElseGet(() -> ofCampaigns.get(ofCampaigns.size() - 1).lastDay());
    return first > last ? List.of() : List.of(new Range(first, last, 0));
  }

  private List<PaidShift> shiftsIn(
      Range range, String line, Step.OwnHours own, TimeWindows changing) {
    List<PaidShift> shifts = new ArrayList<>();
    int end = Math.min(range.lastDay() + 1, horizon.days());
    for (int day = Math.max(0, range.firstDay()); day < end; day++) {
      List<String> names = own.shifts().isEmpty() ? shiftsOfLineOn(day, line) : own.shifts();
      for (PaidShift shift : plan.on(day, line, plan.named(names))) {
        if (shift.fromS() >= range.beginS() && !changing.in(shift.fromS())) {
          shifts.add(shift);
        }
      }
    }
    return shifts;
  }

  private List<String> shiftsOfLineOn(int day, String line) {
    List<String> names = null;
    for (Campaign campaign : campaigns) {
      boolean begun = horizon.day(campaign.from()) <= day;
      if (campaign.line().equals(line) && (names == null || begun)) {
        names = campaign.shifts();
      }
    }
    return names == null ? List.of() : names;
  }

  private TimeWindows changeoversOf(String line) {
    TimeWindowsBuilder changing = new TimeWindowsBuilder();
    for (ChangeoverHours changeover : season.changeovers()) {
      boolean before = campaigns.get(changeover.before()).line().equals(line);
      boolean after =
          changeover.after().isPresent()
              && campaigns.get(changeover.after().getAsInt()).line().equals(line);
      if (before || after) {
        changing.add(changeover.fromS(), changeover.toS());
      }
    }
    return changing.build();
  }
}
