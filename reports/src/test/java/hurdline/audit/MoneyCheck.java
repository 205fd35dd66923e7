package hurdline.audit;

import hurdline.measure.MarginMeasures;
import hurdline.measure.Measure;
import hurdline.measure.MeasureName;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Money of each replication from its masses, hours and counts and from the prices of the plant
 * file.
 */
final class MoneyCheck implements Check {
  static final String REVENUE = "revenue is mass times price";
  static final String PACKAGES = "packages and their cost";
  static final String STOPS = "cost of stops";
  static final String WAGES = "wages are hours times wage";
  static final String POWER = "electricity and overhead";
  static final String STOCK = "crops and stock";
  static final String MARGIN = "margin is income less costs";
  static final String LINES = "lines add up to the plant";
  static final String RENT = "rent, tenant and owner";

  private static final List<Measure[]> LINE_PARTS =
      List.of(
          new Measure[] {Measure.MONEY_REVENUE, Measure.MONEY_LINE_REVENUE},
          new Measure[] {Measure.MONEY_CROP_COST, Measure.MONEY_LINE_CROP_COST},
          new Measure[] {Measure.MONEY_WAGES, Measure.MONEY_LINE_WAGES},
          new Measure[] {Measure.MONEY_PACKAGES, Measure.MONEY_LINE_PACKAGES},
          new Measure[] {Measure.MONEY_STOPS, Measure.MONEY_LINE_STOPS},
          new Measure[] {Measure.MONEY_LATE_PENALTIES, Measure.MONEY_LINE_LATE_PENALTIES},
          new Measure[] {Measure.MONEY_STOCK_CHANGE, Measure.MONEY_LINE_STOCK_CHANGE});

  @Override
  public void compare(WrittenAnswer answer, Ledger ledger) {
    for (String option : answer.options()) {
      Samples samples = answer.samples(option);
      PlantFacts plant = answer.plant(option);
      if (samples.has(Measure.MONEY_MARGIN.of())) {
        samples
            .each()
            .forEach(at -> new OfReplication(samples, at, plant, option, ledger).compare());
      }
    }
  }

  /** The money of one replication. */
  private static final class OfReplication {
    private final Samples samples;
    private final int replication;
    private final PlantFacts plant;
    private final String where;
    private final Ledger ledger;
    private final double turnover; // of which rounding is a share

    OfReplication(
        Samples samples, int replication, PlantFacts plant, String option, Ledger ledger) {
      this.samples = samples;
      this.replication = replication;
      this.plant = plant;
      this.ledger = ledger;
      where = option + " replication " + (replication + 1) + " ";
      turnover =
          at(Measure.MONEY_REVENUE) + at(Measure.MONEY_CROP_COST) + at(Measure.MONEY_OVERHEAD);
    }

    private double at(Measure measure, String... names) {
      return samples.at(replication, measure, names);
    }

    private void near(String what, String of, double expected, double written) {
      ledger.near(
          what, where + of, expected, written, 1e-9 * Math.max(turnover, Math.abs(expected)));
    }

    void compare() {
      products();
      stops();
      wages();
      power();
      stock();
      margin();
      cash();
      freight();
      fuel();
      covers();
      lines();
      rent();
    }

    private void products() {
      double revenue = 0;
      double cost = 0;
      double late = 0;
      for (String product : samples.names(Measure.PRODUCT_MASS)) {
        sold(product);
        revenue += at(Measure.PRODUCT_REVENUE, product);
        late += late(product);
        cost += new PackageCheck(samples, plant, replication, ledger).cost(where, product);
      }
      near(REVENUE, "late", late, at(Measure.MONEY_LATE_PENALTIES));
      near(REVENUE, "all products", revenue, at(Measure.MONEY_REVENUE));
      near(PACKAGES, "cost", cost, at(Measure.MONEY_PACKAGES));
    }

    /** Days late times what a day costs, of products whose orders all cost alike. */
    private double late(String product) {
      List<PlantFacts> orders = plant.list("products." + product + ".orders");
      return orders.isEmpty()
          ? 0
          : at(Measure.PRODUCT_LATE_DAYS, product) * 24 * orders.get(0).amount("late_penalty");
    }

