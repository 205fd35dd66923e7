package hurdline.capacity;

import hurdline.compiled.BinHours;
import hurdline.compiled.CampaignHours;
import hurdline.compiled.CompiledLines;
import hurdline.compiled.TimeWindows;
import java.util.Optional;
import java.util.function.IntPredicate;

/** Hours in which stops are counted and repaired. */
final class StopHours {
  private final CapacityPlant plant;
  private final CompiledLines layout;

  StopHours(CapacityPlant plant) {
    this.plant = plant;
    layout = plant.layout;
  }

  RepairHours of(int stop) {
    int m = layout.stops.machine(stop);
    double horizonS = plant.roster.horizonS();
    TimeWindows all = crewed(m, line -> true);
    if (layout.stops.stop(stop).count().isOfAll()) {
      return new RepairHours(all, horizonS);
    }
    boolean[] lines = layout.stops.lines(stop);
    return new RepairHours(all, crewed(m, line -> lines[line]), held(m, lines), horizonS);
  }

  /** Hours of the lines and heads that use a machine. */
  private TimeWindows crewed(int machine, IntPredicate ofLine) {
    TimeWindows all = TimeWindows.NONE;
    for (int h : layout.headsOf[machine]) {
      all = ofLine.test(layout.headLine[h]) ? all.union(plant.headHours(h)) : all;
    }
    for (int l : layout.linesAlongside[machine]) {
      all = ofLine.test(l) ? all.union(plant.lineHours(l)) : all;
    }
    return all;
  }

  /** When a campaign of these lines, or the own hours of one of their bins, have a machine. */
  private TimeWindows held(int machine, boolean[] lines) {
    TimeWindows all = TimeWindows.NONE;
    for (CampaignHours campaign : plant.roster.campaigns()) {
      int l = layout.naming.lines.index(campaign.line());
      if (lines[l] && uses(l, machine)) {
        all = all.union(TimeWindows.of(campaign.beginS(), campaign.untilS()));
      }
    }
    for (int h : layout.headsOf[machine]) {
      if (lines[layout.headLine[h]] && layout.headBin[h] >= 0) {
        all = all.union(owned(h));
      }
    }
    return all;
  }

  private TimeWindows owned(int head) {
    Optional<BinHours> own =
        plant.roster.ownHours(
            layout.naming.lines.name(layout.headLine[head]),
            layout.naming.bins.name(layout.headBin[head]));
    return own.map(BinHours::owned).orElse(TimeWindows.NONE);
  }

  private boolean uses(int line, int machine) {
    for (int h : layout.headsOf[machine]) {
      if (layout.headLine[h] == line) {
        return true;
      }
    }
    for (int l : layout.linesAlongside[machine]) {
      if (l == line) {
        return true;
      }
    }
    return false;
  }
}
