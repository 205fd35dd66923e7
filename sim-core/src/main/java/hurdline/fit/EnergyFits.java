package hurdline.fit;

import hurdline.answer.FitCheckRow;
import hurdline.answer.FitRow;
import hurdline.plant.Machine;
import hurdline.plant.Plant;
import hurdline.records.PowerRecord;
import hurdline.records.Records;
import hurdline.records.Spans;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * Energy of mills from their own meters: by screen ({@link MillEnergy}), then as the two keys of
 * the file ({@link PowerOfOpening}); and what other metered machines draw.
 */
final class EnergyFits {
  private static final int FEWEST = 5;

  private static final double KWH_PER_T = 3600;
  private static final double Z = 1.96;
  private static final double HOUR_S = 3600;

  private final Plant plant;
  private final Records records;
  private final StopClocks clocks;
  private final FittedDraws draws;
  private final List<FitRow> rows = new ArrayList<>();
  private final List<FitCheckRow> checks = new ArrayList<>();

  EnergyFits(Plant plant, Records records, StopClocks clocks, FittedDraws draws) {
    this.plant = plant;
    this.records = records;
    this.clocks = clocks;
    this.draws = draws;
    for (Machine machine : plant.machines()) {
      if (machine instanceof Machine.HammerMill mill && !records.power().isEmpty()) {
        mill(mill);
      } else if (!(machine instanceof Machine.HammerMill)) {
        metered(machine);
      }
    }
  }

  List<FitRow> rows() {
    return rows;
  }

  List<FitCheckRow> checks() {
    return checks;
  }

  private void mill(Machine.HammerMill mill) {
    MillDays.Found found = new MillDays(plant, records, clocks, mill.name()).all();
    String path = "machines." + mill.name() + ".grinding.";
    if (!found.why().isEmpty()) {
      rows.add(left(mill, path, found.days().size(), found.why()));
      return;
    }
    MillEnergy energy = MillEnergy.of(mill, found).orElse(null);
    if (energy == null) {
      String why = "too few days, or its screens were never in on days of their own";
      rows.add(left(mill, path, found.days().size(), why));
      return;
    }
    tell(mill, energy);
    write(mill, path, energy, IntStream.of(energy.days()).sum());
  }

  private void tell(Machine.HammerMill mill, MillEnergy energy) {
    for (int i = 0; i < energy.screens().size(); i++) {
      double error = Math.sqrt(energy.covariance()[i][i]);
      StringBuilder note = new StringBuilder(fed(energy.waits()[i]));
      for (int j = 0; j < i; j++) {
        note.append(
            String.format(
                Locale.ROOT,
                "; correlation with %s %.2f",
                energy.screens().get(j).name(),
                energy.covariance()[i][j] / error / Math.sqrt(energy.covariance()[j][j])));
      }
      checks.add(
          new FitCheckRow(
              "energy of " + mill.name() + " on the screen " + energy.screens().get(i).name(),
              "kWh/t",
              mill.grinding().energyJPerKg(energy.screens().get(i)) / KWH_PER_T,
              energy.kWhPerT()[i],
              error,
              energy.days()[i],
              note.toString()));
    }
  }

  private static String fed(double waits) {
    return Double.isNaN(waits)
        ? "without what it draws empty; days of several screens do not tell an even feed from waits, which is in the error"
        : String.format(
            Locale.ROOT,
            "without what it draws empty; below full load it was fed fully and waited, to %.0f %%, else fed evenly",
            100 * waits);
  }

