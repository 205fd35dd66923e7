package hurdline.study;

import hurdline.answer.CompareAnswer;
import hurdline.estimate.Summary;
import hurdline.plant.Money;
import hurdline.worth.Cash;
import java.util.List;
import java.util.stream.IntStream;

/** What an option pays and brings in over a life, once it is known which years it has. */
final class LifeCash {
  private final CompareAnswer.Option option;
  private final Money money;
  private final MarginYears margin;
  private final int years;

  LifeCash(CompareAnswer.Option option, Money money, MarginYears margin) {
    this.option = option;
    this.money = money;
    this.margin = margin;
    years = (int) Math.ceil(option.lifeYr());
  }

  /** Which year, from 0, a year of a life is. */
  interface Drawn {
    /** @param ofLife from 1 */
    int year(int ofLife);
  }

  /** Years of a life, the last perhaps not whole. */
  int years() {
    return years;
  }

  /** Lives whose years follow each other. */
  List<Cash> chains() {
    return IntStream.range(0, margin.count() / years)
        .mapToObj(chain -> of(year -> chain * years + year - 1))
        .toList();
  }

  /** Margins at the end of each year; a life that ends within a year has that part of its last. */
  Cash of(Drawn drawn) {
    double[] at = new double[years + 1];
    double[] amounts = new double[years + 1];
    amounts[0] = -option.cost();
    for (int year = 1; year <= years; year++) {
      at[year] = Math.min(year, option.lifeYr());
      amounts[year] =
          (at[year] - at[year - 1]) * margin.added(drawn.year(year), year, money.growth());
    }
    amounts[years] += option.salvage();
    return new Cash(at, amounts);
  }

  /**
   * The net present value. Where years stand alone over lives each of which has one replication for all its
   * years: they are independent, and their mean is that of lives whose years differ. Where they follow each
   * other over the chains, which share no year.
   */
  Summary value() {
    return Summary.of(values());
  }

  /** The same, replication by replication or chain by chain. */
  double[] values() {
    if (margin.isFollowing()) {
      return chains().stream()
          .mapToDouble(life -> life.netPresentValue(money.discountPerYr()))
          .toArray();
    }
    return IntStream.range(0, margin.count())
        .mapToDouble(replication -> of(year -> replication).netPresentValue(money.discountPerYr()))
        .toArray();
  }
}
