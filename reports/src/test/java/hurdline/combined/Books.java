package hurdline.combined;

import hurdline.measure.MarginMeasures;
import hurdline.measure.Measure;
import hurdline.measure.MeasureName;
import hurdline.measure.Unit;
import hurdline.measure.Use;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** What must add up in one replication of any plant, from its figures alone. */
final class Books {
  /** Of what was added up. */
  private static final double ROUNDING = 1e-9;

  private static final Set<Measure> OF_EITHER_SIGN =
      EnumSet.of(
          Measure.MASS_DRIED_IN_YARD,
          Measure.PRODUCT_REVENUE,
          Measure.PRODUCT_POINT_COST,
          Measure.PRODUCT_MARKET_COST,
          Measure.PRODUCT_PURGE_COST,
          Measure.PRODUCT_PRICE_FACTOR,
          Measure.PRODUCT_STOCK_WORTH,
          Measure.BALANCE_RESIDUAL);

  private final PlantTree plant;
  private final Simulated got;
  private final List<String> open = new ArrayList<>();

  private Books(PlantTree plant, Simulated got) {
    this.plant = plant;
    this.got = got;
  }

  /** What does not add up. */
  static List<String> open(PlantTree plant, Simulated got) {
    Books books = new Books(plant, got);
    books.nothingIsNegative();
    books.hours();
    books.mass(false);
    books.mass(true);
    books.bales();
    books.goods();
    books.money();
    books.periods();
    return books.open;
  }

  private void near(String what, double due, double is, double of) {
    if (!(Math.abs(due - is) <= ROUNDING * Math.max(1, Math.abs(of)))) {
      open.add(what + ": " + due + " and " + is);
    }
  }

  private void nothingIsNegative() {
    got.figures()
        .forEach(
            (name, value) -> {
              Measure measure = got.measure(name);
              boolean money =
                  measure.unit() == Unit.MONEY || measure.unit() == Unit.MONEY_PER_TONNE;
              if (!money && !OF_EITHER_SIGN.contains(measure) && value < -1e-9) {
                open.add(name + " is " + value);
              }
              if (Double.isInfinite(value)) {
                open.add(name + " is " + value);
              }
            });
    if (!(got.at(Measure.BALANCE_RESIDUAL) <= 1e-9)) {
      open.add("residual " + got.at(Measure.BALANCE_RESIDUAL));
    }
  }

  private double horizonH() {
    LocalDate from = LocalDate.parse(plant.text("calendar.from"));
    LocalDate to = LocalDate.parse(plant.text("calendar.to"));
    return 24.0 * (to.toEpochDay() - from.toEpochDay() + 1);
  }

  private void hours() {
    for (String machine : plant.names("machines")) {
      if (!plant.text("machines." + machine + ".kind").equals("bin")) {
        double all = got.sum(Measure.MACHINE_HOURS, false, of -> of.get(0).equals(machine));
        near("hours of " + machine, horizonH(), all, horizonH());
      }
    }
    for (String line : plant.names("lines")) {
      double caused = got.sum(Measure.LINE_HOURS_LIMITED_BY, false, of -> of.get(0).equals(line));
      near("causes of " + line, got.at(Measure.LINE_HOURS_SCHEDULED, line), caused, horizonH());
    }
    if (got.has(Measure.BUILDING_HOURS, Use.STAFFED.word())) {
      double all =
          got.sum(Measure.BUILDING_HOURS, false, of -> !of.get(0).equals(Use.CONCURRENT.word()));
      near("uses of the building", horizonH(), all, horizonH());
    }
    Map<String, Double> shared = new TreeMap<>();
    for (MeasureName of : got.matches(Measure.MACHINE_CROP_HOURS, false)) {
      double hours = got.at(Measure.MACHINE_CROP_HOURS, of.names().toArray(String[]::new));
      shared.merge(of.names().get(0) + "." + of.names().get(2), hours, Double::sum);
    }
    shared.forEach(
        (of, hours) -> {
          String[] names = of.split("\\.");
          if (!names[1].equals("unused") && !names[1].equals("changeover")) {
            near("hours by crop of " + of, got.at(Measure.MACHINE_HOURS, names), hours, horizonH());
          }
        });
  }

