package hurdline.compiled;

import hurdline.plant.Crop;
import hurdline.plant.CropTerms;
import hurdline.plant.Delivery;
import hurdline.plant.Grade;
import hurdline.plant.LotAttribute;
import hurdline.plant.Money;
import hurdline.plant.Plant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** By what loads of a crop are paid and rejected as they are weighed in; crops by number. */
public final class PurchaseTerms {
  /** A moisture that equals a limit but for rounding has not passed it. */
  private static final double ROUNDING = 1e-9;

  private static final int MOISTURE = -1;

  private final boolean[] isByArea; // by crop, like all that follow
  private final boolean[] hasAdvance;
  private final int[][] gradeBy; // [crop][grade] attribute, or moisture
  private final PriceCurve[][] price;
  private final int[][] limitBy;
  private final double[][] above;
  private final double[][] below;
  private final List<LotAttribute> attributes;

  PurchaseTerms(
      List<String> crops,
      Map<String, CropTerms> terms,
      Map<String, List<Grade>> grades,
      List<Delivery> deliveries,
      List<LotAttribute> attributes) {
    this.attributes = attributes;
    isByArea = new boolean[crops.size()];
    hasAdvance = new boolean[crops.size()];
    gradeBy = new int[crops.size()][];
    price = new PriceCurve[crops.size()][];
    limitBy = new int[crops.size()][];
    above = new double[crops.size()][];
    below = new double[crops.size()][];
    for (int crop = 0; crop < crops.size(); crop++) {
      String name = crops.get(crop);
      CropTerms paid = terms.get(name);
      isByArea[crop] = paid != null && paid.perM2() > 0;
      hasAdvance[crop] = paid != null && paid.advance().isPresent();
      grades(crop, grades.getOrDefault(name, List.of()));
      limits(
          crop,
          deliveries.stream()
              .filter(delivery -> delivery.crop().equals(name))
              .flatMap(delivery -> delivery.rejects().stream())
              .toList());
    }
  }

  private void grades(int crop, List<Grade> grades) {
    gradeBy[crop] = grades.stream().mapToInt(grade -> number(grade.by())).toArray();
    price[crop] =
        grades.stream()
            .map(grade -> new PriceCurve(grade.inSteps(), grade.factors()))
            .toArray(PriceCurve[]::new);
  }

  private void limits(int crop, List<Delivery.Limit> limits) {
    limitBy[crop] = limits.stream().mapToInt(limit -> number(limit.by())).toArray();
    above[crop] =
        limits.stream()
            .mapToDouble(limit -> limit.above().orElse(Double.POSITIVE_INFINITY))
            .toArray();
    below[crop] =
        limits.stream()
            .mapToDouble(limit -> limit.below().orElse(Double.NEGATIVE_INFINITY))
            .toArray();
  }

  private int number(String by) {
    return by.equals(Grade.moisture())
        ? MOISTURE
        : IntStream.range(0, attributes.size())
            .filter(a -> attributes.get(a).equals(new LotAttribute.Share(by)))
            .findFirst()
            .orElseThrow();
  }

  /**
   * Area of its fields that a mass of a crop stands for in a mean year, by the crops whose area is
   * paid for: Σ aₖ / (E[s] · Σ aₖ · E[yₖ]), as in {@link Haulage#meanCropKg}.
   */
  static Map<String, Double> meanAreaM2PerKg(Plant plant) {
    Map<String, Double> perKg = new LinkedHashMap<>();
    for (Delivery delivery : plant.deliveries()) {
      double perM2 = plant.money().map(money -> money.perM2(delivery.crop())).orElse(0.0);
      double meanKg = perM2 > 0 ? Haulage.meanCropKg(delivery) : 0;
      if (meanKg > 0) {
        double areaM2 = delivery.fields().stream().mapToDouble(Delivery.Field::areaM2).sum();
        perKg.put(delivery.crop(), areaM2 / meanKg);
      }
    }
    return perKg;
  }

  /** Crops of which water is paid like all else; none where no moisture changes in the yard. */
  static Set<String> paidAsWeighed(Plant plant) {
    if (plant.yard().places().stream().noneMatch(place -> place.climate().isPresent())) {
      return Set.of();
    }
    return plant.crops().stream()
        .map(Crop::name)
        .filter(crop -> plant.money().map(money -> money.paidKg(crop, 2, 1) == 2).orElse(false))
        .collect(Collectors.toUnmodifiableSet());
  }

  /** Prices at which places with a limit of value look at crops; none where none has one. */
  static Map<String, Double> limitPrices(Plant plant) {
    boolean any =
        plant.yard().places().stream()
            .flatMap(place -> place.limits().stream())
            .anyMatch(limits -> limits.value().isPresent());
    return any ? plant.money().map(Money::cropsPerKg).orElse(Map.of()) : Map.of();
  }

  /** Whether the area of a crop's fields is paid for. */
  public boolean isByArea(int crop) {
    return isByArea[crop];
  }

  /** Whether something is paid for a crop's fields on contract. */
  public boolean hasAdvance(int crop) {
    return hasAdvance[crop];
  }

  /** Whether the price of a crop goes by its loads. */
  public boolean isGraded(int crop) {
    return gradeBy[crop].length > 0;
  }

  /** Whether any load of a crop may be rejected. */
  public boolean isLimited(int crop) {
    return limitBy[crop].length > 0;
  }

  /** Times its price a load is paid. */
  public double factor(int crop, double moisture, double[] attribute) {
    double factor = 1;
    for (int k = 0; k < gradeBy[crop].length; k++) {
      factor *= price[crop][k].factor(value(gradeBy[crop][k], moisture, attribute));
    }
    return factor;
  }

  public boolean accepts(int crop, double moisture, double[] attribute) {
    for (int k = 0; k < limitBy[crop].length; k++) {
      double value = value(limitBy[crop][k], moisture, attribute);
      if (value > above[crop][k] * (1 + ROUNDING) || value < below[crop][k] * (1 - ROUNDING)) {
        return false;
      }
    }
    return true;
  }

  private static double value(int by, double moisture, double[] attribute) {
    return by == MOISTURE ? moisture : attribute[by];
  }
}
