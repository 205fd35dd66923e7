package hurdline.fit;

import hurdline.plant.Plant;
import hurdline.random.RandomStreams;
import hurdline.records.Records;
import java.util.List;

/**
 * All figures that a plant's records hold.
 *
 * @param fedKg what the records say was fed; 0 where they do not
 */
public record Fit(List<StopFit> stops, double fedKg) {
  public Fit {
    stops = List.copyOf(stops);
  }

  /**
   * @param loads what reaches each machine, by the plant file
   * @param seed of the drawn samples with which fits are tested
   */
  public static Fit of(Plant plant, Records records, LineLoads loads, long seed) {
    StopClocks clocks = new StopClocks(plant, records, loads);
    RandomStreams streams = new RandomStreams(seed);
    return new Fit(new StopFits(plant, records, clocks, streams).all(), clocks.fedKg());
  }
}