  private void write(Machine.HammerMill mill, String path, MillEnergy energy, int days) {
    Machine.Grinding grinding = mill.grinding();
    double[] x =
        energy.screens().stream()
            .mapToDouble(screen -> Math.log(grinding.measuredAtM() / screen.openingM()))
            .toArray();
    PowerOfOpening law =
        PowerOfOpening.of(x, energy.kWhPerT(), energy.covariance(), grinding.exponent());
    if (law.exponent() < 0) {
      rows.add(left(mill, path, days, "finer screens took no more than coarse ones"));
      return;
    }
    List<String> notes = new ArrayList<>();
    notes.add("what it draws without material is not in it");
    if (energy.unlike() > 0) {
      notes.add(energy.unlike() + " days are far off the line of the others and left out");
    }
    if (!grinding.byMoisture().isNone()) {
      notes.add("at the moisture that was milled: the file's correction by moisture stays");
    }
    if (!law.hasExponent()) {
      notes.add("days enough on one opening only: the file's exponent stays");
    }
    ShownUnit unit = new ShownUnit("kWh/t", KWH_PER_T);
    double mean = Math.exp(law.lnEnergy()) * KWH_PER_T;
    double error = Math.sqrt(law.covariance()[0][0]);
    List<List<String>> drawn = draws.pairs(path + "energy", law, unit);
    rows.add(
        row(
            path + "energy",
            unit,
            grinding.energyJPerKg(),
            mean,
            error,
            new double[] {mean * Math.exp(-Z * error), mean * Math.exp(Z * error)},
            days,
            law,
            notes,
            drawn.get(0)));
    if (law.hasExponent()) {
      double sd = Math.sqrt(law.covariance()[1][1]);
      rows.add(
          row(
              path + "exponent",
              new ShownUnit("", 1),
              grinding.exponent(),
              law.exponent(),
              sd / law.exponent(),
              new double[] {law.exponent() - Z * sd, law.exponent() + Z * sd},
              days,
              law,
              List.of(),
              drawn.get(1)));
    }
  }

  private static FitRow row(
      String key,
      ShownUnit unit,
      double said,
      double mean,
      double errorShare,
      double[] range,
      int days,
      PowerOfOpening law,
      List<String> notes,
      List<String> drawn) {
    boolean isFirst = unit.inSi() != 1;
    int k = law.hasExponent() ? 2 : 1;
    return new FitRow(
        key,
        unit.word(),
        unit.text(said),
        unit.of(said),
        unit.text(mean),
        unit.text(mean),
        unit.of(mean),
        errorShare,
        unit.of(range[0]),
        unit.of(range[1]),
        days,
        days,
        law.p(),
        Double.isNaN(law.p()) ? "a mean" : new GoodnessOfFit(0, law.p(), 0).verdict().word(),
        notes,
        List.of(),
        List.of(),
        isFirst ? Arrays.stream(law.parameters()).limit(k).boxed().toList() : List.of(),
        isFirst
            ? Arrays.stream(law.covariance())
                .limit(k)
                .flatMapToDouble(of -> Arrays.stream(of).limit(k))
                .boxed()
                .toList()
            : List.of(),
        drawn);
  }

  private static FitRow left(Machine.HammerMill mill, String path, int days, String why) {
    ShownUnit unit = new ShownUnit("kWh/t", KWH_PER_T);
    double said = mill.grinding().energyJPerKg();
    double none = Double.NaN;
    return new FitRow(
        path + "energy",
        unit.word(),
        unit.text(said),
        unit.of(said),
        "",
        "",
        none,
        none,
        none,
        none,
        days,
        days,
        none,
        "the file's stays",
        List.of(why),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  /** Its draw in the hours in which it was crewed and in none of its own stops, by days. */
  private void metered(Machine machine) {
    Spans own = Spans.of(clocks.stops(java.util.Set.of(machine.name())));
    Spans hours = clocks.crewed(machine.name()).less(own);
    java.util.TreeMap<Long, double[]> byDay = new java.util.TreeMap<>();
    for (PowerRecord row : records.power()) {
      Double kWh = row.machineKWh().get(machine.name());
      if (kWh != null) {
        double[] of =
            byDay.computeIfAbsent((long) (row.fromS() / (24 * HOUR_S)), d -> new double[2]);
        of[0] += kWh;
        of[1] += hours.betweenS(row.fromS(), row.fromS() + row.lengthS()) / HOUR_S;
      }
    }
    double[][] pairs = byDay.values().stream().filter(of -> of[1] > 0).toArray(double[][]::new);
    if (pairs.length >= FEWEST) {
      Ratio kW = Ratio.of(pairs);
      checks.add(
          new FitCheckRow(
              "draw of " + machine.name() + " in its hours less its own stops",
              "kW",
              machine.common().powerW() / 1000,
              kW.value(),
              kW.error(),
              pairs.length,
              "its power, where it draws the same whatever passes through it"));
    }
  }
}