    /**
     * The dry mass brought to the basis, but for what was too wet; orders that have prices of their
     * own are left out.
     */
    private void sold(String product) {
      String path = "products." + product;
      double mass = at(Measure.PRODUCT_MASS, product);
      double fit =
          Basis.of(
              Basis.ofProduct(plant, product),
              mass,
              samples.at(replication, Measure.PRODUCT_MASS.dryOf(product)));
      double purge = purge(product);
      double factor = plant.amount(path + ".purge.factor");
      fit += opened(product) - purge;
      double sold = at(Measure.PRODUCT_SOLD, product) - (factor > 0 ? purge : 0);
      if (plant.has(path + ".store")) {
        stock(product, fit - sold);
        ledger.between(REVENUE, where + product + " sold", 0, sold, fit * (1 + 1e-9));
      }
      boolean all =
          !plant.has(path + ".store")
              && plant.text(path + ".sells").filter("orders"::equals).isEmpty();
      boolean takesAll = !plant.has(path + ".market");
      if (all && takesAll && !plant.has(path + ".moisture.at_most")) {
        near(REVENUE, product + " sold", fit, sold);
      } else {
        ledger.between(REVENUE, where + product + " sold", 0, sold, fit);
      }
      boolean onePrice =
          plant.list(path + ".orders").stream().noneMatch(order -> order.has("price"));
      if (onePrice && !plant.has(path + ".moisture.dock")) {
        double price = plant.amount(path + ".price");
        near(
            REVENUE,
            product,
            takesAll
                ? sold * price * priceFactor(product)
                : fit * price * priceFactor(product) - at(Measure.PRODUCT_MARKET_COST, product),
            at(Measure.PRODUCT_REVENUE, product) - purge * price * factor);
      }
      if (!takesAll && plant.list(path + ".orders").isEmpty()) {
        market(product, path + ".market", fit);
      }
    }

    /** What lay in its store as a season under way goes on, by its worth. */
    private double opened(String product) {
      String path = "products." + product;
      double price = plant.amount(path + (plant.has(path + ".worth") ? ".worth" : ".price"));
      double worth = at(Measure.PRODUCT_STOCK_WORTH_START, product);
      double mass = at(Measure.PRODUCT_STOCK_START, product);
      double kept = price > 0 ? worth / price : mass;
      ledger.between(REVENUE, where + product + " at start", 0.85 * mass, kept, 1.15 * mass);
      return price > 0 ? worth / price : 0;
    }

    /**
     * First packages after changeovers, at the product's moisture; a changeover has so many at
     * most, and a begun one.
     */
    private double purge(String product) {
      String path = "products." + product;
      if (!plant.has(path + ".purge")) {
        return 0;
      }
      double purge = at(Measure.PRODUCT_PURGE, product);
      double packages = at(Measure.PRODUCT_PURGE_PACKAGES, product);
      long changeovers =
          plant.list("season").stream().filter(entry -> entry.has("changeover")).count();
      double most = changeovers * plant.amount(path + ".purge.packages");
      ledger.between(REVENUE, where + product + " purge packages", 0, packages, most);
      ledger.between(
          REVENUE, where + product + " purge", 0, purge, at(Measure.PRODUCT_MASS, product));
      if (hasOneCampaign(product)) {
        double made = at(Measure.PRODUCT_PACKAGES, product);
        double count = plant.text(path + ".purge.packages").map(Double::parseDouble).orElse(0.0);
        near(REVENUE, product + " purge packages", Math.min(made, count), packages);
      }
      double price = plant.amount(path + ".price");
      near(
          REVENUE,
          product + " purge cost",
          purge * price * (1 - plant.amount(path + ".purge.factor")),
          at(Measure.PRODUCT_PURGE_COST, product));
      return purge;
    }

