package hurdline.study.option;

import hurdline.answer.CompareAnswer;
import hurdline.answer.LifeTerms;
import hurdline.plant.Calendar;
import hurdline.plant.Money;
import hurdline.plant.Plant;
import hurdline.simulation.CompiledPlant;
import hurdline.study.replicate.InterleavedRuns;
import hurdline.study.replicate.LifeCalendar;
import hurdline.study.replicate.ReplicationResults;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What each compared option adds to the margin in the years of its lives, as far as there is money
 * and calendars repeat.
 */
public final class OptionMargins {
  private final Map<String, AnnualMarginGain> margins = new LinkedHashMap<>();
  private final List<String> cut = new ArrayList<>();
  private final List<String> unrepeated = new ArrayList<>();
  private final List<CompiledPlant> stages;
  private final InterleavedRuns.Simulated simulated;
  private final ServiceLifeYears years;

  /**
   * @param stages the base first, then the options in their order; lives are simulated as far as
   *     they are needed
   */
  public OptionMargins(
      List<CompiledPlant> stages,
      List<CompareAnswer.Option> options,
      InterleavedRuns.Simulated simulated,
      ServiceLifeYears years) {
    this.stages = stages;
    this.simulated = simulated;
    this.years = years;
    Plant base = stages.get(0).plant();
    for (int at = 0; at < options.size(); at++) {
      String option = options.get(at).name();
      Plant changed = stages.get(at + 1).plant();
      if (!options.get(at).isWhatIf() && base.money().isPresent() && changed.money().isPresent()) {
        if (repeats(base) && repeats(changed)) {
          years
              .of(base, changed, options.get(at).lifeYr())
              .ifPresentOrElse(margin -> margins.put(option, margin), () -> cut.add(option));
        } else {
          unrepeated.add(option);
        }
      }
    }
  }

  private static boolean repeats(Plant plant) {
    return LifeCalendar.of(plant.calendar()).isPresent();
  }

  public ServiceLifeYears years() {
    return years;
  }

  /** None where there is no money, or its lives were not whole when stop was asked for. */
  public Optional<AnnualMarginGain> of(String option) {
    return Optional.ofNullable(margins.get(option));
  }

  /** Options whose lives were not whole when stop was asked for. */
  public List<String> cut() {
    return List.copyOf(cut);
  }

  /** How lives are made of calendars. */
  public LifeTerms terms() {
    Plant base = stages.get(0).plant();
    Calendar calendar = base.calendar();
    return new LifeTerms(
        calendar.days(),
        calendar.repeats().map(Calendar.Repeats::word).orElse(""),
        unrepeated,
        base.money()
            .map(Money::discount)
            .flatMap(of -> of.stream().boxed().findFirst())
            .orElse(Double.NaN),
        margins.isEmpty() ? 0 : years.lives(),
        carried(base));
  }

  private LifeTerms.Carried carried(Plant base) {
    boolean onHand =
        base.deliveries().stream()
            .anyMatch(of -> base.yard().onHand().getOrDefault(of.crop(), 0) > 0);
    boolean left = simulated.figures().stream().anyMatch(ReplicationResults::leavesCrop);
    return onHand
        ? LifeTerms.Carried.STOCK_ON_HAND
        : left ? LifeTerms.Carried.CROP_LEFT : LifeTerms.Carried.NOTHING;
  }
}
