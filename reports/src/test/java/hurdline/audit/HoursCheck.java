package hurdline.audit;

import hurdline.measure.Kpi;
import hurdline.measure.Measure;
import hurdline.measure.MeasureName;
import hurdline.measure.State;
import hurdline.measure.Use;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * Hours: every machine, line, mill and the building has each hour once; crews and shifts are those
 * of the calendar.
 */
final class HoursCheck implements Check {
  static final String STATES = "states of a machine fill the horizon";
  static final String CAUSES = "causes fill the scheduled hours";
  static final String STOPS = "stops are the hours down";
  static final String SCREENS = "screens are the hours running";
  static final String CROPS = "hours by crop are the machine's";
  static final String BUILDING = "uses of the building fill the horizon";
  static final String RATIOS = "ratios of ISO 22400-2";
  static final String CALENDAR = "shifts and crews of the calendar";

  private static final Set<State> NO_CROP = Set.of(State.UNUSED, State.CHANGEOVER);

  @Override
  public void compare(WrittenAnswer answer, Ledger ledger) {
    for (String option : answer.options()) {
      Samples samples = answer.samples(option);
      PlantFacts plant = answer.plant(option);
      samples
          .each()
          .forEach(
              replication -> {
                String where = option + " replication " + (replication + 1) + " ";
                machines(samples, replication, where, plant, ledger);
                lines(samples, replication, where, plant, ledger);
                building(samples, replication, where, plant.horizonH(), ledger);
              });
    }
  }

  private static void machines(
      Samples samples, int replication, String where, PlantFacts plant, Ledger ledger) {
    double horizonH = plant.horizonH();
    for (String machine : samples.names(Measure.MACHINE_HOURS)) {
      ToDoubleFunction<State> hours =
          state -> samples.at(replication, Measure.MACHINE_HOURS, machine, state.word());
      double all = 0;
      for (State state : State.values()) {
        all += hours.applyAsDouble(state);
      }
      ledger.near(STATES, where + machine, horizonH, all);
      stops(
          samples,
          replication,
          where,
          machine,
          hours.applyAsDouble(State.DOWN) + hours.applyAsDouble(State.PLANNED),
          byClock(samples, replication, machine, plant),
          ledger);
      double running = hours.applyAsDouble(State.SLOWED) + hours.applyAsDouble(State.FULL_RATE);
      if (samples.names(Measure.MACHINE_SCREEN_HOURS).contains(machine)) {
        ledger.near(
            SCREENS,
            where + machine,
            running,
            ofMachine(samples, replication, Measure.MACHINE_SCREEN_HOURS, machine));
      }
      if (samples.names(Measure.MACHINE_CROP_HOURS).contains(machine)) {
        crops(samples, replication, where, machine, ledger);
      }
      if (samples.names(Measure.MACHINE_KPI).contains(machine)) {
        ratios(samples, replication, where, machine, hours, ledger);
      }
    }
  }

  /** The sum of a measure over all names behind the machine's. */
  static double ofMachine(Samples samples, int replication, Measure measure, String machine) {
    double sum = 0;
    for (MeasureName match : samples.matches(measure)) {
      if (match.names().get(0).equals(machine)) {
        sum += samples.at(replication, measure.of(match.names().toArray(String[]::new)));
      }
    }
    return sum;
  }

  /** Hours of planned stops that run by the clock, whether anybody works the machine or not. */
  private static double byClock(
      Samples samples, int replication, String machine, PlantFacts plant) {
    double sum = 0;
    for (String stop : plant.names("machines." + machine + ".stops")) {
      String path = "machines." + machine + ".stops." + stop;
      boolean inHours = plant.text(path + ".repair").filter("in-hours"::equals).isPresent();
      if (plant.has(path + ".on") && !inHours) {
        sum += samples.at(replication, Measure.MACHINE_STOP_HOURS, machine, stop);
      }
    }
    return sum;
  }

  /** All of them but for those by the clock, of which some may lie outside of the hours. */
  private static void stops(
      Samples samples,
      int replication,
      String where,
      String machine,
      double downH,
      double byClockH,
      Ledger ledger) {
    if (samples.names(Measure.MACHINE_STOP_HOURS).contains(machine)) {
      double all = ofMachine(samples, replication, Measure.MACHINE_STOP_HOURS, machine);
      if (byClockH > 0) {
        ledger.between(STOPS, where + machine, all - byClockH, downH, all);
      } else {
        ledger.near(STOPS, where + machine, downH, all);
      }
    } else {
      ledger.near(STOPS, where + machine, 0, downH);
    }
  }

