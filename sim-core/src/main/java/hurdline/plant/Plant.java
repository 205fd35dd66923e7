package hurdline.plant;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

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
    Hands hands,
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

  /** The forms in which a crop comes, itself among them; of a form that one alone. */
  public List<Crop> forms(String crop) {
    return crops.stream()
        .filter(one -> one.name().equals(crop) || one.base().equals(crop))
        .toList();
  }

  /**
   * The forms besides a crop's own, whose bales and mass are in its measures too; none of a form.
   */
  public List<Crop> otherForms(String crop) {
    return crops.stream().filter(one -> one.formOf().filter(crop::equals).isPresent()).toList();
  }

  /** The crop that a form is of; a crop itself, and what is not known, as it stands. */
  public String baseOf(String crop) {
    return crops.stream()
        .filter(one -> one.name().equals(crop))
        .map(Crop::base)
        .findFirst()
        .orElse(crop);
  }

  /** What the product is packed into where no step says another; empty where it leaves loose. */
  public Optional<Packaging> packaging(Product product) {
    return product.packaging().flatMap(this::packagingOf);
  }

  /** What a machine that packs the product fills with it. */
  public Optional<Packaging> packaging(String machine, Product product) {
    return Packed.of(this).stream()
        .filter(one -> one.step().machine().equals(machine) && one.product().equals(product.name()))
        .findFirst()
        .map(Packed::packaging)
        .orElse(product.packaging())
        .flatMap(this::packagingOf);
  }

  /** All that the product is packed into, at whatever machine; its own first. */
  public List<Packaging> packagings(Product product) {
    List<Packed> here =
        Packed.of(this).stream().filter(one -> one.product().equals(product.name())).toList();
    boolean own = here.isEmpty() || isPiled(product);
    return Stream.concat(
            own ? product.packaging().stream() : Stream.empty(),
            here.stream().flatMap(one -> one.packaging().stream()))
        .distinct()
        .flatMap(name -> packagingOf(name).stream())
        .toList();
  }

  /** Whether an outlet leads to the product, past any filler. */
  public boolean isPiled(Product product) {
    return lines.stream()
        .flatMap(line -> line.steps().stream())
        .flatMap(step -> step.outlets().stream())
        .anyMatch(outlet -> outlet.to().equals(product.name()));
  }

  private Optional<Packaging> packagingOf(String name) {
    return packages.stream().filter(each -> each.name().equals(name)).findFirst();
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
        hands,
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
