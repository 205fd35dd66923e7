package hurdline.study;

import hurdline.answer.CompareAnswer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What each compared option adds to the margin in the years of its lives, as far as there is money. */
final class LifeMargins {
  private final Map<String, MarginYears> margins = new LinkedHashMap<>();
  private final List<String> cut = new ArrayList<>();
  private final LifeYears years;

  /** @param stages the base first, then the options in their order; chains of years are played as far as they are needed */
  LifeMargins(List<Stage> stages, List<CompareAnswer.Option> options, LifeYears years) {
    this.years = years;
    for (int at = 0; at < options.size(); at++) {
      CompareAnswer.Option option = options.get(at);
      Stage base = stages.get(0);
      Stage changed = stages.get(at + 1);
      if (base.plant().money().isPresent() && changed.plant().money().isPresent()) {
        years
            .of(base.plant(), changed.plant(), option.lifeYr(), false)
            .ifPresentOrElse(margin -> margins.put(option.name(), margin), () -> cut.add(option.name()));
      }
    }
  }

  LifeYears years() {
    return years;
  }

  /** None where there is no money, or stop was asked for before its years were whole. */
  Optional<MarginYears> of(String option) {
    return Optional.ofNullable(margins.get(option));
  }

  /** Options whose years follow each other, each opening with the crop that the one before left. */
  List<String> following() {
    return margins.entrySet().stream()
        .filter(of -> of.getValue().isFollowing())
        .map(Map.Entry::getKey)
        .toList();
  }

  /** Options whose years were not whole when stop was asked for. */
  List<String> cut() {
    return List.copyOf(cut);
  }
}
