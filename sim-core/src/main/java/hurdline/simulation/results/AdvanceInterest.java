package hurdline.simulation.results;

import hurdline.account.LoadBooks;
import hurdline.compiled.CompiledLines;
import hurdline.compiled.Haulage;
import hurdline.plant.CropTerms;
import hurdline.plant.Delivery;
import hurdline.plant.Money;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * What advances cost while they are paid and not earned.
 *
 * <p>i · ∫ max(0, A − E(t)) dt for each field, from the day of payment up to now: A its advance, i
 * the interest, simple, and E what its loads have come to as they were weighed in, less those that
 * failed their test since.
 */
final class AdvanceInterest {
  private static final double DAY_S = 86_400;

  private final CompiledLines layout;
  private final Haulage haulage;
  private final LoadBooks loads;
  private final Money money;

  AdvanceInterest(CompiledLines layout, Haulage haulage, LoadBooks loads) {
    this.layout = layout;
    this.haulage = haulage;
    this.loads = loads;
    money = layout.plant.money().orElse(null);
  }

  /** Whether a crop's advances bear interest. */
  boolean isAsked(int crop) {
    return haulage.terms().hasAdvance(crop) && advance(crop).interestPerS() > 0;
  }

  private CropTerms.Advance advance(int crop) {
    return money.terms().get(layout.naming.crops.name(crop)).advance().orElseThrow();
  }

  /** On all fields of a crop up to now. */
  double of(int crop, double nowS) {
    if (!isAsked(crop)) {
      return 0;
    }
    double sum = 0;
    for (int field = haulage.firstField(crop); field < haulage.endField(crop); field++) {
      sum += moneySeconds(crop, field, nowS);
    }
    return sum * advance(crop).interestPerS();
  }

  /** Step by step from one load, or failed load, of the field to the next. */
  private double moneySeconds(int crop, int field, double nowS) {
    Delivery.Field of = haulage.field(field).field();
    double paid = advance(crop).of(of);
    double sum = 0;
    double earned = 0;
    double sinceS = paidS(crop);
    double lastS = -1;
    while (true) {
      double nextS = next(field, lastS, nowS);
      sum += Math.max(0, paid - earned) * Math.max(0, Math.min(nextS, nowS) - sinceS);
      if (!(nextS < nowS)) {
        return sum;
      }
      sinceS = Math.max(sinceS, nextS);
      earned = earned(crop, field, nextS);
      lastS = nextS;
    }
  }

  private double paidS(int crop) {
    LocalDate first = layout.plant.calendar().from();
    LocalDate paid = advance(crop).paid().orElse(first);
    return DAY_S * Math.max(0, ChronoUnit.DAYS.between(first, paid));
  }

  /** The first instant after another at which what the field has earned changes. */
  private double next(int field, double afterS, double nowS) {
    double next = nowS;
    for (int load = 0; load < loads.count(); load++) {
      if (loads.field(load) == field) {
        next = loads.atS(load) > afterS ? Math.min(next, loads.atS(load)) : next;
        next = loads.failedAtS(load) > afterS ? Math.min(next, loads.failedAtS(load)) : next;
      }
    }
    return next;
  }

  /** What a field's loads have come to at an instant. */
  private double earned(int crop, int field, double atS) {
    String name = layout.naming.crops.name(crop);
    double price = money.cropsPerKg().getOrDefault(name, 0.0);
    double earned = 0;
    for (int load = 0; load < loads.count(); load++) {
      if (loads.field(load) == field && loads.atS(load) <= atS && loads.failedAtS(load) > atS) {
        double paidKg =
            money.paidKg(name, loads.kg(load), loads.dryKg(load))
                - money.paidKg(name, loads.unpaidKg(load), loads.unpaidDryKg(load));
        earned += paidKg * price + money.perM2(name) * loads.areaM2(load);
      }
    }
    return earned;
  }
}