    /** Whether its one maker works one campaign, right after the only changeover that counts. */
    private boolean hasOneCampaign(String product) {
      List<PlantFacts> season = plant.list("season");
      List<Integer> makes = new ArrayList<>();
      for (int at = 0; at < season.size(); at++) {
        String line = season.get(at).text("line").orElse("");
        if (plant.names("lines." + line + ".steps").stream()
            .anyMatch(step -> packs(line, step, product))) {
          makes.add(at);
        }
      }
      return makes.size() == 1
          && makes.get(0) > 0
          && season.get(makes.get(0) - 1).has("changeover");
    }

    private boolean packs(String line, String step, String product) {
      String packs = "lines." + line + ".steps." + step + ".packs";
      return plant.text(packs).filter(product::equals).isPresent();
    }

    /**
     * Beyond the first mass lies at least what even periods leave and at most what one period would
     * leave; in a calendar of one year the two are one for a market by the year.
     */
    private void market(String product, String path, double fit) {
      double takes = plant.pairs(path + ".beyond").get(0)[0];
      double beyond = at(Measure.PRODUCT_BEYOND_MARKET, product);
      boolean yearly = plant.text(path + ".per").filter("year"::equals).isPresent();
      double even = Math.max(0, fit - takes * (yearly ? plant.years() : plant.months()));
      double most = Math.max(0, fit - takes);
      ledger.between(REVENUE, where + product + " beyond its market", even, beyond, most);
      if (plant.pairs(path + ".beyond").size() == 1) {
        double lost = 1 - plant.pairs(path + ".beyond").get(0)[1];
        double price = plant.amount("products." + product + ".price");
        near(
            REVENUE,
            product + " market cost",
            beyond * price * priceFactor(product) * lost,
            at(Measure.PRODUCT_MARKET_COST, product));
      }
    }

    /** What has not left a store, at the file's worth or at the price of what has one price. */
    private void stock(String product, double kept) {
      String path = "products." + product;
      String price = path + (plant.has(path + ".worth") ? ".worth" : ".price");
      near(
          REVENUE,
          product + " stock",
          kept * plant.amount(price),
          at(Measure.PRODUCT_STOCK_WORTH, product));
    }

    /** By what is left in its packages; 1 where they are all paid alike. */
    private double priceFactor(String product) {
      return samples.names(Measure.PRODUCT_PRICE_FACTOR).contains(product)
          ? at(Measure.PRODUCT_PRICE_FACTOR, product)
          : 1;
    }

    private void stops() {
      double cost = 0;
      for (MeasureName match : samples.matches(Measure.MACHINE_STOP_COUNT)) {
        String machine = match.names().get(0);
        String stop = match.names().get(1);
        cost +=
            at(Measure.MACHINE_STOP_COUNT, machine, stop)
                * plant.amount("machines." + machine + ".stops." + stop + ".cost");
      }
      near(STOPS, "", cost, at(Measure.MONEY_STOPS));
    }

    /** Every hour once; overtime once more, by what it pays above the wage. */
    private void wages() {
      double wage = plant.amount("money.wage");
      double pays = plant.has("money.overtime") ? plant.amount("money.overtime.pays") : 1;
      double all = 0;
      for (String crop : samples.names(Measure.CREW_RECEIVING)) {
        all += at(Measure.CREW_RECEIVING, crop) * wage;
      }
      for (String line : samples.names(Measure.CREW_LABOR_HOURS)) {
        double hours = at(Measure.CREW_LABOR_HOURS, line) + at(Measure.CREW_CHANGEOVER, line);
        double late = hasOvertime(line) ? at(Measure.LINE_HOURS_AFTER_SHIFT, line) : 0;
        double own = (hours + late + (pays - 1) * at(Measure.CREW_OVERTIME, line)) * wage;
        all += own;
        String crop = MassCheck.crop(plant, line);
        if (linesOf(crop).size() == 1) {
          double receiving = at(Measure.CREW_RECEIVING, crop) * wage;
          near(WAGES, line, own + receiving, at(Measure.MONEY_LINE_WAGES, line));
        }
      }
      near(WAGES, "", all, at(Measure.MONEY_WAGES));
    }

    private boolean hasOvertime(String line) {
      List<String> only = plant.texts("money.overtime.for");
      return plant.has("money.overtime") && (only.isEmpty() || only.contains(line));
    }

