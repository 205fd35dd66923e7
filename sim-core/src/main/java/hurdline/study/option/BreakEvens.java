package hurdline.study.option;

import hurdline.answer.BreakEvenRow;
import hurdline.answer.CompareAnswer;
import hurdline.economics.BreakEven;
import hurdline.plant.Change;
import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import hurdline.statistics.Interval;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.replicate.ReplicationBudget;
import hurdline.unit.Amount;
import hurdline.unit.Level;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;

/** At which value of a key an option is worth nothing, all else as it is and on the same chance. */
public final class BreakEvens {
  private static final List<String> TRIED = List.of("x1.1", "x0.9");

  private final PlantOrigin source;
  private final PlantChanges base;
  private final OptionPlants plants;
  private final List<CompareAnswer.Option> options;
  private final List<String> keys;

  /**
   * @throws ProblemsException if a key leads nowhere, or to nothing that can be scaled
   */
  public BreakEvens(
      PlantOrigin source,
      PlantChanges base,
      List<CompareAnswer.Option> options,
      List<String> keys) {
    this.source = source;
    this.base = base;
    this.options = options;
    this.keys = keys;
    plants = new OptionPlants(source, base);
    keys.forEach(this::check);
  }

  private void check(String key) {
    Plant unchanged = plants.base();
    ProblemsException first = null;
    boolean possible = false;
    boolean moves = false;
    for (String factor : TRIED) {
      try {
        moves |= !plants.base(new Change.Value(key, factor)).equals(unchanged);
        possible = true;
      } catch (ProblemsException problem) {
        first = first == null ? problem : first;
      }
    }
    if (!possible) {
      throw first;
    }
    if (!moves) {
      throw source.refusal(key + " changes nothing", "a key that does");
    }
    if (options.stream().noneMatch(option -> concerns(option.name(), key))) {
      throw source.refusal(
          key + " is of an option that is not compared",
          "a key of the plant or of a compared option");
    }
  }

  /** What another option costs says nothing of this one. */
  private static boolean concerns(String option, String key) {
    String[] path = key.split("\\.");
    return !path[0].equals("options")
        || path[1].equals("*")
        || OptionPlants.parts(option).contains(path[1]);
  }

  /**
   * By option, the searches that simulate lives at each value they try, since more than prices
   * differ there.
   */
  public List<Integer> simulatedSearches() {
    List<Integer> all = new ArrayList<>();
    Plant plant = plants.base();
    for (int at = 0; at < options.size(); at++) {
      String option = options.get(at).name();
      int views = Financing.of(option, plant).isGiven() ? 2 : 1;
      for (String key : keys) {
        if (concerns(option, key)
            && TRIED.stream()
                .anyMatch(factor -> isSimulated(option, new Change.Value(key, factor)))) {
          all.addAll(Collections.nCopies(views, at));
        }
      }
    }
    return all;
  }

  private boolean isSimulated(String option, Change.Value change) {
    try {
      return !Repricing.areAlike(plants.base(), plants.base(change))
          || !Repricing.areAlike(plants.of(option), plants.of(option, change));
    } catch (ProblemsException refused) {
      return false;
    }
  }

  /** A row for each option and key that concerns it; if stopped, those that are done. */
  public List<BreakEvenRow> rows(OptionNetPresentValue worth, ReplicationBudget simulations) {
    List<BreakEvenRow> rows = new ArrayList<>();
    for (CompareAnswer.Option option : options) {
      for (String key : keys) {
        if (!concerns(option.name(), key)) {
          continue;
        }
        NetPresentValueByFactor at = new NetPresentValueByFactor(option.name(), key, worth::values);
        BreakEven found = BreakEven.of(at::mean);
        BreakEven afterTax = afterTax(option.name(), key, worth);
        if (simulations.isCut()) {
          return rows;
        }
        rows.add(row(option.name(), key, found, at, afterTax));
      }
    }
    return rows;
  }

  /** Nothing is found where nothing is said of loan or tax. */
  private static BreakEven afterTax(String option, String key, OptionNetPresentValue worth) {
    return worth.isAfterTaxAsked(option)
        ? BreakEven.of(new NetPresentValueByFactor(option, key, worth::afterTax)::mean)
        : new BreakEven(OptionalDouble.empty(), Double.NaN, Double.NaN, Double.NaN);
  }

  private BreakEvenRow row(
      String option, String key, BreakEven found, NetPresentValueByFactor at, BreakEven afterTax) {
    Level inFile =
        source
            .variants()
            .said(key, base.asArray())
            .flatMap(Amount::find)
            .map(said -> new Level(false, said))
            .orElse(Level.times(BigDecimal.ONE));
    double number = inFile.number().doubleValue();
    Interval known =
        found.factor().isPresent() ? at.around(found.factor().getAsDouble()) : Interval.NONE;
    return new BreakEvenRow(
        option,
        key,
        inFile.unit(),
        number * found.factor().orElse(Double.NaN),
        number * found.from(),
        number * found.to(),
        found.factor().isPresent(),
        number,
        found.at1(),
        Math.min(number * known.low(), number * known.high()),
        Math.max(number * known.low(), number * known.high()),
        number * afterTax.factor().orElse(Double.NaN),
        afterTax.at1());
  }
}
