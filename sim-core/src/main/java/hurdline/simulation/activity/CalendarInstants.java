package hurdline.simulation.activity;

import hurdline.compiled.BinHours;
import hurdline.compiled.CampaignHours;
import hurdline.compiled.ChangeoverHours;
import hurdline.compiled.PaidShift;
import hurdline.compiled.Roster;
import hurdline.compiled.TimeWindows;
import java.util.TreeSet;

/** All instants at which the calendar may change something, and every midnight. */
final class CalendarInstants {
  private final TreeSet<Double> at = new TreeSet<>();

  private CalendarInstants() {}

  /**
   * @param own own hours, null where there are none
   */
  static double[] of(
      Roster roster, CampaignHours[] campaigns, BinHours[] own, TimeWindows[] receiving) {
    CalendarInstants all = new CalendarInstants();
    for (CampaignHours campaign : campaigns) {
      all.add(campaign);
    }
    for (BinHours bin : own) {
      if (bin != null) {
        all.add(bin.hours());
        all.add(bin.owned());
      }
    }
    for (ChangeoverHours changeover : roster.changeovers()) {
      all.at.add(changeover.fromS());
      all.at.add(changeover.toS());
    }
    for (TimeWindows hours : receiving) {
      all.add(hours);
    }
    for (int day = 0; day <= roster.days(); day++) {
      all.at.add(roster.midnightS(day));
    }
    return all.at.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private void add(CampaignHours campaign) {
    at.add(campaign.beginS());
    at.add(campaign.untilS());
    add(campaign.hours());
    for (PaidShift shift : campaign.shifts()) {
      at.add(shift.fromS());
      at.add(shift.toS());
    }
  }

  private void add(TimeWindows hours) {
    for (int i = 0; i < hours.count(); i++) {
      at.add(hours.fromS(i));
      at.add(hours.toS(i));
    }
  }
}