    private List<String> linesOf(String crop) {
      List<String> lines = new ArrayList<>(plant.names("lines"));
      lines.removeIf(line -> !MassCheck.crop(plant, line).equals(crop));
      return lines;
    }

    private void power() {
      double rest = at(Measure.ENERGY_TOTAL);
      double energy = 0;
      for (String period : samples.names(Measure.ENERGY_PERIOD)) {
        double drawn = at(Measure.ENERGY_PERIOD, period);
        double price = plant.amount("money.electricity.periods." + period + ".energy");
        near(POWER, period, drawn * price, at(Measure.MONEY_PERIOD_ENERGY, period));
        energy += drawn * price;
        rest -= drawn;
      }
      energy += rest * plant.amount("money.electricity.energy");
      near(POWER, "electricity", energy + at(Measure.MONEY_DEMAND), at(Measure.MONEY_ELECTRICITY));
      near(
          POWER,
          "overhead",
          plant.amount("money.overhead") * plant.horizonH(),
          at(Measure.MONEY_OVERHEAD));
    }

    /**
     * What was weighed in is bought, and what stock grew by is kept, each at the crop's price; the
     * rest was used.
     */
    private void stock() {
      for (String line : samples.names(Measure.MONEY_LINE_STOCK_CHANGE)) {
        String crop = MassCheck.crop(plant, line);
        if (linesOf(crop).size() == 1) {
          boolean byArea = samples.names(Measure.MONEY_CROP_AREA).contains(crop);
          double area = byArea ? at(Measure.MONEY_CROP_AREA, crop) : 0;
          double areaStock = byArea ? at(Measure.MONEY_CROP_AREA_STOCK, crop) : 0;
          double failed = failed(crop);
          double bought = at(Measure.MONEY_LINE_CROP_COST, line) - area - failed;
          double gained = at(Measure.MONEY_LINE_STOCK_CHANGE, line) - areaStock;
          if (byArea) {
            area(crop, area, areaStock);
          }
          boolean graded = samples.names(Measure.MASS_PRICE_FACTOR).contains(crop);
          double factor = graded ? at(Measure.MASS_PRICE_FACTOR, crop) : 1;
          near(STOCK, line + " bought", paid(crop, Measure.MASS_WEIGHED_IN) * factor, bought);
          double kept =
              paid(crop, Measure.MASS_ON_HAND_AT_END) - paid(crop, Measure.MASS_ON_HAND_AT_START);
          double used = paid(crop, Measure.MASS_FED) + paid(crop, Measure.MASS_LOST_IN_YARD);
          if (graded) {
            betweenFactors(line, crop, gained, used, bought - gained);
          } else {
            near(STOCK, line + " gained", kept, gained);
            near(STOCK, line + " used", used, bought - gained);
          }
        }
      }
    }

    /** What loads that failed cost; each has a truck's bales at most. */
    private double failed(String crop) {
      if (!samples.names(Measure.MONEY_CROP_FAILED).contains(crop)) {
        return 0;
      }
      String path = "deliveries." + crop;
      double cost = at(Measure.MONEY_CROP_FAILED, crop);
      double each = plant.amount(path + ".fails.cost");
      double bales = at(Measure.INTAKE_FAILED, crop);
      double load = Double.parseDouble(plant.text(path + ".trucks.bales").orElse("1"));
      ledger.between(
          STOCK, where + crop + " failed", Math.ceil(bales / load) * each, cost, bales * each);
      return cost;
    }