  private boolean isForm(String crop) {
    return plant.has("crops." + crop + ".form_of");
  }

  private void mass(boolean dry) {
    double fed = got.sum(Measure.MASS_FED, dry, of -> !isForm(of.get(0)));
    double out =
        got.sum(Measure.PRODUCT_MASS, dry, of -> true)
            + got.sum(Measure.WASTE_MASS, dry, of -> true)
            + got.sum(Measure.AIR_DUST, dry, of -> true) / 1000
            + (dry ? 0 : got.sum(Measure.MASS_DRIED, false, of -> true))
            + got.sum(Measure.BIN_LEVEL_END, dry, of -> true);
    near("fed and made, dry " + dry, fed, out, fed);
    double lost = got.sum(Measure.MASS_LOST_IN_YARD, dry, of -> !isForm(of.get(0)));
    near("lost", lost, got.sum(Measure.YARD_PLACE_LOST, dry, of -> true), fed + lost);
    for (String crop : plant.names("crops")) {
      double in =
          mass(Measure.MASS_ON_HAND_AT_START, dry, crop) + mass(Measure.MASS_WEIGHED_IN, dry, crop);
      double used =
          mass(Measure.MASS_FED, dry, crop)
              + mass(Measure.MASS_LOST_IN_YARD, dry, crop)
              + mass(Measure.MASS_ON_HAND_AT_END, dry, crop)
              + (dry ? 0 : got.at(Measure.MASS_DRIED_IN_YARD, crop));
      near("yard of " + crop + ", dry " + dry, in, used, in);
    }
    for (String machine : plant.names("machines")) {
      String where = "mass of " + machine + ", dry " + dry;
      double all = mass(Measure.MACHINE_MASS_IN, dry, machine);
      if (!got.matches(Measure.MACHINE_SCREEN_MASS_IN, false).stream()
          .filter(of -> of.names().get(0).equals(machine))
          .toList()
          .isEmpty()) {
        near(
            where + " by screen",
            all,
            got.sum(Measure.MACHINE_SCREEN_MASS_IN, dry, of -> of.get(0).equals(machine)),
            all);
      }
    }
    if (!dry) {
      near(
          "dust",
          got.sum(Measure.AIR_DUST, false, of -> true),
          got.sum(Measure.MACHINE_AIR_DUST, false, of -> true),
          fed);
    }
  }

  private double mass(Measure measure, boolean dry, String... names) {
    return got.figures().getOrDefault(dry ? measure.dryOf(names) : measure.of(names), 0.0);
  }

  private void bales() {
    for (String crop : plant.names("crops")) {
      double in =
          got.at(Measure.INTAKE_ON_HAND_AT_START, crop) + got.at(Measure.INTAKE_WEIGHED_IN, crop);
      double out = got.at(Measure.INTAKE_FED, crop) + got.at(Measure.INTAKE_ON_HAND_AT_END, crop);
      if (out > in) { // less by those weighed in and still on their truck
        open.add("bales of " + crop + ": " + in + " and " + out);
      }
    }
  }

