package hurdline.plant;

import hurdline.random.Distribution;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What a lot has beside dry matter and water: drawn for each bale, kept in yard and bins, mixed
 * where lots meet, and what rates and outlets can be corrected by. Whoever carries lots runs over
 * those that a plant has and names none; a plant without any carries none.
 */
public sealed interface LotAttribute {
  /** What people call it. */
  String word();

  /** What the stream of its draws is named after. */
  default String stream() {
    return word();
  }

  /** What it is drawn from, where the crop has it. */
  Optional<Distribution> of(Bale bale);

  Curve onRate(Step step);

  /** By component. */
  Map<String, Curve> onShares(Step.Outlet outlet);

  /** Its correction's key in a step. */
  String rateKey();

  /** Its correction's key in an outlet. */
  String sharesKey();

  /** Where a crop has it, and what that might look like. */
  String sample(String crop);

  /** What it cannot be above. */
  double most();

  /**
   * The rule by which all are mixed: what a mass brings into a blend. The sum over all that meets,
   * by as-is mass, is the blend's value; so this rule gives the mean by mass.
   */
  static double brings(double massKg, double value) {
    return massKg * value;
  }

  /** Those that bales of a plant have: the diameter first, then shares in the file's order. */
  static List<LotAttribute> of(Plant plant) {
    List<Bale> bales =
        Stream.concat(
                plant.crops().stream().map(Crop::bale),
                plant.deliveries().stream()
                    .flatMap(delivery -> delivery.fields().stream())
                    .map(Delivery.Field::bale))
            .toList();
    Set<String> shares = new LinkedHashSet<>();
    bales.forEach(bale -> shares.addAll(bale.attributes().keySet()));
    List<LotAttribute> found = new ArrayList<>();
    if (bales.stream().anyMatch(bale -> bale.diameterM().isPresent())) {
      found.add(new Diameter());
    }
    shares.forEach(name -> found.add(new Share(name)));
    return List.copyOf(found);
  }

  /** Those that a step may be corrected by, whether its crop has them or not. */
  static List<LotAttribute> of(Step step) {
    Set<String> shares = new LinkedHashSet<>(step.rateBy().keySet());
    step.outlets().forEach(outlet -> shares.addAll(outlet.by().keySet()));
    List<LotAttribute> found = new ArrayList<>(List.of(new Diameter()));
    shares.forEach(name -> found.add(new Share(name)));
    return found;
  }

  /** Of the stalks, m. */
  record Diameter() implements LotAttribute {
    @Override
    public String word() {
      return "diameter";
    }

    @Override
    public Optional<Distribution> of(Bale bale) {
      return bale.diameterM();
    }

    @Override
    public Curve onRate(Step step) {
      return step.rateByDiameter();
    }

    @Override
    public Map<String, Curve> onShares(Step.Outlet outlet) {
      return outlet.byDiameter();
    }

    @Override
    public String rateKey() {
      return "rate_by_diameter";
    }

    @Override
    public String sharesKey() {
      return "by_diameter";
    }

    @Override
    public String sample(String crop) {
      return "a diameter in crops." + crop + ", such as \"diameter: 11 mm\"";
    }

    @Override
    public double most() {
      return Double.POSITIVE_INFINITY;
    }
  }

  /** A share from 0 to 1 that the plant file has given a name, such as retting or soil. */
  record Share(String word) implements LotAttribute {
    @Override
    public String stream() {
      return "attributes." + word;
    }

    @Override
    public Optional<Distribution> of(Bale bale) {
      return Optional.ofNullable(bale.attributes().get(word));
    }

    @Override
    public Curve onRate(Step step) {
      return step.rateBy().getOrDefault(word, Curve.NONE);
    }

    @Override
    public Map<String, Curve> onShares(Step.Outlet outlet) {
      return outlet.by().getOrDefault(word, Map.of());
    }

    @Override
    public String rateKey() {
      return "rate_by." + word;
    }

    @Override
    public String sharesKey() {
      return "by." + word;
    }

    @Override
    public String sample(String crop) {
      return "it in crops." + crop + ", such as \"attributes: {" + word + ": 70 %}\"";
    }

    @Override
    public double most() {
      return 1;
    }
  }
}