    /**
     * At most all fields are paid for, and no more lies in the yard than was paid for, nor less was
     * used up of a mean year's area for what lay there at the start; an advance is on all fields,
     * and what is open or short is part of it.
     */
    private void area(String crop, double paid, double stock) {
      double all = 0;
      double advance = 0;
      double mean = 0;
      String terms = "money.crop_terms." + crop;
      for (String field : plant.names("deliveries." + crop + ".fields")) {
        String path = "deliveries." + crop + ".fields." + field;
        double area = plant.amount(path + ".area");
        all += area * plant.amount(terms + ".per_area");
        double meanYield = plant.mean(path + ".yield");
        mean += area * meanYield;
        advance +=
            area
                * (plant.amount(terms + ".advance.per_area")
                    + plant.amount(terms + ".advance.per_mass") * meanYield);
      }
      ledger.between(STOCK, where + crop + " area", 0, paid, all);
      double onHand = at(Measure.MASS_ON_HAND_AT_START, crop) * all / mean;
      ledger.between(STOCK, where + crop + " area stock", -1.01 * onHand, stock, paid);
      if (plant.has(terms + ".advance")) {
        near(STOCK, crop + " advance", advance, at(Measure.MONEY_ADVANCE, crop));
        double notEarned =
            at(Measure.MONEY_ADVANCE_OPEN, crop) + at(Measure.MONEY_ADVANCE_SHORT, crop);
        ledger.between(STOCK, where + crop + " not earned", 0, notEarned, advance);
        interest(crop, terms + ".advance", advance, notEarned);
      }
    }

    /** What is never earned is out from its day to the end, and nothing is out for longer. */
    private void interest(String crop, String path, double advance, double notEarned) {
      if (plant.has(path + ".interest")) {
        double daysBefore =
            plant.has(path + ".paid")
                ? ChronoUnit.DAYS.between(plant.firstDay(), plant.date(path + ".paid"))
                : 0;
        double all = (plant.horizonH() - 24 * daysBefore) * plant.amount(path + ".interest");
        double cost = at(Measure.MONEY_ADVANCE_INTEREST, crop);
        ledger.between(STOCK, where + crop + " interest", notEarned * all, cost, advance * all);
      }
    }

    private double interest() {
      return samples.sum(replication, Measure.MONEY_ADVANCE_INTEREST, false);
    }

    /** Each bale is worth what was paid for it, between the least and the greatest factor. */
    private void betweenFactors(
        String line, String crop, double gained, double usedAtPrice, double used) {
      double least = 1;
      double most = 1;
      for (PlantFacts grade : plant.list("money.crop_grades." + crop)) {
        List<double[]> pairs = grade.pairs(grade.has("line") ? "line" : "steps");
        least *= Math.min(1, pairs.stream().mapToDouble(pair -> pair[1]).min().orElse(1));
        most *= Math.max(1, pairs.stream().mapToDouble(pair -> pair[1]).max().orElse(1));
      }
      double end = paid(crop, Measure.MASS_ON_HAND_AT_END);
      double start = paid(crop, Measure.MASS_ON_HAND_AT_START);
      String at = where + line;
      ledger.between(STOCK, at + " gained", end * least - start, gained, end * most - start);
      ledger.between(STOCK, at + " used", usedAtPrice * least, used, usedAtPrice * most);
    }

    /**
     * What a mass of the crop costs: as it is, or its dry matter brought to the moisture at which
     * it is paid.
     */
    private double paid(String crop, Measure mass) {
      double price = plant.amount("money.crop_prices." + crop);
      Optional<Double> basis = Basis.ofCrop(plant, crop);
      return price * Basis.of(basis, at(mass, crop), samples.at(replication, mass.dryOf(crop)));
    }

    private void margin() {
      double margin = 0;
      for (Measure in : MarginMeasures.in()) {
        margin += samples.has(in.of()) ? at(in) : 0;
      }
      for (Measure out : MarginMeasures.out()) {
        margin -= samples.has(out.of()) ? at(out) : 0;
      }
      near(MARGIN, "", margin, at(Measure.MONEY_MARGIN));
      double lines = 0;
      for (String line : samples.names(Measure.MONEY_LINE_MARGIN)) {
        double own =
            at(Measure.MONEY_LINE_REVENUE, line)
                + at(Measure.MONEY_LINE_STOCK_CHANGE, line)
                + productStock(line)
                - at(Measure.MONEY_LINE_CROP_COST, line)
                - at(Measure.MONEY_LINE_WAGES, line)
                - at(Measure.MONEY_LINE_PACKAGES, line)
                - at(Measure.MONEY_LINE_STOPS, line)
                - at(Measure.MONEY_LINE_LATE_PENALTIES, line)
                - drierFuel(line)
                - covers(line)
                - freight(line);
        near(MARGIN, line, own, at(Measure.MONEY_LINE_MARGIN, line));
        lines += own;
        String crop = MassCheck.crop(plant, line);
        if (linesOf(crop).size() == 1) {
          double perTonne = at(Measure.MONEY_LINE_MARGIN_PER_TONNE, line);
          ledger.near(
              MARGIN, where + line + " per tonne", own / at(Measure.MASS_FED, crop), perTonne);
        }
      }
      double shared = at(Measure.MONEY_ELECTRICITY) + at(Measure.MONEY_OVERHEAD);
      near(LINES, "margins", lines - shared, at(Measure.MONEY_MARGIN));
    }

