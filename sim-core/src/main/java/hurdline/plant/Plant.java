package hurdline.plant;

import java.util.List;
import java.util.Optional;

/**
 * One plant as its file describes it, in SI units, before anything is compiled.
 *
 * <p>Lists keep the file's order; names are unique within each list.
 *
 * @param name the plant's own name
 * @param components what the line tells apart
 * @param money absent where the file asks no money questions
 * @param doubts how well values are known that somebody judged
 * @param titles those that the file gives; what has none reads as its name
 */
public record Plant(
    String name,
    Calendar calendar,
    List<Component> components,
    List<Crop> crops,
    List<Machine> machines,
    List<Product> products,
    List<Packaging> packages,
    List<Store> stores,
    List<Line> lines,
    List<SeasonEntry> season,
    List<Crew> crews,
    List<Resource> resources,
    Yard yard,
    List<Delivery> deliveries,
    List<BaseLoad> baseLoads,
    Optional<Money> money,
    List<Option> options,
    List<Plan> plans,
    List<Doubt> doubts,
    List<Title> titles) {

  public Plant {
    components = List.copyOf(components);
    crops = List.copyOf(crops);
    machines = List.copyOf(machines);
    products = List.copyOf(products);
    packages = List.copyOf(packages);
    stores = List.copyOf(stores);
    lines = List.copyOf(lines);
    season = List.copyOf(season);
    crews = List.copyOf(crews);
    resources = List.copyOf(resources);
    deliveries = List.copyOf(deliveries);
    baseLoads = List.copyOf(baseLoads);
    options = List.copyOf(options);
    plans = List.copyOf(plans);
    doubts = List.copyOf(doubts);
    titles = List.copyOf(titles);
  }

  /** What the product is packed into; empty where it leaves loose. */
  public Optional<Packaging> packaging(Product product) {
    return product
        .packaging()
        .flatMap(name -> packages.stream().filter(each -> each.name().equals(name)).findFirst());
  }

  /** The same plant but for these. */
  public Plant with(
      List<Product> otherProducts,
      Optional<Money> otherMoney,
      List<Option> otherOptions,
      List<Plan> otherPlans) {
    return new Plant(
        name,
        calendar,
        components,
        crops,
        machines,
        otherProducts,
        packages,
        stores,
        lines,
        season,
        crews,
        resources,
        yard,
        deliveries,
        baseLoads,
        otherMoney,
        otherOptions,
        otherPlans,
        doubts,
        titles);
  }
}
