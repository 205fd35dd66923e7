package hurdline.work;

import hurdline.account.IntakeBooks;
import hurdline.account.MaterialBooks;
import hurdline.line.Layout;
import hurdline.line.Periods;
import hurdline.measure.Kpi;
import hurdline.measure.Measure;
import hurdline.measure.State;
import hurdline.measure.Use;
import java.util.List;

/** How the crops shared the building: machines by crop, the building's uses, what was finished. */
final class Sharing {
  private static final double HOUR_S = 3600;
  private static final double TONNE_KG = 1000;

  private final Present present;
  private final Layout layout;
  private final Feeding feeding;
  private final Rostering rostering;
  private final Watching watching;
  private final MaterialBooks material;
  private final IntakeBooks intake;
  private final MoneyTally money;
  private final Periods weeks;
  private final int crops;
  private final double[][] totals; // [week] as in Outcome.Shared.strips, from the first day on
  private final Tally tally = new Tally();
  private int week;

  Sharing(
      Present present,
      Feeding feeding,
      Rostering rostering,
      Watching watching,
      MaterialBooks material,
      IntakeBooks intake,
      MoneyTally money) {
    this.present = present;
    this.feeding = feeding;
    this.rostering = rostering;
    this.watching = watching;
    this.material = material;
    this.intake = intake;
    this.money = money;
    layout = present.layout;
    weeks = present.roster.weeks();
    crops = layout.naming.crops.count();
    totals = new double[weeks.count()][2 * layout.machines * crops];
  }

  void reset() {
    week = 0;
  }

  /** All states and lots are booked up to now; takes the totals of a week that ends now. */
  void book(double nowS) {
    if (week < weeks.count() && nowS == weeks.toS(week)) {
      watching.crops.takeAll(watching.states);
      for (int m = 0; m < layout.machines; m++) {
        for (int c = 0; c < crops; c++) {
          int at = 2 * (m * crops + c);
          totals[week][at] =
              (watching.crops.lastedS(m, c, State.SLOWED.ordinal())
                      + watching.crops.lastedS(m, c, State.FULL_RATE.ordinal()))
                  / HOUR_S;
          totals[week][at + 1] = tonnes(m, c);
        }
      }
      week++;
    }
  }

  private double tonnes(int machine, int crop) {
    double kg = 0;
    for (int l = 0; l < layout.lines; l++) {
      kg += layout.crop[l] == crop ? material.lineMachineKg[l * layout.machines + machine] : 0;
    }
    return kg / TONNE_KG;
  }

  /** To be asked when all books are closed and the money is worked out. */
  Outcome.Shared outcome() {
    watching.crops.takeAll(watching.states);
    watching.building.bookAll(present.nowS);
    tally.start();
    for (int m = 0; m < layout.machines; m++) {
      for (int c = 0; c < crops; c++) {
        machine(m, c);
      }
    }
    for (int m = 0; m < layout.machines; m++) {
      ratios(m);
    }
    building();
    finished();
    return new Outcome.Shared(List.copyOf(tally.columns()), tally.values(), strips());
  }

  private void machine(int m, int c) {
    String machine = layout.machine[m].name();
    String crop = layout.naming.crops.name(c);
    for (State state : State.values()) {
      if (state != State.UNUSED && state != State.CHANGEOVER) {
        double lasted = watching.crops.lastedS(m, c, state.ordinal());
        tally.put(Measure.MACHINE_CROP_HOURS, lasted / HOUR_S, machine, crop, state.word());
      }
    }
    tally.put(Measure.MACHINE_CROP_MASS_IN, tonnes(m, c), machine, crop);
  }

  private void ratios(int m) {
    double production = lasted(m, State.SLOWED) + lasted(m, State.FULL_RATE);
    double setup = lasted(m, State.CHANGING);
    double delay = lasted(m, State.DOWN);
    double busy = production + setup + delay;
    double planned = busy + lasted(m, State.STARVED) + lasted(m, State.BLOCKED);
    for (Kpi kpi : Kpi.values()) {
      double ratio =
          switch (kpi) {
            case ALLOCATION -> busy / planned;
            case UTILIZATION -> production / busy;
            case AVAILABILITY -> production / planned;
            case TECHNICAL -> production / (production + delay);
            case SETUP -> setup / (production + setup);
          };
      tally.put(Measure.MACHINE_KPI, ratio, layout.machine[m].name(), kpi.word());
    }
  }

  private double lasted(int machine, State state) {
    return watching.states.lastedS(machine, state.ordinal());
  }

  private void building() {
    double worked = watching.building.lastedS(0, Use.CONCURRENT.ordinal());
    for (int l = 0; l < layout.lines; l++) {
      double alone = watching.building.lastedS(0, Use.values().length + l);
      tally.put(Measure.BUILDING_ALONE, alone / HOUR_S, layout.naming.lines.name(l));
      worked += alone;
    }
    for (Use use : Use.values()) {
      double lasted = use == Use.STAFFED ? worked : watching.building.lastedS(0, use.ordinal());
      tally.put(Measure.BUILDING_HOURS, lasted / HOUR_S, use.word());
    }
  }

  private void finished() {
    boolean hasMoney = layout.plant.money().isPresent();
    boolean all = !liesUnplanned();
    double forgone = all ? 0 : Double.NaN;
    for (int l = 0; l < layout.lines; l++) {
      int last = lastCampaign(l);
      if (last >= 0) {
        String line = layout.naming.lines.name(l);
        int left = rostering.leftOver[last];
        all &= left == 0;
        tally.put(Measure.SEASON_LINE_FINISHED, left == 0 ? 1 : 0, line);
        if (hasMoney) {
          tally.put(Measure.SEASON_MARGIN_FORGONE, notEarned(l, left), line);
          forgone += Math.max(0, notEarned(l, left));
        }
      }
    }
    tally.put(Measure.SEASON_FINISHED, all ? 1 : 0);
    if (hasMoney) {
      tally.put(Measure.MONEY_MARGIN_LESS_FORGONE, money.margin() - forgone);
    }
  }

  /** Whether there is crop at the end that no line with a campaign takes, baled at a field or in the yard. */
  private boolean liesUnplanned() {
    for (int c = 0; c < crops; c++) {
      boolean planned = false;
      for (int l = 0; l < layout.lines; l++) {
        planned |= layout.crop[l] == c && lastCampaign(l) >= 0;
      }
      if (!planned && intake.levels.inYard(c) + intake.heldAtField(c) > 0) {
        return true;
      }
    }
    return false;
  }

  private int lastCampaign(int line) {
    int last = -1;
    for (int c = 0; c < rostering.campaigns(); c++) {
      last = rostering.lineOf(c) == line ? c : last;
    }
    return last;
  }

  /** Bales left over bring what those fed have brought, bale for bale. */
  private double notEarned(int line, int left) {
    int used = feeding.usedUp[line];
    return used > 0 ? left * money.margin(line) / used : left == 0 ? 0 : Double.NaN;
  }

  private double[][] strips() {
    double[][] brought = new double[totals.length][];
    for (int w = 0; w < brought.length; w++) {
      brought[w] = totals[w].clone();
      for (int k = 0; w > 0 && k < brought[w].length; k++) {
        brought[w][k] -= totals[w - 1][k];
      }
    }
    return brought;
  }
}
