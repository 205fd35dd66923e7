package hurdline.simulation.results;

import hurdline.account.IntakeBooks;
import hurdline.compiled.CompiledLines;
import hurdline.measure.Measure;
import hurdline.plant.Bale;
import hurdline.plant.Crop;
import hurdline.plant.Money;
import hurdline.plant.Yard;
import java.util.Arrays;
import java.util.List;

/** What it costs to cover stacks, each once for the bales that it takes; begun ones count. */
final class CoverCost {
  private static final double HOUR_S = 3600;

  private final CompiledLines layout;
  private final CropPurchases purchases;
  private final IntakeBooks intake;
  private final Money money;
  private final List<Yard.Place> places;
  final double[] byLine;

  /** For crops that no line takes. */
  double ofNoLine;

  private double hands;

  CoverCost(CompiledLines layout, CropPurchases purchases, IntakeBooks intake) {
    this.layout = layout;
    this.purchases = purchases;
    this.intake = intake;
    money = layout.plant.money().orElse(null);
    places = layout.plant.yard().places();
    byLine = new double[layout.lines];
  }

  /** Whether any place has covers. */
  boolean any() {
    return places.stream().anyMatch(place -> place.cover().isPresent());
  }

  void workOut() {
    Arrays.fill(byLine, 0);
    ofNoLine = 0;
    hands = 0;
    for (int p = 0; p < places.size(); p++) {
      for (int crop = 0; places.get(p).cover().isPresent() && crop < crops(); crop++) {
        pay(places.get(p).cover().get(), stacks(p, crop), crop);
      }
    }
  }

  private int crops() {
    return layout.naming.crops.count();
  }

  private void pay(Yard.Cover cover, double stacks, int crop) {
    double paidHands = stacks * cover.hands() * cover.lastsS() * money.wagePerS();
    double paid = stacks * cover.cost() + paidHands;
    hands += paidHands;
    boolean takes = false;
    for (int l = 0; l < layout.lines; l++) {
      byLine[l] += paid * purchases.share(l, crop);
      takes |= purchases.share(l, crop) > 0;
    }
    ofNoLine += takes ? 0 : paid;
  }

  /** Stacks of the crop that were built in a place. */
  private double stacks(int place, int crop) {
    Crop known =
        layout.plant.crops().stream()
            .filter(c -> c.name().equals(layout.naming.crops.name(crop)))
            .findFirst()
            .orElseThrow();
    boolean round = known.bale().size().map(Bale.Size::round).orElse(false);
    int bales = places.get(place).stack().map(stack -> stack.bales(round)).orElse(1);
    return Math.ceil((double) intake.places.cameTo(place, crop) / bales);
  }

  double total() {
    return Arrays.stream(byLine).sum() + ofNoLine;
  }

  void put(OutcomeWriter tally) {
    if (any()) {
      tally.put(Measure.MONEY_COVERS, total());
      tally.put(Measure.MONEY_COVER_HANDS, hands);
    }
  }

  /** How many stacks were covered in each place, and the hours of hands. */
  void putPlace(OutcomeWriter tally, int place) {
    places
        .get(place)
        .cover()
        .ifPresent(
            cover -> {
              double stacks = 0;
              for (int crop = 0; crop < crops(); crop++) {
                stacks += stacks(place, crop);
              }
              String name = places.get(place).name();
              tally.put(Measure.YARD_PLACE_COVERED, stacks, name);
              double hours = stacks * cover.hands() * cover.lastsS() / HOUR_S;
              tally.put(Measure.YARD_PLACE_COVER_HOURS, hours, name);
            });
  }
}
