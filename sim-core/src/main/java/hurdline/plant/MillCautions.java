package hurdline.plant;

import java.util.Optional;

/** What a mill may be told to do that is worth a look. */
final class MillCautions {
  private final Plant plant;
  private final Problems found;

  MillCautions(Plant plant, Problems found) {
    this.plant = plant;
    this.found = found;
  }

  void look() {
    for (Line line : plant.lines()) {
      for (Step step : line.steps()) {
        stay(line, step);
        then(line, step);
      }
    }
  }

  private void stay(Line line, Step step) {
    Step.Mix mix = step.mix();
    boolean several =
        mix instanceof Step.Shares shares && shares.shares().size() > 1
            || then(mix).filter(shares -> shares.shares().size() > 1).isPresent();
    if (several && !(step.stayS() >= Step.SHORTEST_STAY.toSeconds())) {
      found.add(
          Names.path(line, step) + ".min_run",
          "a mix of several screens without a \"min_run\" of at least 1 min",
          "it counts as 1 min, since the mill would change screens without end; give a time such as"
              + " \"min_run: 16 h\"");
    }
  }

  private void then(Line line, Step step) {
    then(step.mix()).stream()
        .flatMap(shares -> shares.shares().stream())
        .map(share -> step.makes().getOrDefault(share.screen(), ""))
        .flatMap(name -> plant.products().stream().filter(product -> product.name().equals(name)))
        .filter(Product::sellsOrdersOnly)
        .forEach(
            product ->
                found.add(
                    Names.path(line, step) + ".then",
                    "it makes \""
                        + product.name()
                        + "\" without an order, which sells on orders only",
                    "what is made beyond the orders earns nothing; name another screen, or \"sells:"
                        + " all\" in the product"));
  }

  private static Optional<Step.Shares> then(Step.Mix mix) {
    return mix instanceof Step.ByOrders orders
        ? orders.then().filter(Step.Shares.class::isInstance).map(Step.Shares.class::cast)
        : Optional.empty();
  }
}
