package hurdline.plant;

import java.util.OptionalInt;

/** What it costs to bring a product to its buyer, by its weight as it is. */
public sealed interface Freight {
  /**
   * @param kg as is
   */
  double cost(double kg);

  /** The same haul at no cost. */
  Freight withoutPrice();

  /** The same haul of packages of a mass, which may fill a load before its mass does. */
  Freight of(double packageKg);

  /** By the weight that is hauled. */
  record PerMass(double perKg) implements Freight {
    public PerMass {
      Check.notBelow0("perKg", perKg);
    }

    @Override
    public double cost(double kg) {
      return kg * perKg;
    }

    @Override
    public Freight withoutPrice() {
      return new PerMass(0);
    }

    @Override
    public Freight of(double packageKg) {
      return this;
    }
  }

  /**
   * By loads; one that is begun is paid whole.
   *
   * @param kg of a full load
   * @param packages that fill its room; absent where its mass alone fills it
   */
  record PerLoad(double kg, OptionalInt packages, double perLoad) implements Freight {
    /** Mass that is missing from a full load by rounding alone begins no further one. */
    private static final double ROUNDING = 1e-12;

    public PerLoad {
      Check.above0("kg", kg);
      packages.ifPresent(most -> Check.count(1, "packages", most));
      Check.notBelow0("perLoad", perLoad);
    }

    @Override
    public double cost(double hauledKg) {
      return Math.ceil(hauledKg / kg * (1 - ROUNDING)) * perLoad;
    }

    @Override
    public Freight withoutPrice() {
      return new PerLoad(kg, packages, 0);
    }

    @Override
    public Freight of(double packageKg) {
      double roomKg = packages.isPresent() ? packages.getAsInt() * packageKg : kg;
      return new PerLoad(Math.min(kg, roomKg), OptionalInt.empty(), perLoad);
    }
  }
}
