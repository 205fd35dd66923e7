package hurdline.work;

import hurdline.line.BinHours;
import hurdline.line.CampaignHours;
import hurdline.line.ChangeoverHours;
import hurdline.line.Hours;
import hurdline.line.PaidShift;
import hurdline.line.Roster;
import java.util.TreeSet;

/** All instants at which the calendar may change something, and every midnight. */
final class Boundaries {
  private final TreeSet<Double> at = new TreeSet<>();

  private Boundaries() {}

  /** @param own own hours, null where there are none */
  static double[] of(Roster roster, CampaignHours[] campaigns, BinHours[] own, Hours[] receiving) {
    Boundaries all = new Boundaries();
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
    for (Hours hours : receiving) {
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

  private void add(Hours hours) {
    for (int i = 0; i < hours.count(); i++) {
      at.add(hours.fromS(i));
      at.add(hours.toS(i));
    }
  }
}
