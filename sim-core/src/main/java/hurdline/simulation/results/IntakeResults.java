package hurdline.simulation.results;

import hurdline.account.IntakeBooks;
import hurdline.account.MassLedger;
import hurdline.account.MaterialBooks;
import hurdline.compiled.CompiledLines;
import hurdline.compiled.Haulage;
import hurdline.measure.Measure;
import hurdline.plant.Crop;
import hurdline.plant.Delivery;
import hurdline.plant.Yard;
import hurdline.simulation.activity.Feeding;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;

/** The measures of what came in, crop by crop and place by place. */
final class IntakeResults {
  private static final double HOUR_S = 3600;
  private static final double DAY_S = 86_400;
  private static final double TONNE_KG = 1000;

  private final CompiledLines layout;
  private final Haulage haulage;
  private final Feeding feeding;
  private final MaterialBooks material;
  private final IntakeBooks intake;
  private final CropPurchases purchases;
  private final CoverCost covers;
  private final FormFed forms;
  private final boolean changesMoisture;
  private final double[] componentKg;
  private OutcomeWriter tally;

  IntakeResults(
      CompiledLines layout,
      Haulage haulage,
      Feeding feeding,
      MaterialBooks material,
      IntakeBooks intake,
      CropPurchases purchases,
      CoverCost covers,
      FormFed forms) {
    this.layout = layout;
    this.forms = forms;
    this.haulage = haulage;
    this.feeding = feeding;
    this.material = material;
    this.intake = intake;
    this.purchases = purchases;
    this.covers = covers;
    changesMoisture =
        layout.plant.yard().places().stream().anyMatch(place -> place.climate().isPresent());
    componentKg = new double[layout.components];
  }

  void put(OutcomeWriter to, double endS) {
    tally = to;
    for (Crop crop : layout.plant.crops()) {
      int c = layout.naming.crops.index(crop.name());
      bales(c, crop.name());
      yard(c, crop.name(), endS);
      drawn(c, crop.name());
      masses(c, crop.name());
    }
    for (int p = 0; p < layout.plant.yard().places().size(); p++) {
      place(p, layout.plant.yard().places().get(p));
    }
  }

  private void bales(int c, String name) {
    tally.putCrop(Measure.INTAKE_ON_HAND_AT_START, name, sum(c, intake::balesOnHand), name);
    tally.putCrop(Measure.INTAKE_WEIGHED_IN, name, sum(c, intake::balesWeighedIn), name);
    tally.putCrop(Measure.INTAKE_FED, name, sum(c, this::used), name);
    tally.putCrop(Measure.INTAKE_ON_HAND_AT_END, name, sum(c, this::here), name);
    tally.putCrop(Measure.INTAKE_TURNED_AWAY, name, sum(c, intake::turnedAway), name);
    if (IntStream.of(layout.forms[c]).anyMatch(haulage.terms()::isLimited)) {
      tally.putCrop(Measure.INTAKE_REJECTED, name, sum(c, intake::balesRejected), name);
      mass(Measure.MASS_REJECTED, c, intake.rejected, name);
    }
    if (haulage.terms().isGraded(c)) {
      tally.put(Measure.MASS_PRICE_FACTOR, purchases.priceFactor(name, c), name);
    }
    tally.putCrop(Measure.INTAKE_HELD_AT_FIELD_PEAK, name, intake.heldAtFieldPeak(c), name);
  }

  /** Over a crop and its forms; of a form that one alone. */
  private int sum(int c, IntUnaryOperator ofForm) {
    return IntStream.of(layout.forms[c]).map(ofForm).sum();
  }

  private int used(int form) {
    return IntStream.range(0, layout.lines).map(l -> feeding.usedUp[l][form]).sum();
  }

  private int here(int form) {
    int onTables =
        IntStream.range(0, layout.lines).map(l -> feeding.stock.onTableAndFeeder(l, form)).sum();
    return intake.levels.inYard(form) + onTables;
  }

  private void yard(int c, String name, double endS) {
    tally.putCrop(Measure.YARD_PEAK, name, intake.levels.peak(c), name);
    tally.putCrop(Measure.YARD_MEAN, name, intake.levels.baleSeconds(c) / endS, name);
    double lifted = intake.lifted(c);
    tally.put(
        Measure.YARD_AGE_MEAN, lifted > 0 ? intake.ageS(c) / lifted / DAY_S : Double.NaN, name);
    tally.put(Measure.YARD_HOURS_FULL, intake.levels.fullS(c) / HOUR_S, name);
    tally.putCrop(Measure.YARD_ROOM_NEEDED, name, intake.room.wanted(c), name);
    haulage.delivery(c).flatMap(Delivery::release).ifPresent(release -> apart(c, name, release));
    tally.put(Measure.YARD_WITHOUT_ROOM, intake.room.refused(c), name);
  }

  private void apart(int c, String name, Delivery.Release release) {
    tally.putCrop(Measure.YARD_KEPT_APART, name, intake.keptApartPeak(c), name);
    if (release.mayFail()) {
      tally.putCrop(Measure.INTAKE_FAILED, name, intake.balesFailed(c), name);
      mass(Measure.MASS_FAILED, intake.failed.kg(c), intake.failed.dryKg(c), name);
    }
  }