  private void goods() {
    for (String product : plant.names("products")) {
      double made = got.at(Measure.PRODUCT_MASS, product);
      if (plant.has("products." + product + ".store")) {
        double kept =
            got.at(Measure.PRODUCT_LEFT, product) + got.at(Measure.PRODUCT_STOCK, product);
        double purged = plant.has("products." + product + ".purge") ? 1e18 : 0;
        if (purged == 0) {
          near("goods of " + product, made, kept, made);
        } else if (kept > made * (1 + ROUNDING)) {
          open.add("goods of " + product + ": " + made + " and " + kept);
        }
      }
      double packed = packed(product);
      if (packed > made + ROUNDING * Math.max(1, made)) {
        open.add("packed of " + product + " " + packed + " of " + made);
      }
    }
    for (String store : plant.names("stores")) {
      double room = tonnes("stores." + store + ".holds");
      if (got.at(Measure.STORE_LEVEL_PEAK, store) > room * (1 + ROUNDING)) {
        open.add("peak of " + store + " " + got.at(Measure.STORE_LEVEL_PEAK, store));
      }
    }
    for (String bin : plant.names("machines")) {
      String holds = plant.text("machines." + bin + ".holds");
      if (holds.matches("[0-9.]+ ?(t|kg|ton|lb)")
          && got.at(Measure.BIN_LEVEL_PEAK, bin)
              > Amounts.si(holds) / 1000 * (1 + ROUNDING) + 1e-9) {
        open.add("peak of " + bin + " " + got.at(Measure.BIN_LEVEL_PEAK, bin) + " of " + holds);
      }
    }
  }

  /** In full packages; not known where it is filled into another one than its own. */
  private double packed(String product) {
    List<MeasureName> kinds =
        got.matches(Measure.PRODUCT_PACKAGES_OF, false).stream()
            .filter(of -> of.names().get(0).equals(product))
            .toList();
    double packed = 0;
    for (MeasureName of : kinds) {
      packed +=
          got.at(Measure.PRODUCT_PACKAGES_OF, product, of.names().get(1))
              * tonnes("packages." + of.names().get(1) + ".mass");
    }
    boolean own = plant.has("products." + product + ".package") && !hasPackageOfAStep(product);
    return kinds.isEmpty() && own
        ? got.at(Measure.PRODUCT_PACKAGES, product)
            * tonnes("packages." + plant.text("products." + product + ".package") + ".mass")
        : packed;
  }

  private boolean hasPackageOfAStep(String product) {
    return plant.names("lines").stream()
        .flatMap(
            line ->
                plant.names("lines." + line + ".steps").stream()
                    .map(step -> "lines." + line + ".steps." + step))
        .anyMatch(
            step -> plant.text(step + ".packs").equals(product) && plant.has(step + ".package"));
  }

  private double tonnes(String path) {
    return Amounts.si(plant.text(path)) / 1000;
  }

  private void money() {
    if (!got.has(Measure.MONEY_MARGIN)) {
      return;
    }
    double margin = 0;
    double turnover = 0;
    for (Measure in : MarginMeasures.in()) {
      margin += got.at(in);
      turnover += Math.abs(got.at(in));
    }
    for (Measure out : MarginMeasures.out()) {
      margin -= got.at(out);
      turnover += Math.abs(got.at(out));
    }
    near("margin", margin, got.at(Measure.MONEY_MARGIN), turnover);
    double lines = got.sum(Measure.MONEY_LINE_MARGIN, false, of -> true);
    double shared = got.at(Measure.MONEY_ELECTRICITY) + got.at(Measure.MONEY_OVERHEAD);
    if (isEachTaken()) {
      near("margins of lines", got.at(Measure.MONEY_MARGIN), lines - shared, turnover);
    }
    sumOfLines(Measure.MONEY_REVENUE, Measure.MONEY_LINE_REVENUE, turnover);
    sumOfLines(Measure.MONEY_CROP_COST, Measure.MONEY_LINE_CROP_COST, turnover);
    sumOfLines(Measure.MONEY_WAGES, Measure.MONEY_LINE_WAGES, turnover);
    sumOfLines(Measure.MONEY_PACKAGES, Measure.MONEY_LINE_PACKAGES, turnover);
    sumOfLines(Measure.MONEY_STOPS, Measure.MONEY_LINE_STOPS, turnover);
    sumOfLines(Measure.MONEY_LATE_PENALTIES, Measure.MONEY_LINE_LATE_PENALTIES, turnover);
    sumOfLines(Measure.MONEY_FREIGHT, Measure.MONEY_LINE_FREIGHT, turnover);
    sumOfLines(Measure.MONEY_COVERS, Measure.MONEY_LINE_COVERS, turnover);
    sumOfLines(Measure.MONEY_DRIER_FUEL, Measure.MONEY_LINE_DRIER_FUEL, turnover);
    sumOfLines(Measure.MONEY_STOCK_CHANGE, Measure.MONEY_LINE_STOCK_CHANGE, turnover);
    sumOfLines(Measure.MONEY_PRODUCT_STOCK, Measure.MONEY_LINE_PRODUCT_STOCK, turnover);
    near(
        "revenue of products",
        got.at(Measure.MONEY_REVENUE),
        got.sum(Measure.PRODUCT_REVENUE, false, of -> true),
        turnover);
    near(
        "freight of products",
        got.at(Measure.MONEY_FREIGHT),
        got.sum(Measure.PRODUCT_FREIGHT, false, of -> true),
        turnover);
    double penalties = got.sum(Measure.PRODUCT_ORDER_PENALTY, false, of -> true);
    near("penalties", got.at(Measure.MONEY_LATE_PENALTIES), penalties, turnover);
    double energy =
        got.sum(Measure.MACHINE_ENERGY, false, of -> true)
            + got.sum(Measure.BASE_LOAD_ENERGY, false, of -> true);
    near("energy", got.at(Measure.ENERGY_TOTAL), energy, energy);
  }

