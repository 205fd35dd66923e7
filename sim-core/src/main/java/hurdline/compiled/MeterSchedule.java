package hurdline.compiled;

import hurdline.plant.BaseLoad;
import hurdline.plant.ClockHours;
import hurdline.plant.Tariff;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/**
 * What the electricity meter goes by, over the horizon: spans of time in which the building's base
 * load, the price of energy and the demand charges are the same. All begin and end on full
 * quarter-hours; a plant without tariff periods and base loads has one span.
 *
 * <p>Price 0 is the tariff's own, price 1 + k that of its k-th period. Window 0 holds all hours,
 * window 1 + j the hours of the j-th period with a demand charge.
 */
public final class MeterSchedule {
  private static final double QUARTER_S = 900;
  private static final double HOUR_S = 3600;
  private static final int DAY_S = 86_400;

  private final List<Tariff.Period> periods;
  private final List<Tariff.Period> charged;
  private final List<BaseLoad> loads;
  private final double[] loadS;

  /** [span] end. */
  public final double[] toS;

  /** [span] base load. */
  public final double[] baseW;

  /** [span] price of energy. */
  public final int[] price;

  /** [span] windows that hold. */
  public final int[][] windows;

  private MeterSchedule(List<Tariff.Period> periods, List<BaseLoad> loads, List<Span> spans) {
    this.periods = periods;
    this.loads = loads;
    charged = charged(periods);
    toS = spans.stream().mapToDouble(Span::toS).toArray();
    baseW =
        spans.stream()
            .mapToDouble(span -> span.loads().stream().mapToDouble(BaseLoad::powerW).sum())
            .toArray();
    price = spans.stream().mapToInt(Span::price).toArray();
    windows = spans.stream().map(Span::windows).toArray(int[][]::new);
    loadS = new double[loads.size()];
    double fromS = 0;
    for (Span span : spans) {
      for (BaseLoad load : span.loads()) {
        loadS[loads.indexOf(load)] += span.toS() - fromS;
      }
      fromS = span.toS();
    }
  }

  /** One price and no base load. */
  public static MeterSchedule plain() {
    List<Span> whole = List.of(new Span(Double.POSITIVE_INFINITY, 0, List.of(), new int[] {0}));
    return new MeterSchedule(List.of(), List.of(), whole);
  }

  static MeterSchedule of(List<Tariff.Period> periods, List<BaseLoad> loads, Horizon horizon) {
    if (periods.isEmpty() && loads.isEmpty()) {
      return plain();
    }
    List<Span> spans = new ArrayList<>();
    int[] borders = borders(periods, loads);
    for (int day = 0; day < horizon.days(); day++) {
      for (int k = 0; k + 1 < borders.length; k++) {
        Span span =
            span(
                periods,
                loads,
                horizon.date(day),
                borders[k],
                day * Horizon.DAY_S + borders[k + 1]);
        if (!spans.isEmpty() && spans.get(spans.size() - 1).isLike(span)) {
          spans.remove(spans.size() - 1);
        }
        spans.add(span);
      }
    }
    return new MeterSchedule(periods, loads, spans);
  }

  /** Instants of any day at which something may change, from its midnight to the next. */
  private static int[] borders(List<Tariff.Period> periods, List<BaseLoad> loads) {
    TreeSet<Integer> borders = new TreeSet<>(List.of(0, DAY_S));
    for (Tariff.Period period : periods) {
      add(borders, period.hours());
    }
    for (BaseLoad load : loads) {
      add(borders, load.hours());
    }
    return borders.stream().mapToInt(atS -> atS).toArray();
  }

  private static void add(TreeSet<Integer> borders, ClockHours hours) {
    borders.add(hours.fromS());
    borders.add(hours.toS());
  }

  private static Span span(
      List<Tariff.Period> periods, List<BaseLoad> loads, LocalDate date, int atS, double toS) {
    int price = 0;
    for (int k = periods.size() - 1; k >= 0; k--) {
      if (periods.get(k).energyPerJ().isPresent() && periods.get(k).hours().hold(date, atS)) {
        price = k + 1;
      }
    }
    List<Integer> windows = new ArrayList<>(List.of(0));
    List<Tariff.Period> charged = charged(periods);
    for (int j = 0; j < charged.size(); j++) {
      if (charged.get(j).hours().hold(date, atS)) {
        windows.add(j + 1);
      }
    }
    return new Span(
        toS,
        price,
        loads.stream().filter(load -> load.hours().hold(date, atS)).toList(),
        windows.stream().mapToInt(window -> window).toArray());
  }

  private static List<Tariff.Period> charged(List<Tariff.Period> periods) {
    return periods.stream().filter(period -> period.demandPerWMonth().isPresent()).toList();
  }

  private record Span(double toS, int price, List<BaseLoad> loads, int[] windows) {
    boolean isLike(Span other) {
      return price == other.price
          && loads.equals(other.loads)
          && Arrays.equals(windows, other.windows);
    }
  }

  /** Length of what a meter takes the mean of. */
  public static double quarterS() {
    return QUARTER_S;
  }

  /** How many prices of energy there are. */
  public int prices() {
    return periods.size() + 1;
  }

  /** How many windows of demand there are. */
  public int windowCount() {
    return charged.size() + 1;
  }

  public List<Tariff.Period> periods() {
    return periods;
  }

  /** Periods with a demand charge, in the order of their windows. */
  public List<Tariff.Period> charged() {
    return charged;
  }

  public List<BaseLoad> baseLoads() {
    return loads;
  }

  /** Energy that a base load draws over the horizon, watt hours. */
  public double baseWh(int load) {
    return loads.get(load).powerW() * loadS[load] / HOUR_S;
  }
}