  /** A crop that no field bears has no drawn crop. */
  private void drawn(int c, String name) {
    if (haulage.firstField(c) < haulage.endField(c)) {
      double meanKg = haulage.meanCropKg(c);
      boolean isKnown = meanKg > 0 && meanKg < Double.POSITIVE_INFINITY;
      tally.put(Measure.MASS_DRAWN, intake.drawnKg(c) / TONNE_KG, name);
      tally.put(
          Measure.MASS_DRAWN_OVER_MEAN, isKnown ? intake.drawnKg(c) / meanKg : Double.NaN, name);
    }
  }

  /** A crop's are those of all its forms together; what was dried is not known by form. */
  private void masses(int c, String name) {
    boolean isForm = layout.baseOf[c] != c;
    double fedKg = 0;
    double fedDryKg = 0;
    double driedKg = 0;
    double hereKg = kg(c, intake.inPlacesAtEnd) + kg(c, intake.inTrucksAtEnd);
    double hereDryKg = dryKg(c, intake.inPlacesAtEnd) + dryKg(c, intake.inTrucksAtEnd);
    for (int l = 0; l < layout.lines; l++) {
      if (layout.takes(l, c)) {
        fedKg += material.fedKg[l];
        fedDryKg += material.fedDryKg[l];
        driedKg += material.driedKg[l];
        Arrays.fill(componentKg, 0);
        double onTableKg =
            isForm
                ? feeding.stock.stillHereKg(l, c, componentKg)
                : feeding.stock.stillHereKg(l, componentKg);
        hereKg += onTableKg;
        hereDryKg += Arrays.stream(componentKg).sum();
      }
    }
    mass(Measure.MASS_ON_HAND_AT_START, c, intake.onHand, name);
    mass(Measure.MASS_WEIGHED_IN, c, intake.weighedIn, name);
    if (isForm) {
      fedKg = forms.kg(c);
      fedDryKg = forms.dryKg(c);
    }
    mass(Measure.MASS_FED, fedKg, fedDryKg, name);
    mass(Measure.MASS_LOST_IN_YARD, c, intake.lostInYard, name);
    mass(Measure.MASS_LOST_AT_FIELD, c, intake.lostAtField, name);
    mass(Measure.MASS_ON_HAND_AT_END, hereKg, hereDryKg, name);
    if (changesMoisture) {
      double driedInYardKg = IntStream.of(layout.forms[c]).mapToDouble(intake::driedInYardKg).sum();
      tally.put(Measure.MASS_DRIED_IN_YARD, driedInYardKg / TONNE_KG, name);
    }
    if (!isForm) {
      tally.put(Measure.MASS_DRIED, driedKg / TONNE_KG, name);
    }
  }

  private double kg(int c, MassLedger ledger) {
    double kg = 0;
    for (int form : layout.forms[c]) {
      kg += ledger.kg(form);
    }
    return kg;
  }

  private double dryKg(int c, MassLedger ledger) {
    double kg = 0;
    for (int form : layout.forms[c]) {
      kg += ledger.dryKg(form);
    }
    return kg;
  }

  private void mass(Measure measure, int c, MassLedger ledger, String name) {
    mass(measure, kg(c, ledger), dryKg(c, ledger), name);
  }

  private void place(int p, Yard.Place place) {
    List<String> crops = place.crops();
    // counted in the unit of the only crop that it is for, else in any
    String crop = crops.isEmpty() ? "" : crops.get(0);
    tally.putCrop(Measure.YARD_PLACE_PEAK, crop, intake.levels.placePeak(p), place.name());
    tally.put(Measure.YARD_PLACE_AGE_MEAN, intake.places.meanAgeS(p) / DAY_S, place.name());
    tally.put(Measure.YARD_PLACE_MOISTURE_MEAN, intake.places.moisture(p), place.name());
    place.limits().ifPresent(limits -> limits(p, place.name(), limits));
    covers.putPlace(tally, p);
    if (place.climate().isPresent()) {
      tally.put(Measure.YARD_PLACE_DAMP, intake.places.damp(p), place.name());
    }
    mass(
        Measure.YARD_PLACE_LOST, intake.places.lostKg(p), intake.places.lostDryKg(p), place.name());
  }

  private void limits(int p, String name, Yard.Limits limits) {
    if (limits.kg().isPresent()) {
      tally.put(Measure.YARD_PLACE_MASS_PEAK, intake.limits.peakKg(p) / TONNE_KG, name);
      tally.put(Measure.YARD_PLACE_OVER_MASS, intake.limits.overMassS(p) / HOUR_S, name);
      tally.put(Measure.YARD_PLACE_TIMES_OVER_MASS, intake.limits.timesOverMass(p), name);
    }
    if (limits.value().isPresent()) {
      tally.put(Measure.YARD_PLACE_VALUE_PEAK, intake.limits.peakValue(p), name);
      tally.put(Measure.YARD_PLACE_OVER_VALUE, intake.limits.overValueS(p) / HOUR_S, name);
      tally.put(Measure.YARD_PLACE_TIMES_OVER_VALUE, intake.limits.timesOverValue(p), name);
    }
  }

  private void mass(Measure measure, double kg, double dryKg, String... names) {
    tally.putMass(measure, kg / TONNE_KG, dryKg / TONNE_KG, names);
  }
}