    /** The plant's own loan and tax, straight line, in the one year of the calendar. */
    private void cash() {
      if (!plant.has("money.assets")) {
        return;
      }
      double yr = Amount.of("1 yr");
      double cost = plant.amount("money.assets.cost");
      double age = plant.amount("money.assets.age") / yr;
      double rate = plant.amount("money.loan.rate") * yr;
      double owed = cost * plant.amount("money.loan.share");
      double term = plant.amount("money.loan.term") / yr;
      double payment = owed * rate / (1 - Math.pow(1 + rate, -term));
      for (int year = 0; year < age; year++) {
        owed -= payment - owed * rate;
      }
      double ofLoan = owed * rate;
      double interest = ofLoan + interest();
      double writtenOff = cost / (plant.amount("money.tax.depreciation.over") / yr);
      double tax =
          plant.amount("money.tax.rate") * (at(Measure.MONEY_MARGIN) - interest - writtenOff);
      near(MARGIN, "interest", interest, at(Measure.CASH_INTEREST));
      near(MARGIN, "depreciation", writtenOff, at(Measure.CASH_DEPRECIATION));
      near(MARGIN, "tax", tax, at(Measure.CASH_TAX));
      double left = at(Measure.MONEY_MARGIN) - payment - interest() - tax;
      near(MARGIN, "left", left, at(Measure.CASH_LEFT));
    }

    private double productStock(String line) {
      return samples.has(Measure.MONEY_PRODUCT_STOCK.of())
          ? at(Measure.MONEY_LINE_PRODUCT_STOCK, line)
          : 0;
    }

    /** Of a full load, by its weight or by the packages that fill its room. */
    private double loadT(String product) {
      String path = "products." + product + ".freight";
      double byWeight = plant.amount(path + ".load");
      double packages = plant.text(path + ".packages").map(Double::parseDouble).orElse(1e9);
      String packaging = plant.text("products." + product + ".package").orElse("");
      return plant.has(path + ".packages")
          ? Math.min(byWeight, packages * plant.amount("packages." + packaging + ".mass"))
          : byWeight;
    }

    /** By the water that the driers of a crop's lines took. */
    private void fuel() {
      if (samples.has(Measure.MONEY_DRIER_FUEL.of())) {
        double all = 0;
        for (String crop : samples.names(Measure.MASS_DRIED)) {
          all += at(Measure.MASS_DRIED, crop) * plant.amount("money.drier_fuel");
        }
        near(POWER, "drier fuel", all, at(Measure.MONEY_DRIER_FUEL));
        double lines = samples.sum(replication, Measure.MONEY_LINE_DRIER_FUEL, false);
        near(LINES, "drier fuel", lines, at(Measure.MONEY_DRIER_FUEL));
      }
    }

    /** Each covered stack costs the same, its hands too. */
    private void covers() {
      if (!samples.has(Measure.MONEY_COVERS.of())) {
        return;
      }
      double all = 0;
      double hands = 0;
      for (String place : samples.names(Measure.YARD_PLACE_COVERED)) {
        String path = "yard.places." + place + ".cover";
        double stacks = at(Measure.YARD_PLACE_COVERED, place);
        double each = plant.text(path + ".hands").map(Double::parseDouble).orElse(0.0);
        double hours = stacks * each * plant.amount(path + ".lasts");
        near(WAGES, place + " cover hours", hours, at(Measure.YARD_PLACE_COVER_HOURS, place));
        hands += hours * plant.amount("money.wage");
        all += stacks * plant.amount(path + ".cost");
      }
      near(WAGES, "cover hands", hands, at(Measure.MONEY_COVER_HANDS));
      near(STOCK, "covers", all + hands, at(Measure.MONEY_COVERS));
      double lines = samples.sum(replication, Measure.MONEY_LINE_COVERS, false);
      ledger.between(LINES, where + "covers", 0, lines, at(Measure.MONEY_COVERS));
    }

