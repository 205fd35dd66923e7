package hurdline.study.compare;

import hurdline.answer.CompareAnswer;
import hurdline.answer.CompareFact;
import hurdline.answer.CompareFact.PairedDifferences.Between;
import hurdline.answer.CompareFact.YearsOfLife.Next;
import hurdline.answer.Fact;
import hurdline.answer.LifeTerms;
import hurdline.plant.Calendar;
import hurdline.plant.Money;
import hurdline.plant.Plant;
import hurdline.study.option.OptionMargins;
import hurdline.study.option.ServiceLifeYears;
import hurdline.study.replicate.RunSettings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a comparison takes for granted beyond what a run does. */
final class CompareFacts {
  private final Plant plant;
  private final CompareAsk ask;
  private final RunSettings effort;
  private final List<CompareAnswer.Option> options;
  private final OptionMargins margins;

  CompareFacts(
      Plant plant,
      CompareAsk ask,
      RunSettings effort,
      List<CompareAnswer.Option> options,
      OptionMargins margins) {
    this.plant = plant;
    this.ask = ask;
    this.effort = effort;
    this.options = options;
    this.margins = margins;
  }

  List<Fact> facts() {
    List<Fact> facts = new ArrayList<>();
    facts.add(new CompareFact.PairedDifferences(Between.BASE_AND_OPTIONS, options.size()));
    withoutCost().ifPresent(facts::add);
    effort
        .until()
        .ifPresent(aim -> facts.add(new CompareFact.AimOfDifferences(aim.said(), aim.relative())));
    plant.money().ifPresent(money -> money(facts, money));
    return facts;
  }

  private Optional<Fact> withoutCost() {
    List<String> names =
        options.stream()
            .filter(option -> !option.isPurchase())
            .map(CompareAnswer.Option::name)
            .toList();
    return names.isEmpty()
        ? Optional.empty()
        : Optional.of(new CompareFact.ChangesWithoutCost(names));
  }

  private void money(List<Fact> facts, Money money) {
    LifeTerms terms = margins.terms();
    if (!terms.unrepeated().isEmpty()) {
      facts.add(new CompareFact.CalendarNotRepeated(terms.unrepeated()));
    }
    if (!margins.cut().isEmpty()) {
      facts.add(new CompareFact.LivesStopped(margins.cut()));
    }
    if (terms.lives() > 0) {
      ServiceLifeYears years = margins.years();
      facts.add(
          new CompareFact.YearsOfLife(
              terms.lives(),
              ask.lives().isPresent(),
              plant.calendar().days(),
              next(terms),
              years.inLives(),
              years.simulatedAnew()));
      facts.add(prices(money));
    }
  }

  private Next next(LifeTerms terms) {
    Calendar calendar = plant.calendar();
    if (terms.repeats().equals(Calendar.Repeats.YEARLY.word())) {
      return Next.EVERY_YEAR;
    }
    return calendar.isShorterThanAYear() || calendar.years().size() > 1
        ? Next.END_TO_END
        : Next.IS_A_YEAR;
  }

  private Fact prices(Money money) {
    Money.Growth growth = money.growth();
    return new CompareFact.MoneyOverLife(
        money.discountPerYr(),
        money.discount().isPresent(),
        growth.products(),
        growth.crops(),
        growth.wages(),
        growth.electricity(),
        ask.withinYr().orElse(Double.NaN));
  }
}
