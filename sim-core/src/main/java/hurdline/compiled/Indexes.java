package hurdline.compiled;

import hurdline.plant.Component;
import hurdline.plant.Crop;
import hurdline.plant.Line;
import hurdline.plant.LotAttribute;
import hurdline.plant.Machine;
import hurdline.plant.Plant;
import hurdline.plant.Product;
import hurdline.plant.Resource;
import hurdline.plant.Store;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Numbers of all that the compiled plant speaks of; machines are those that are not bins. */
public final class Indexes {
  public final Names components;
  public final Names machines;
  public final Names bins;
  public final Names products;
  public final Names stores;
  public final Names lines;
  public final Names crops;
  public final Names resources;
  public final List<LotAttribute> attributes;
  private final Map<String, Machine> byName = new HashMap<>();

  Indexes(Plant plant) {
    components = new Names(plant.components().stream().map(Component::name).toList());
    machines =
        new Names(
            plant.machines().stream()
                .filter(m -> !(m instanceof Machine.Bin))
                .map(Machine::name)
                .toList());
    bins =
        new Names(
            plant.machines().stream()
                .filter(m -> m instanceof Machine.Bin)
                .map(Machine::name)
                .toList());
    products = new Names(plant.products().stream().map(Product::name).toList());
    stores = new Names(plant.stores().stream().map(Store::name).toList());
    lines = new Names(plant.lines().stream().map(Line::name).toList());
    crops = new Names(plant.crops().stream().map(Crop::name).toList());
    attributes = LotAttribute.of(plant);
    resources = new Names(plant.resources().stream().map(Resource::name).toList());
    plant.machines().forEach(m -> byName.put(m.name(), m));
  }

  Machine machine(String name) {
    return byName.get(name);
  }

  /** Share of what reaches a machine that it keeps. */
  double collects(String machine) {
    return machine(machine) instanceof Machine.Cyclone cyclone ? cyclone.collects() : 1;
  }

  /** Whether the same lines lead the same to the same, under the same numbers. */
  boolean leadAs(Indexes other) {
    return components.equals(other.components)
        && machines.equals(other.machines)
        && bins.equals(other.bins)
        && products.equals(other.products)
        && lines.equals(other.lines)
        && crops.equals(other.crops)
        && attributes.equals(other.attributes)
        && byName.keySet().stream().allMatch(name -> collects(name) == other.collects(name));
  }
}
