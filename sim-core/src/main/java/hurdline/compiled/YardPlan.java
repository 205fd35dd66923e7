package hurdline.compiled;

import hurdline.plant.Bale;
import hurdline.plant.Component;
import hurdline.plant.Crop;
import hurdline.plant.LotAttribute;
import hurdline.plant.Plant;
import hurdline.plant.Yard;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The yard compiled: crops and components by name, places in the order in which they are filled.
 */
public final class YardPlan {

  /** In which order bales of a crop are picked. */
  public enum PickRule {
    OLDEST_FIRST,
    NEWEST_FIRST,
    DRIEST_FIRST,
    BY_PLACE
  }

  private static final OptionalDouble NONE = OptionalDouble.empty();
  private static final double INFINITE = Double.POSITIVE_INFINITY;

  private final List<Crop> crops;
  private final List<String> components;
  private final List<LotAttribute> attributes;
  private final List<Yard.Place> places;
  private final boolean[] takes; // [place * crops + crop]
  private final int[] holds;
  private final double[] lossPerS;
  private final int[] onHand;
  private final double[] onHandAreaM2PerKg;
  private final boolean[] paidAsWeighed; // by crop
  private final double fieldLossPerS;
  private final boolean turnAway;
  private final PickRule pickRule;
  private final int[] pickOrder;
  private final int days;
  private final Basis basis;

  /** All that the plan is made of. */
  private record Basis(
      Yard yard,
      List<Crop> crops,
      List<Component> components,
      List<LotAttribute> attributes,
      Map<String, Double> areaM2PerKg,
      Set<String> paidAsWeighed,
      Map<String, Double> limitPrices,
      int days) {
    static Basis of(Plant plant) {
      return new Basis(
          plant.yard(),
          plant.crops(),
          plant.components(),
          LotAttribute.of(plant),
          PurchaseTerms.meanAreaM2PerKg(plant),
          PurchaseTerms.paidAsWeighed(plant),
          PurchaseTerms.limitPrices(plant),
          plant.calendar().days());
    }
  }

  private YardPlan(Basis basis) {
    this.basis = basis;
    Yard yard = basis.yard();
    crops = basis.crops().stream().sorted(Comparator.comparing(Crop::name)).toList();
    components = basis.components().stream().map(Component::name).sorted().toList();
    attributes = basis.attributes();
    places = yard.places();
    takes = new boolean[places.size() * crops.size()];
    for (int place = 0; place < places.size(); place++) {
      List<String> only = places.get(place).crops();
      for (int crop = 0; crop < crops.size(); crop++) {
        takes[place * crops.size() + crop] =
            only.isEmpty() || only.contains(crops.get(crop).name());
      }
    }
    holds = places.stream().mapToInt(Yard.Place::holds).toArray();
    lossPerS = places.stream().mapToDouble(Yard.Place::decayPerS).toArray();
    onHand = crops.stream().mapToInt(crop -> yard.onHand().getOrDefault(crop.name(), 0)).toArray();
    onHandAreaM2PerKg =
        crops.stream()
            .mapToDouble(crop -> basis.areaM2PerKg().getOrDefault(crop.name(), 0.0))
            .toArray();
    paidAsWeighed = new boolean[crops.size()];
    for (int crop = 0; crop < crops.size(); crop++) {
      paidAsWeighed[crop] = basis.paidAsWeighed().contains(crops.get(crop).name());
    }
    fieldLossPerS = yard.fieldLossPerS();
    turnAway = yard.turnAway();
    pickRule = pickRule(yard.pick());
    pickOrder = pickOrder(yard);
    days = basis.days();
  }

  public static YardPlan of(Plant plant) {
    return new YardPlan(Basis.of(plant));
  }

  /** The plan of a changed plant: this one where nothing that it is made of has changed. */
  public YardPlan changedTo(Plant plant) {
    Basis now = Basis.of(plant);
    return now.equals(basis) ? this : new YardPlan(now);
  }

