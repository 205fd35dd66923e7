package hurdline.audit;

import hurdline.measure.Measure;
import hurdline.measure.MeasureName;
import java.util.List;

/** Mass: what was fed is what came out, in every way in which the tables count it. */
final class MassCheck implements Check {
  static final String BALANCE = "mass fed comes out";
  static final String YARD = "mass on hand and weighed in is fed, lost or left";
  static final String DRAWN = "drawn crop over its mean";
  static final String BALES = "bales on hand and weighed in are fed or left";
  static final String LOSSES = "losses of places are the yard's";
  static final String SCREENS = "screens are the mill's mass";
  static final String RATIOS = "throughput and turnout";
  static final String RESIDUAL = "residual of the program's own balance";

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
                for (boolean dry : new boolean[] {false, true}) {
                  balance(samples, plant, replication, where + (dry ? "dry " : ""), dry, ledger);
                  yard(samples, replication, where + (dry ? "dry " : ""), dry, ledger);
                }
                bales(samples, replication, where, ledger);
                apart(samples, replication, where, ledger);
                limits(samples, plant, replication, where, ledger);
                drawn(samples, replication, where, plant, ledger);
                screens(samples, replication, where, ledger);
                ratios(samples, replication, where, plant, ledger);
                ledger.between(
                    RESIDUAL, where, 0, samples.at(replication, Measure.BALANCE_RESIDUAL), 1e-9);
              });
    }
  }

  private static void balance(
      Samples samples,
      PlantFacts plant,
      int replication,
      String where,
      boolean dry,
      Ledger ledger) {
    double fed = ofCrops(samples, plant, replication, Measure.MASS_FED, dry);
    double out =
        samples.sum(replication, Measure.PRODUCT_MASS, dry)
            + samples.sum(replication, Measure.WASTE_MASS, dry)
            + samples.sum(replication, Measure.AIR_DUST, dry) / 1000
            + (dry ? 0 : samples.sum(replication, Measure.MASS_DRIED, false));
    double cyclones = samples.sum(replication, Measure.MACHINE_AIR_DUST, dry);
    ledger.near(BALANCE, where + "air", samples.sum(replication, Measure.AIR_DUST, dry), cyclones);
    double bins = samples.sum(replication, Measure.BIN_LEVEL_END, dry);
    double opened = samples.sum(replication, Measure.BIN_LEVEL_START, dry);
    ledger.near(BALANCE, where, fed + opened, out + bins);
    double lost = ofCrops(samples, plant, replication, Measure.MASS_LOST_IN_YARD, dry);
    ledger.near(LOSSES, where, lost, samples.sum(replication, Measure.YARD_PLACE_LOST, dry));
  }

  /** Over crops, each with all its forms; the measures of a form are in its crop's. */
  private static double ofCrops(
      Samples samples, PlantFacts plant, int replication, Measure measure, boolean dry) {
    double sum = 0;
    for (String crop : samples.names(measure)) {
      boolean isForm = plant.has("crops." + crop + ".form_of");
      sum += isForm ? 0 : samples.at(replication, dry ? measure.dryOf(crop) : measure.of(crop));
    }
    return sum;
  }

  private static void yard(
      Samples samples, int replication, String where, boolean dry, Ledger ledger) {
    for (String crop : samples.names(Measure.MASS_WEIGHED_IN)) {
      double out = 0;
      for (Measure measure :
          new Measure[] {
            Measure.MASS_FED, Measure.MASS_LOST_IN_YARD, Measure.MASS_ON_HAND_AT_END
          }) {
        out += samples.at(replication, dry ? measure.dryOf(crop) : measure.of(crop));
      }
      boolean dries = samples.names(Measure.MASS_DRIED_IN_YARD).contains(crop);
      out += !dry && dries ? samples.at(replication, Measure.MASS_DRIED_IN_YARD, crop) : 0;
      double in = 0;
      for (Measure measure :
          new Measure[] {Measure.MASS_ON_HAND_AT_START, Measure.MASS_WEIGHED_IN}) {
        in += samples.at(replication, dry ? measure.dryOf(crop) : measure.of(crop));
      }
      ledger.near(YARD, where + crop, in, out);
    }
  }

  /**
   * The mean crop is the same in every replication, and near areas times mean yields, which its
   * ranges may cut.
   */
  private static void drawn(
      Samples samples, int replication, String where, PlantFacts plant, Ledger ledger) {
    for (String crop : samples.names(Measure.MASS_DRAWN)) {
      double mean = 0;
      for (String field : plant.names("deliveries." + crop + ".fields")) {
        String path = "deliveries." + crop + ".fields." + field;
        mean += plant.amount(path + ".area") * plant.mean(path + ".yield");
      }
      String factor = "deliveries." + crop + ".yield_factor";
      mean *= plant.has(factor) ? plant.mean(factor) : 1;
      double written =
          samples.at(replication, Measure.MASS_DRAWN, crop)
              / samples.at(replication, Measure.MASS_DRAWN_OVER_MEAN, crop);
      ledger.between(DRAWN, where + crop, 0.998 * mean, written, 1.002 * mean);
      double first =
          samples.at(0, Measure.MASS_DRAWN, crop)
              / samples.at(0, Measure.MASS_DRAWN_OVER_MEAN, crop);
      ledger.near(DRAWN, where + crop, first, written);
    }
  }

  /** What was above its limit was so for some time, and what never was has its peak below. */
  private static void limits(
      Samples samples, PlantFacts plant, int replication, String where, Ledger ledger) {
    for (String place : samples.names(Measure.YARD_PLACE_MASS_PEAK)) {
      double limit = plant.amount("yard.places." + place + ".limits.mass");
      double peak = samples.at(replication, Measure.YARD_PLACE_MASS_PEAK, place);
      double hours = samples.at(replication, Measure.YARD_PLACE_OVER_MASS, place);
      double times = samples.at(replication, Measure.YARD_PLACE_TIMES_OVER_MASS, place);
      boolean isOver = peak > limit * (1 + 1e-9);
      worth(samples, plant, replication, where, place, ledger);
      ledger.between(LOSSES, where + place + " hours over", 0, hours, isOver ? 1e6 : 0);
      ledger.between(
          LOSSES, where + place + " times over", isOver ? 1 : 0, times, isOver ? 1e6 : 0);
    }
  }

  /** In a place of one crop value is mass times its price, and so are the limits. */
  private static void worth(
      Samples samples,
      PlantFacts plant,
      int replication,
      String where,
      String place,
      Ledger ledger) {
    List<String> crops = plant.texts("yard.places." + place + ".crops");
    if (crops.size() != 1 || !samples.has(Measure.YARD_PLACE_VALUE_PEAK.of(place))) {
      return;
    }
    double price = plant.amount("money.crop_prices." + crops.get(0));
    double peak = samples.at(replication, Measure.YARD_PLACE_MASS_PEAK, place);
    double value = samples.at(replication, Measure.YARD_PLACE_VALUE_PEAK, place);
    ledger.near(LOSSES, where + place + " value", peak * price, value);
    String limits = "yard.places." + place + ".limits.";
    boolean valueFirst = plant.amount(limits + "value") <= plant.amount(limits + "mass") * price;
    double ofMass = samples.at(replication, Measure.YARD_PLACE_OVER_MASS, place);
    double ofValue = samples.at(replication, Measure.YARD_PLACE_OVER_VALUE, place);
    ledger.between(
        LOSSES,
        where + place + " hours over in value",
        valueFirst ? ofMass : 0,
        ofValue,
        valueFirst ? 1e6 : ofMass);
  }

  /** No more were kept apart at once than came, and than lay in the yard; what failed is some. */
  private static void apart(Samples samples, int replication, String where, Ledger ledger) {
    for (String crop : samples.names(Measure.YARD_KEPT_APART)) {
      double failed = samples.at(replication, Measure.INTAKE_FAILED, crop);
      double came = samples.at(replication, Measure.INTAKE_WEIGHED_IN, crop) + failed;
      double peak = samples.at(replication, Measure.YARD_PEAK, crop);
      double kept = samples.at(replication, Measure.YARD_KEPT_APART, crop);
      ledger.between(BALES, where + crop + " kept apart", 0, kept, Math.min(came, peak));
      ledger.between(BALES, where + crop + " failed", 0, failed, came);
      double mass = samples.at(replication, Measure.MASS_FAILED, crop);
      ledger.between(BALES, where + crop + " failed mass", 0, mass, failed > 0 ? 1e6 : 0);
    }
  }

  private static void bales(Samples samples, int replication, String where, Ledger ledger) {
    for (String crop : samples.names(Measure.INTAKE_WEIGHED_IN)) {
      double in =
          samples.at(replication, Measure.INTAKE_ON_HAND_AT_START, crop)
              + samples.at(replication, Measure.INTAKE_WEIGHED_IN, crop);
      double fed = samples.at(replication, Measure.INTAKE_FED, crop);
      double left = samples.at(replication, Measure.INTAKE_ON_HAND_AT_END, crop);
      ledger.near(BALES, where + crop, in, fed + left);
    }
  }

  private static void screens(Samples samples, int replication, String where, Ledger ledger) {
    for (String mill : samples.names(Measure.MACHINE_SCREEN_MASS_IN)) {
      double mass = samples.at(replication, Measure.MACHINE_MASS_IN, mill);
      double ofScreens =
          HoursCheck.ofMachine(samples, replication, Measure.MACHINE_SCREEN_MASS_IN, mill);
      ledger.near(SCREENS, where + mill, mass, ofScreens);
      double dry = 0;
      for (MeasureName match : samples.matches(Measure.MACHINE_SCREEN_MASS_IN)) {
        if (match.names().get(0).equals(mill)) {
          dry +=
              samples.at(
                  replication,
                  Measure.MACHINE_SCREEN_MASS_IN.dryOf(match.names().toArray(String[]::new)));
        }
      }
      ledger.near(
          SCREENS,
          where + mill + " dry",
          samples.at(replication, Measure.MACHINE_MASS_IN.dryOf(mill)),
          dry);
    }
  }

  /** Of lines whose crop no other line takes: the crop's mass is theirs. */
  private static void ratios(
      Samples samples, int replication, String where, PlantFacts plant, Ledger ledger) {
    List<String> crops = plant.names("lines").stream().map(line -> crop(plant, line)).toList();
    for (String line : plant.names("lines")) {
      String crop = crop(plant, line);
      if (crops.indexOf(crop) != crops.lastIndexOf(crop)) {
        continue;
      }
      double fed = samples.at(replication, Measure.MASS_FED, crop);
      double hours = samples.at(replication, Measure.LINE_HOURS_SCHEDULED, line);
      ledger.near(
          RATIOS,
          where + line,
          fed / hours,
          samples.at(replication, Measure.LINE_THROUGHPUT, line));
      for (MeasureName match : samples.matches(Measure.LINE_TURNOUT)) {
        if (match.names().get(0).equals(line)) {
          double made = samples.at(replication, Measure.PRODUCT_MASS, match.names().get(1));
          double turnout =
              samples.at(replication, Measure.LINE_TURNOUT, line, match.names().get(1));
          ledger.near(RATIOS, where + line + " " + match.names().get(1), made / fed, turnout);
        }
      }
      packed(samples, replication, where, line, hours, plant, ledger);
    }
  }

  private static void packed(
      Samples samples,
      int replication,
      String where,
      String line,
      double hours,
      PlantFacts plant,
      Ledger ledger) {
    for (MeasureName match : samples.matches(Measure.LINE_PACKAGES_PER_HOUR)) {
      if (match.names().get(0).equals(line)) {
        String product = match.names().get(1);
        String in = plant.text("products." + product + ".package").orElseThrow();
        double t = plant.amount("packages." + in + ".mass");
        ledger.near(
            RATIOS,
            where + line + " " + product + " an hour",
            samples.at(replication, Measure.PRODUCT_MASS, product) / t / hours,
            samples.at(replication, Measure.LINE_PACKAGES_PER_HOUR, line, product));
      }
    }
  }

  static String crop(PlantFacts plant, String line) {
    return plant.text("lines." + line + ".crop").orElseThrow();
  }
}
