package hurdline.simulation.results;

import hurdline.account.IntakeBooks;
import hurdline.account.MassLedger;
import hurdline.account.MaterialBooks;
import hurdline.compiled.CompiledLines;
import hurdline.compiled.Haulage;
import hurdline.measure.Measure;
import hurdline.plant.CropTerms;
import hurdline.plant.Delivery;
import hurdline.plant.Money;
import hurdline.simulation.activity.Feeding;
import java.util.Arrays;
import java.util.Optional;

/** What crops were bought for, and what of them is left is worth more than at the start. */
final class CropPurchases {
  private final CompiledLines layout;
  private final Haulage haulage;
  private final Feeding feeding;
  private final MaterialBooks material;
  private final IntakeBooks intake;
  private final Money money;
  private final double[] area; // money by crop, like all up to kept
  private final double[] areaStock;
  private final double[] advance;
  private final double[] open; // of the advance
  private final double[] missing;
  private final double[] interest; // on advances, not in any cost
  private final AdvanceInterest advances;
  final double[] crops; // by line
  final double[] stock;

  /** Price of crops that no line takes. */
  double cropsOfNoLine;

  double stockOfNoLine;

  CropPurchases(
      CompiledLines layout,
      Haulage haulage,
      Feeding feeding,
      MaterialBooks material,
      IntakeBooks intake) {
    this.layout = layout;
    this.haulage = haulage;
    this.feeding = feeding;
    this.material = material;
    this.intake = intake;
    money = layout.plant.money().orElse(null);
    int count = layout.naming.crops.count();
    area = new double[count];
    areaStock = new double[count];
    advance = new double[count];
    open = new double[count];
    missing = new double[count];
    interest = new double[count];
    advances = new AdvanceInterest(layout, haulage, intake.loads);
    crops = new double[layout.lines];
    stock = new double[layout.lines];
  }

  /** All that was bought up to now. */
  void workOut(double nowS) {
    Arrays.fill(crops, 0);
    Arrays.fill(stock, 0);
    cropsOfNoLine = 0;
    stockOfNoLine = 0;
    for (int crop = 0; crop < layout.naming.crops.count(); crop++) {
      ofCrop(crop);
      interest[crop] = advances.of(crop, nowS);
    }
  }

  /** What it costs to have advances out, beside the margin; to be asked after {@link #workOut}. */
  double interest() {
    return Arrays.stream(interest).sum();
  }

  private void ofCrop(int crop) {
    String name = layout.naming.crops.name(crop);
    double price = money.cropsPerKg().getOrDefault(name, 0.0);
    ofArea(crop, money.perM2(name));
    ofAdvance(crop, name);
    double boughtKg = paidKg(name, intake.weighedIn, crop);
    double gainedKg = stillKg(crop, name) - paidKg(name, intake.onHand, crop);
    CropTerms terms = money.terms().get(name);
    double kept = terms != null && terms.hasFloor() ? missing[crop] : 0;
    double bought = boughtKg * price + area[crop] + kept + failed(crop);
    double gained = gainedKg * price + areaStock[crop];
    boolean taken = false;
    for (int l = 0; l < layout.lines; l++) {
      double share = share(l, crop);
      taken |= layout.takes(l, crop);
      crops[l] += bought * share;
      stock[l] += gained * share;
    }
    if (!taken) {
      cropsOfNoLine += bought;
      stockOfNoLine += gained;
    }
  }

  /** What it cost to be rid of loads that failed their test. */
  private double failed(int crop) {
    return intake.loadsFailed(crop)
        * release(crop).map(Delivery.Release::costPerFailed).orElse(0.0);
  }

  private Optional<Delivery.Release> release(int crop) {
    return haulage.delivery(crop).flatMap(Delivery::release).filter(Delivery.Release::mayFail);
  }