  /** What is paid for a crop that no line takes is in no line. */
  private boolean isEachTaken() {
    return plant.names("crops").stream()
        .map(crop -> isForm(crop) ? plant.text("crops." + crop + ".form_of") : crop)
        .allMatch(
            crop ->
                plant.names("lines").stream()
                    .anyMatch(line -> plant.text("lines." + line + ".crop").equals(crop)));
  }

  private void sumOfLines(Measure all, Measure ofLine, double turnover) {
    if (isEachTaken() && got.has(all) && !got.matches(ofLine, false).isEmpty()) {
      near(all.of(), got.at(all), got.sum(ofLine, false, of -> true), turnover);
    }
  }

  /** Of measures that add up over time, weeks, months and years come to the whole. */
  private void periods() {
    for (String period : List.of("week", "month", "year")) {
      Map<String, Double> sums = new TreeMap<>();
      got.figures()
          .forEach(
              (name, value) -> {
                if (name.startsWith(period + " ") && addsUp(got.measure(name))) {
                  sums.merge(name.replaceFirst("^\\w+ \\d+ ", ""), value, Double::sum);
                }
              });
      sums.forEach(
          (name, sum) -> {
            if (got.figures().containsKey(name)) {
              double whole = got.figures().get(name);
              near(name + " by " + period, whole, sum, Math.max(Math.abs(whole), 1e4));
            }
          });
    }
  }

  private static boolean addsUp(Measure measure) {
    return switch (measure) {
      case MASS_FED,
          MASS_WEIGHED_IN,
          LINE_HOURS_SCHEDULED,
          LINE_HOURS_LIMITED_BY,
          MACHINE_HOURS,
          MACHINE_MASS_IN,
          MACHINE_ENERGY,
          PRODUCT_MASS,
          ENERGY_TOTAL,
          MONEY_REVENUE,
          MONEY_CROP_COST,
          MONEY_WAGES,
          MONEY_ELECTRICITY,
          MONEY_DEMAND,
          MONEY_PACKAGES,
          MONEY_STOPS,
          MONEY_LATE_PENALTIES,
          MONEY_DRIER_FUEL,
          MONEY_COVERS,
          MONEY_FREIGHT,
          MONEY_OVERHEAD,
          MONEY_STOCK_CHANGE,
          MONEY_PRODUCT_STOCK,
          MONEY_MARGIN ->
          true;
      default -> false;
    };
  }
}
