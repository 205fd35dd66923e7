package hurdline.plant;

import hurdline.random.Distribution;
import java.util.Map;
import java.util.Optional;

/**
 * What a lot has beside dry matter and water: drawn for each bale, kept in yard and bins, mixed
 * where lots meet, and what rates and outlets can be corrected by. Whoever carries lots runs over
 * all of these and names none.
 */
public enum LotAttribute {
  /** Of the stalks, m. */
  DIAMETER("diameter", "11 mm") {
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
  };

  private static final int COUNT = values().length;

  private final String word;
  private final String sample;

  LotAttribute(String word, String sample) {
    this.word = word;
    this.sample = sample;
  }

  /**
   * Its key in a crop; {@code rate_by_…} and {@code by_…} are named after it, and so is the stream
   * of its draws.
   */
  public String word() {
    return word;
  }

  /** A value as a plant file may have it. */
  String sample() {
    return sample;
  }

  /** What it is drawn from, where the crop has it. */
  public abstract Optional<Distribution> of(Bale bale);

  public abstract Curve onRate(Step step);

  /** By component. */
  public abstract Map<String, Curve> onShares(Step.Outlet outlet);

  /**
   * The rule by which it is mixed: what a mass brings into a blend. The sum over all that meets, by
   * as-is mass, is the blend's value; so this rule gives the mean by mass.
   */
  public double brings(double massKg, double value) {
    return massKg * value;
  }

  public static int count() {
    return COUNT;
  }
}