    private double covers(String line) {
      return samples.has(Measure.MONEY_COVERS.of()) ? at(Measure.MONEY_LINE_COVERS, line) : 0;
    }

    private double drierFuel(String line) {
      return samples.has(Measure.MONEY_DRIER_FUEL.of())
          ? at(Measure.MONEY_LINE_DRIER_FUEL, line)
          : 0;
    }

    private double freight(String line) {
      return samples.has(Measure.MONEY_FREIGHT.of()) ? at(Measure.MONEY_LINE_FREIGHT, line) : 0;
    }

    /** Whole loads, or mass as it is, of a product that is sold however wet and without orders. */
    private void freight() {
      double all = 0;
      for (String product : samples.names(Measure.PRODUCT_FREIGHT)) {
        double paid = at(Measure.PRODUCT_FREIGHT, product);
        String path = "products." + product + ".freight";
        boolean stored = plant.has("products." + product + ".store");
        double mass = at(stored ? Measure.PRODUCT_LEFT : Measure.PRODUCT_MASS, product);
        double due =
            plant.has(path + ".load") && stored
                ? at(Measure.PRODUCT_PICK_UPS, product) * plant.amount(path + ".cost")
                : plant.has(path + ".load")
                    ? Math.ceil(mass / loadT(product) * (1 - 1e-12)) * plant.amount(path + ".cost")
                    : mass * plant.amount(path);
        if (plant.has("products." + product + ".moisture.at_most")
            || plant.has("products." + product + ".market")
            || plant.has("products." + product + ".sells")) {
          ledger.between(REVENUE, where + product + " freight", 0, paid, due);
        } else {
          near(REVENUE, product + " freight", due, paid);
        }
        all += paid;
      }
      if (samples.has(Measure.MONEY_FREIGHT.of())) {
        near(REVENUE, "freight", all, at(Measure.MONEY_FREIGHT));
      }
    }

    private void lines() {
      if (samples.has(Measure.MONEY_FREIGHT.of())) {
        double lines = samples.sum(replication, Measure.MONEY_LINE_FREIGHT, false);
        near(LINES, "freight", lines, at(Measure.MONEY_FREIGHT));
      }
      if (samples.has(Measure.MONEY_PRODUCT_STOCK.of())) {
        double lines = samples.sum(replication, Measure.MONEY_LINE_PRODUCT_STOCK, false);
        double products =
            samples.sum(replication, Measure.PRODUCT_STOCK_WORTH, false)
                - samples.sum(replication, Measure.PRODUCT_STOCK_WORTH_START, false);
        near(LINES, "product stock", lines, at(Measure.MONEY_PRODUCT_STOCK));
        near(LINES, "product stock by product", products, at(Measure.MONEY_PRODUCT_STOCK));
      }
      for (Measure[] part : LINE_PARTS) {
        near(LINES, part[0].of(), samples.sum(replication, part[1], false), at(part[0]));
      }
    }

    private void rent() {
      if (plant.has("money.rent")) {
        String line = plant.text("money.rent.line").orElseThrow();
        double fed =
            at(Measure.MASS_FED, MassCheck.crop(plant, line)) * plant.amount("money.rent.fed");
        double rent = plant.amount("money.rent.fixed") * plant.horizonH() + fed;
        near(RENT, "rent", rent, at(Measure.MONEY_RENT));
        double ofLine = at(Measure.MONEY_LINE_MARGIN, line);
        near(RENT, "tenant", ofLine - rent, at(Measure.MONEY_TENANT));
        near(RENT, "owner", at(Measure.MONEY_MARGIN) - ofLine + rent, at(Measure.MONEY_OWNER));
      }
    }
  }
}
