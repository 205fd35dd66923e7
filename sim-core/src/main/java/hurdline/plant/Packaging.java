package hurdline.plant;

import hurdline.random.Distribution;
import java.util.List;

/**
 * A package: what it holds, how long its change takes, what it costs, who must change it.
 *
 * @param massKg as-is mass of a full package
 */
public record Packaging(
    String name, double massKg, Distribution changeS, double cost, List<String> needs) {
  public Packaging {
    needs = List.copyOf(needs);
    Check.above0("massKg", massKg);
    Check.notBelow0("cost", cost);
  }
}
