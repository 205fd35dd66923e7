package hurdline.audit;

import hurdline.measure.Measure;
import hurdline.measure.MeasureName;
import hurdline.measure.State;

/**
 * Electricity: power times hours up for machines of constant power, the grinding law for mills, and
 * their sum with base loads.
 */
final class EnergyCheck implements Check {
  static final String CONSTANT = "power times hours up";
  static final String MILLS = "energy of mills";
  static final String SUM = "energy of all machines";

  private static final String MILL = "hammer-mill";

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
                double all =
                    samples.sum(replication, Measure.MACHINE_ENERGY, false)
                        + samples.sum(replication, Measure.BASE_LOAD_ENERGY, false);
                ledger.near(SUM, where, all, samples.at(replication, Measure.ENERGY_TOTAL));
                for (String machine : samples.names(Measure.MACHINE_ENERGY)) {
                  machine(samples, replication, where, machine, plant, ledger);
                }
              });
    }
  }

  private static void machine(
      Samples samples,
      int replication,
      String where,
      String machine,
      PlantFacts plant,
      Ledger ledger) {
    String path = "machines." + machine;
    double power = plant.amount(path + ".power");
    double energy = samples.at(replication, Measure.MACHINE_ENERGY, machine);
    double up = up(samples, replication, machine);
    if (plant.text(path + ".kind").filter(MILL::equals).isPresent()) {
      mill(samples, replication, where, machine, plant, ledger);
    } else if (plant.text(path + ".draws").filter(how -> how.contains("flow")).isPresent()) {
      ledger.between(CONSTANT, where + machine, 0, energy, power * up);
    } else {
      ledger.near(CONSTANT, where + machine, power * up, energy, 1e-6 * power * up);
    }
  }

  /** Hours on duty and in no stop; a mill that waits for its screen is counted here too. */
  private static double up(Samples samples, int replication, String machine) {
    double up = 0;
    for (State state :
        new State[] {State.CHANGING, State.STARVED, State.BLOCKED, State.SLOWED, State.FULL_RATE}) {
      up += samples.at(replication, Measure.MACHINE_HOURS, machine, state.word());
    }
    return up;
  }

  /**
   * On each screen no less than the law asks for, and no more than that and the motor's empty draw
   * in all hours up.
   */
  private static void mill(
      Samples samples,
      int replication,
      String where,
      String mill,
      PlantFacts plant,
      Ledger ledger) {
    String path = "machines." + mill;
    double empty = plant.amount(path + ".power") * plant.amount(path + ".grinding.no_load");
    double law = 0;
    double drawn = 0;
    for (MeasureName match : samples.matches(Measure.MACHINE_SCREEN_ENERGY)) {
      if (match.names().get(0).equals(mill)) {
        String screen = match.names().get(1);
        double ofLaw =
            perTonne(plant, path, screen)
                * samples.at(replication, Measure.MACHINE_SCREEN_MASS_IN, mill, screen);
        double ofScreen = samples.at(replication, Measure.MACHINE_SCREEN_ENERGY, mill, screen);
        law += ofLaw;
        drawn += ofScreen;
        if (!plant.has(path + ".grinding.by_moisture")) {
          ledger.between(
              MILLS,
              where + mill + " " + screen,
              ofLaw,
              ofScreen,
              empty > 0 ? Double.MAX_VALUE : ofLaw);
        }
      }
    }
    ledger.near(MILLS, where + mill, samples.at(replication, Measure.MACHINE_ENERGY, mill), drawn);
    if (!plant.has(path + ".grinding.by_moisture")) {
      ledger.between(
          MILLS, where + mill + " law", law, drawn, law + empty * up(samples, replication, mill));
    }
  }

  /** e = energy (measured_at / opening)^exponent. */
  private static double perTonne(PlantFacts plant, String path, String screen) {
    double ratio =
        plant.amount(path + ".grinding.measured_at")
            / plant.amount(path + ".screens." + screen + ".opening");
    return plant.amount(path + ".grinding.energy")
        * Math.pow(ratio, plant.amount(path + ".grinding.exponent"));
  }
}