  private double stillKg(int crop, String name) {
    double still =
        paidKg(name, intake.inPlacesAtEnd, crop) + paidKg(name, intake.inTrucksAtEnd, crop);
    double[] componentKg = new double[layout.components];
    double[] unpaidKg = new double[2];
    for (int l = 0; l < layout.lines; l++) {
      if (layout.takes(l, crop)) {
        Arrays.fill(componentKg, 0);
        double kg = feeding.stock.stillHereKg(l, crop, componentKg);
        still += money.paidKg(name, kg, Arrays.stream(componentKg).sum());
        feeding.stock.stillUnpaidKg(l, crop, unpaidKg);
        still -= money.paidKg(name, unpaidKg[0], unpaidKg[1]);
      }
    }
    return still;
  }

  private void ofArea(int crop, double perM2) {
    area[crop] = perM2 * intake.weighedIn.areaM2(crop);
    double stillM2 = intake.inPlacesAtEnd.areaM2(crop) + intake.inTrucksAtEnd.areaM2(crop);
    for (int l = 0; l < layout.lines; l++) {
      stillM2 += layout.takes(l, crop) ? feeding.stock.stillAreaM2(l, crop) : 0;
    }
    areaStock[crop] = perM2 * (stillM2 - intake.onHand.areaM2(crop));
  }

  /** A field's advance is taken off what its bales come to as they are weighed in. */
  private void ofAdvance(int crop, String name) {
    advance[crop] = 0;
    open[crop] = 0;
    missing[crop] = 0;
    if (!haulage.terms().hasAdvance(crop)) {
      return;
    }
    CropTerms.Advance paid = money.terms().get(name).advance().orElseThrow();
    double price = money.cropsPerKg().getOrDefault(name, 0.0);
    for (int field = haulage.firstField(crop); field < haulage.endField(crop); field++) {
      double before = paid.of(haulage.field(field).field());
      double earned =
          paidKg(name, intake.ofFields, field) * price
              + money.perM2(name) * intake.ofFields.areaM2(field);
      double left = Math.max(0, before - earned);
      advance[crop] += before;
      open[crop] += intake.isOpen(field) ? left : 0;
      missing[crop] += intake.isOpen(field) ? 0 : left;
    }
  }

  /** To be asked after {@link #workOut}. */
  void put(OutcomeWriter tally) {
    for (int crop = 0; crop < area.length; crop++) {
      String name = layout.naming.crops.name(crop);
      if (haulage.terms().isByArea(crop)) {
        tally.put(Measure.MONEY_CROP_AREA, area[crop], name);
        tally.put(Measure.MONEY_CROP_AREA_STOCK, areaStock[crop], name);
      }
      if (release(crop).isPresent()) {
        tally.put(Measure.MONEY_CROP_FAILED, failed(crop), name);
      }
      if (haulage.terms().hasAdvance(crop)) {
        tally.put(Measure.MONEY_ADVANCE, advance[crop], name);
        tally.put(Measure.MONEY_ADVANCE_OPEN, open[crop], name);
        tally.put(Measure.MONEY_ADVANCE_SHORT, missing[crop], name);
      }
      if (advances.isAsked(crop)) {
        tally.put(Measure.MONEY_ADVANCE_INTEREST, interest[crop], name);
      }
    }
  }

  private double paidKg(String crop, MassLedger ledger, int index) {
    return money.paidKg(crop, ledger.kg(index), ledger.dryKg(index))
        - money.paidKg(crop, ledger.unpaidKg(index), ledger.unpaidDryKg(index));
  }

  /** What a crop was paid over what its price would come to; no value where nothing was bought. */
  double priceFactor(String name, int crop) {
    double allKg = money.paidKg(name, intake.weighedIn.kg(crop), intake.weighedIn.dryKg(crop));
    return allKg > 0 ? paidKg(name, intake.weighedIn, crop) / allKg : Double.NaN;
  }

  /** A line's share of what its crop costs: by mass fed; evenly while nothing was fed. */
  double share(int line, int crop) {
    if (!layout.takes(line, crop)) {
      return 0;
    }
    double fed = 0;
    int lines = 0;
    for (int l = 0; l < layout.lines; l++) {
      if (layout.takes(l, crop)) {
        fed += material.fedKg[l];
        lines++;
      }
    }
    return fed > 0 ? material.fedKg[line] / fed : 1.0 / lines;
  }
}