  private static void crops(
      Samples samples, int replication, String where, String machine, Ledger ledger) {
    List<String> crops =
        samples.matches(Measure.MACHINE_CROP_HOURS).stream()
            .map(match -> match.names().get(1))
            .distinct()
            .toList();
    for (State state : State.values()) {
      if (!NO_CROP.contains(state)) {
        double sum = 0;
        for (String crop : crops) {
          sum += samples.at(replication, Measure.MACHINE_CROP_HOURS, machine, crop, state.word());
        }
        double all = samples.at(replication, Measure.MACHINE_HOURS, machine, state.word());
        ledger.near(CROPS, where + machine + " " + state.word(), all, sum);
      }
    }
    double mass = samples.at(replication, Measure.MACHINE_MASS_IN, machine);
    ledger.near(
        CROPS,
        where + machine + " mass",
        mass,
        ofMachine(samples, replication, Measure.MACHINE_CROP_MASS_IN, machine));
  }

  private static void ratios(
      Samples samples,
      int replication,
      String where,
      String machine,
      ToDoubleFunction<State> hours,
      Ledger ledger) {
    double produced = hours.applyAsDouble(State.SLOWED) + hours.applyAsDouble(State.FULL_RATE);
    double setup = hours.applyAsDouble(State.CHANGING);
    double delayed = hours.applyAsDouble(State.DOWN);
    double waited = hours.applyAsDouble(State.STARVED) + hours.applyAsDouble(State.BLOCKED);
    double duty = produced + setup + delayed + waited;
    for (Kpi kpi : Kpi.values()) {
      double expected =
          switch (kpi) {
            case ALLOCATION -> (duty - waited) / duty;
            case UTILIZATION -> produced / (duty - waited);
            case AVAILABILITY -> produced / duty;
            case TECHNICAL -> produced / (produced + delayed);
            case SETUP -> setup / (produced + setup);
          };
      ledger.near(
          RATIOS,
          where + machine + " " + kpi,
          expected,
          samples.at(replication, Measure.MACHINE_KPI, machine, kpi.word()));
    }
  }

  private static void lines(
      Samples samples, int replication, String where, PlantFacts plant, Ledger ledger) {
    ShiftCalendar calendar = new ShiftCalendar(plant);
    for (String line : samples.names(Measure.LINE_HOURS_SCHEDULED)) {
      double scheduled = samples.at(replication, Measure.LINE_HOURS_SCHEDULED, line);
      double caused = ofMachine(samples, replication, Measure.LINE_HOURS_LIMITED_BY, line);
      ledger.near(CAUSES, where + line, scheduled, caused);
      double sentHome = samples.at(replication, Measure.CREW_SENT_HOME, line);
      double hands = samples.at(replication, Measure.CREW_LABOR_HOURS, line) + sentHome;
      boolean allCame = !samples.has(Measure.CREW_SHORT.of(line));
      if (sentHome == 0 && allCame && neverRanOut(samples, replication, line)) {
        ledger.near(CALENDAR, where + line, calendar.scheduledH(line), scheduled);
        ledger.near(CALENDAR, where + line + " hands", calendar.handH(line), hands);
      } else {
        ledger.between(CALENDAR, where + line, 0, scheduled, calendar.scheduledH(line));
        ledger.between(CALENDAR, where + line + " hands", 0, hands, calendar.handH(line));
      }
      double changeover = samples.at(replication, Measure.CREW_CHANGEOVER, line);
      ledger.near(
          CALENDAR, where + line + " changeover", calendar.changeoverHandH(line), changeover);
    }
  }

  /** Whether each campaign of the line ended on its date with crop left. */
  private static boolean neverRanOut(Samples samples, int replication, String line) {
    boolean left = samples.at(replication, Measure.SEASON_LEFT_OVER, line) > 0;
    for (MeasureName match : samples.matches(Measure.SEASON_NTH_LEFT_OVER)) {
      left &=
          !match.names().get(0).equals(line)
              || samples.at(
                      replication,
                      Measure.SEASON_NTH_LEFT_OVER.of(match.names().toArray(String[]::new)))
                  > 0;
    }
    return left && samples.at(replication, Measure.LINE_HOURS_LIMITED_BY, line, "crop_done") == 0;
  }

  private static void building(
      Samples samples, int replication, String where, double horizonH, Ledger ledger) {
    if (!samples.has(Measure.BUILDING_HOURS.of(Use.STAFFED.word()))) {
      return;
    }
    ToDoubleFunction<Use> hours =
        use -> samples.at(replication, Measure.BUILDING_HOURS, use.word());
    double all = 0;
    for (Use use : Use.values()) {
      all += use == Use.CONCURRENT ? 0 : hours.applyAsDouble(use);
    }
    ledger.near(BUILDING, where, horizonH, all);
    double alone = samples.sum(replication, Measure.BUILDING_ALONE, false);
    ledger.near(
        BUILDING,
        where + " by line",
        hours.applyAsDouble(Use.STAFFED),
        alone + hours.applyAsDouble(Use.CONCURRENT));
  }
}
