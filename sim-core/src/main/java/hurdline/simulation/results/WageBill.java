package hurdline.simulation.results;

import hurdline.compiled.CompiledLines;
import hurdline.compiled.Periods;
import hurdline.plant.Money;
import hurdline.simulation.activity.Crewing;
import hurdline.simulation.activity.ReplicationState;
import java.util.Arrays;

/**
 * What hands are paid up to now: in shifts and changeovers by their start, after shifts, receiving.
 */
final class WageBill {
  private final ReplicationState present;
  private final CompiledLines layout;
  private final Crewing crewing;
  private final Money money;
  private final CropShare share;

  final double[] byLine;
  final double[] byMonth;

  /** For receiving crops that no line takes. */
  double ofNoLine;

  /** A line's share of what its crop costs. */
  interface CropShare {
    double of(int line, int crop);
  }

  WageBill(ReplicationState present, Crewing crewing, Money money, CropShare share) {
    this.present = present;
    this.crewing = crewing;
    this.money = money;
    this.share = share;
    layout = present.layout;
    byLine = new double[layout.lines];
    byMonth = new double[present.roster.months().count()];
  }

  void workOut() {
    Arrays.fill(byLine, 0);
    Arrays.fill(byMonth, 0);
    ofNoLine = 0;
    crewing.shifts(this::pay);
    crewing.changeovers(this::pay);
    for (int l = 0; l < layout.lines; l++) {
      payAfterShift(l);
    }
    for (int crop = 0; crop < layout.naming.crops.count(); crop++) {
      payReceiving(crop);
    }
  }

  private void pay(int line, double handSeconds, double overtimeHandSeconds, double atS) {
    if (!(atS < present.nowS)) {
      return;
    }
    double more = (overtimePays() - 1) * overtimeHandSeconds;
    double paid = (handSeconds + more) * money.wagePerS();
    byLine[line] += paid;
    byMonth[present.roster.months().at(atS)] += paid;
  }

  private void payAfterShift(int line) {
    for (int month = 0; month < byMonth.length; month++) {
      double paid = crewing.afterShiftS(line, month) * overtimePays() * money.wagePerS();
      byLine[line] += paid;
      byMonth[month] += paid;
    }
  }

  private double overtimePays() {
    return money.overtime().map(Money.Overtime::pays).orElse(1.0);
  }

  private void payReceiving(int crop) {
    Periods months = present.roster.months();
    for (int day = 0; day < present.roster.days(); day++) {
      double paid = crewing.receivingS(crop, day) * money.wagePerS();
      if (paid > 0) {
        byMonth[months.at(present.roster.midnightS(day))] += paid;
        boolean takes = false;
        for (int l = 0; l < layout.lines; l++) {
          byLine[l] += paid * share.of(l, crop);
          takes |= share.of(l, crop) > 0;
        }
        ofNoLine += takes ? 0 : paid;
      }
    }
  }
}
