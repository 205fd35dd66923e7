package hurdline.study;

import hurdline.answer.OrderRow;
import hurdline.measure.Measure;
import hurdline.plant.Plant;
import hurdline.plant.Product;
import hurdline.statistics.Interval;
import hurdline.statistics.Intervals;
import hurdline.statistics.Summary;
import hurdline.study.replicate.ReplicationResults;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What became of each order, over all replications. */
public final class OrderRows {
  private static final double TONNE_KG = 1000;

  private final String option;
  private final Plant plant;
  private final ReplicationResults figures;

  public OrderRows(String option, Plant plant, ReplicationResults figures) {
    this.option = option;
    this.plant = plant;
    this.figures = figures;
  }

  /** Product by product as in the file, by due date. */
  public List<OrderRow> rows() {
    List<OrderRow> rows = new ArrayList<>();
    for (Product product : plant.products()) {
      List<Product.Order> orders = product.ordersByDue();
      for (int i = 0; i < orders.size(); i++) {
        rows.add(row(product.name(), i + 1, orders.get(i)));
      }
    }
    return rows;
  }

  private OrderRow row(String product, int n, Product.Order order) {
    double[] metDay = series(Measure.PRODUCT_ORDER_MET, product, n);
    double[] lateDays = series(Measure.PRODUCT_ORDER_LATE_DAYS, product, n);
    Summary met = Summary.of(metDay);
    Summary late = Summary.of(lateDays);
    int onTime = 0;
    for (int year = 0; year < metDay.length; year++) {
      onTime += metDay[year] > 0 && lateDays[year] == 0 ? 1 : 0;
    }
    Interval chance = Intervals.chance95(onTime, metDay.length);
    return new OrderRow(
        option,
        product,
        n,
        order.massKg() / TONNE_KG,
        order.due(),
        metDay.length,
        (int) Arrays.stream(metDay).filter(day -> day > 0).count(),
        onTime,
        chance.low(),
        chance.high(),
        met.p50(),
        late.mean(),
        late.p95(),
        Summary.of(series(Measure.PRODUCT_ORDER_MISSING, product, n)).mean(),
        penalty(product, n));
  }

  private double penalty(String product, int n) {
    String measure = Measure.PRODUCT_ORDER_PENALTY.of(product, String.valueOf(n));
    return figures.has(measure) ? figures.mean(measure) : Double.NaN;
  }

  private double[] series(Measure measure, String product, int n) {
    return figures.series(measure.of(product, String.valueOf(n)));
  }
}
