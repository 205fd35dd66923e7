package hurdline.simulation.results;

import hurdline.account.MaterialBooks;
import hurdline.compiled.CompiledLines;
import hurdline.compiled.Periods;
import hurdline.measure.Kpi;
import hurdline.measure.Measure;
import hurdline.measure.State;
import hurdline.measure.Use;
import hurdline.simulation.activity.ReplicationState;
import hurdline.simulation.activity.StateRecorder;
import java.util.List;

/** How the crops shared the building: machines by crop, the building's uses, what was finished. */
final class CropShares {
  private static final double HOUR_S = 3600;
  private static final double TONNE_KG = 1000;

  private final ReplicationState present;
  private final CompiledLines layout;
  private final StateRecorder watching;
  private final MaterialBooks material;
  private final CropLeft left;
  private final Periods weeks;
  private final int crops;
  private final double[][] totals; // [week] as in Outcome.Shared.strips, from the first day on
  private final OutcomeWriter tally = new OutcomeWriter();
  private int week;

  CropShares(
      ReplicationState present, StateRecorder watching, MaterialBooks material, CropLeft left) {
    this.present = present;
    this.watching = watching;
    this.material = material;
    this.left = left;
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
    for (int l = 0; l < layout.lines; l++) {
      if (left.hasCampaign(l)) {
        String line = layout.naming.lines.name(l);
        tally.put(Measure.SEASON_LINE_FINISHED, left.leftOfLine(l) == 0 ? 1 : 0, line);
        if (layout.plant.money().isPresent()) {
          tally.put(Measure.SEASON_MARGIN_FORGONE, left.marginForgone(l), line);
        }
      }
    }
    tally.put(Measure.SEASON_FINISHED, left.isAllFinished() ? 1 : 0);
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