  private static PickRule pickRule(Yard.Pick pick) {
    if (pick instanceof Yard.NewestFirst) {
      return PickRule.NEWEST_FIRST;
    }
    if (pick instanceof Yard.DriestFirst) {
      return PickRule.DRIEST_FIRST;
    }
    return pick instanceof Yard.ByPlace ? PickRule.BY_PLACE : PickRule.OLDEST_FIRST;
  }

  /** Places that the rule names first, the others behind them in the file's order. */
  private static int[] pickOrder(Yard yard) {
    List<String> named = yard.pick() instanceof Yard.ByPlace byPlace ? byPlace.places() : List.of();
    List<String> all = yard.places().stream().map(Yard.Place::name).toList();
    IntStream first = named.stream().mapToInt(all::indexOf);
    IntStream rest =
        IntStream.range(0, all.size()).filter(place -> !named.contains(all.get(place)));
    return IntStream.concat(first, rest).toArray();
  }

  public int crops() {
    return crops.size();
  }

  public String crop(int crop) {
    return crops.get(crop).name();
  }

  /** The crop whose weather and season factor it shares: a form has those of its crop. */
  public String season(int crop) {
    return crops.get(crop).base();
  }

  /** What a bale of the crop is like where no field says otherwise. */
  public Bale bale(int crop) {
    return crops.get(crop).bale();
  }

  public int components() {
    return components.size();
  }

  public String component(int component) {
    return components.get(component);
  }

  /** What bales have beside dry matter and water. */
  public List<LotAttribute> attributes() {
    return attributes;
  }

  public int places() {
    return places.size();
  }

  public String place(int place) {
    return places.get(place).name();
  }

  public boolean takes(int place, int crop) {
    return takes[place * crops.size() + crop];
  }

  /** Bales that the place holds. */
  public int holds(int place) {
    return holds[place];
  }

  public double lossPerS(int place) {
    return lossPerS[place];
  }

  /** Bales of the crop that lie in the yard at time zero. */
  public int onHand(int crop) {
    return onHand[crop];
  }

  /** Area that stock on hand stands for where area is paid for, 0 where it is not. */
  public double onHandAreaM2PerKg(int crop) {
    return onHandAreaM2PerKg[crop];
  }

  /** What bales in a place become, where their moisture changes. */
  public Optional<Yard.Climate> climate(int place) {
    return places.get(place).climateAsCovered();
  }

  /** Whether the moisture of bales changes in any place. */
  public boolean changesMoisture() {
    return places.stream().anyMatch(place -> place.climate().isPresent());
  }

  /** Whether water counts in what a bale was paid; asked where moisture changes alone. */
  public boolean isPaidAsWeighed(int crop) {
    return paidAsWeighed[crop];
  }

  /** Whether a bale of the crop with this moisture counts as damp. */
  public boolean isDamp(int crop, double moisture) {
    return moisture >= crops.get(crop).dampFrom();
  }

  /** Whether what lies in some place is held against a limit. */
  public boolean hasLimits() {
    return places.stream().anyMatch(place -> place.limits().isPresent());
  }

  /** +∞ without a limit. */
  public double limitKg(int place) {
    return places.get(place).limits().map(Yard.Limits::kg).orElse(NONE).orElse(INFINITE);
  }

  /** +∞ without a limit. */
  public double limitValue(int place) {
    return places.get(place).limits().map(Yard.Limits::value).orElse(NONE).orElse(INFINITE);
  }

  /** At which a limit of value looks at a crop. */
  public double limitPricePerKg(int crop) {
    return basis.limitPrices().getOrDefault(crops.get(crop).name(), 0.0);
  }

  public double fieldLossPerS() {
    return fieldLossPerS;
  }

  /** Whether what finds no room is turned away at the gate, instead of waiting. */
  public boolean turnAway() {
    return turnAway;
  }

  public PickRule pickRule() {
    return pickRule;
  }

  /** Places in the order in which {@link PickRule#BY_PLACE} goes through them; a copy. */
  public int[] pickOrder() {
    return Arrays.copyOf(pickOrder, pickOrder.length);
  }

  /** Days of the horizon. */
  public int days() {
    return days;
  }
}
