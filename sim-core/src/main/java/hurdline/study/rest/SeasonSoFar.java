package hurdline.study.rest;

import hurdline.answer.SeasonRest.OpenOrder;
import hurdline.answer.SeasonRest.Stock;
import hurdline.plant.Crop;
import hurdline.plant.Plant;
import hurdline.plant.Product;
import hurdline.records.Records;
import hurdline.records.TicketRecord;
import hurdline.records.WallClock;
import hurdline.study.backtest.RecordedMasses;
import hurdline.study.backtest.YardCounts;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the records say of a season until the morning of a day. */
final class SeasonSoFar {
  private static final double TONNE_KG = 1000;

  private final Plant plant;
  private final Records before;
  private final LocalDate asOf;
  private final OpeningContents contents;
  private final RecordedMasses masses;
  private final WallClock clock;

  /**
   * @param plant over its whole calendar
   * @param before records of the days before
   */
  SeasonSoFar(Plant plant, Records before, LocalDate asOf, OpeningContents contents) {
    this.plant = plant;
    this.before = before;
    this.asOf = asOf;
    this.contents = contents;
    masses = new RecordedMasses(plant);
    clock = new WallClock(before.map().zone());
  }

  /** Bales of a crop that were fed, as counted, else by mass. */
  double fedBales(String crop) {
    return fed(crop, plant.calendar().from());
  }

  double madeKg(String product) {
    return madeKg(product, plant.calendar().from());
  }

  /** Less what is known to lie in its store. */
  double deliveredKg(Product product) {
    return Math.max(0, madeKg(product.name()) - contents.storedKg(plant, product));
  }

  /** From the morning of a date on. */
  double madeKg(String product, LocalDate since) {
    return before.made().stream()
        .filter(row -> !row.isFed() && row.what().equals(product))
        .filter(row -> !row.date().isBefore(since))
        .mapToDouble(masses::kg)
        .filter(kg -> !Double.isNaN(kg))
        .sum();
  }

  /** Of a crop; empty where nothing of it has been counted, has come or was fed. */
  Optional<Stock> stock(Crop crop) {
    Optional<Map.Entry<LocalDate, Double>> last = lastCount(crop.name());
    return last.map(
        count -> {
          double came = came(crop.name(), count.getKey());
          double fed = fed(crop.name(), count.getKey());
          double onHand = count.getValue() + came - fed;
          return new Stock(
              crop.name(),
              crop.modules() ? "modules" : "bales",
              count.getKey(),
              count.getValue(),
              came,
              fed,
              Math.max(0, Math.rint(onHand)));
        });
  }

  /** The file says what lies there on the calendar's first day. */
  private Optional<Map.Entry<LocalDate, Double>> lastCount(String crop) {
    Optional<Map.Entry<LocalDate, Double>> counted =
        Optional.ofNullable(YardCounts.of(before, plant, crop, LocalDate.MIN, asOf).lastEntry());
    boolean isFirstDay = asOf.equals(plant.calendar().from());
    int onHand = plant.yard().onHand().getOrDefault(crop, 0);
    boolean isUntouched = onHand == 0 && !hasCome(crop) && !(fedBales(crop) > 0);
    return counted.isEmpty() && (isFirstDay || isUntouched)
        ? Optional.of(Map.entry(plant.calendar().from(), (double) onHand))
        : counted;
  }

  private boolean hasCome(String crop) {
    return before.tickets().stream().anyMatch(ticket -> ticket.crop().equals(crop));
  }

  /**
   * Whether a line of the crop, or of the one whose form it is, has worked a shift since a date.
   */
  boolean hasWorked(String crop, LocalDate since) {
    return before.shifts().stream()
        .filter(shift -> !shift.date().isBefore(since))
        .flatMap(shift -> shift.lines().stream())
        .anyMatch(
            name ->
                plant.lines().stream()
                    .anyMatch(
                        line ->
                            line.name().equals(name) && line.crop().equals(plant.baseOf(crop))));
  }

  /** Whether the records say what was fed of a crop. */
  boolean knowsFed(String crop) {
    return before.made().stream().anyMatch(row -> row.isFed() && row.what().equals(crop));
  }

  private double came(String crop, LocalDate since) {
    double fromS = clock.epochS(since.atStartOfDay());
    return before.tickets().stream()
        .filter(ticket -> ticket.crop().equals(crop) && ticket.inS() >= fromS)
        .mapToDouble(this::bales)
        .sum();
  }

  private double bales(TicketRecord ticket) {
    return Double.isNaN(ticket.bales())
        ? masses.bales(ticket.crop(), ticket.netKg())
        : ticket.bales();
  }

  private double fed(String crop, LocalDate since) {
    return before.made().stream()
        .filter(row -> row.isFed() && row.what().equals(crop) && !row.date().isBefore(since))
        .mapToDouble(masses::bales)
        .filter(bales -> !Double.isNaN(bales))
        .sum();
  }

  /** What is open of each order, those that come due first filled first. */
  List<OpenOrder> orders() {
    List<OpenOrder> all = new ArrayList<>();
    for (Product product : plant.products()) {
      double leftKg = deliveredKg(product);
      for (Product.Order order : product.ordersByDue()) {
        double madeKg = Math.min(leftKg, order.massKg());
        leftKg -= madeKg;
        all.add(
            new OpenOrder(
                product.name(),
                order.due(),
                order.massKg() / TONNE_KG,
                madeKg / TONNE_KG,
                (order.massKg() - madeKg) / TONNE_KG));
      }
    }
    return all;
  }

  /** What each field has brought by the tickets; under an empty name what names none. */
  Map<String, Double> broughtKg(Crop crop) {
    Map<String, Double> kg = new LinkedHashMap<>();
    tickets(crop).forEach(ticket -> kg.merge(ticket.field(), massKg(ticket, crop), Double::sum));
    return kg;
  }

  /** The last date on which a load came from a field. */
  Optional<LocalDate> lastLoad(Crop crop, String field) {
    return tickets(crop).stream()
        .filter(ticket -> ticket.field().equals(field))
        .map(ticket -> clock.wall(ticket.inS()).toLocalDate())
        .max(LocalDate::compareTo);
  }

  private List<TicketRecord> tickets(Crop crop) {
    double fromS = clock.epochS(plant.calendar().from().atStartOfDay());
    return before.tickets().stream()
        .filter(ticket -> ticket.crop().equals(crop.name()) && ticket.inS() >= fromS)
        .toList();
  }

  private static double massKg(TicketRecord ticket, Crop crop) {
    return Double.isNaN(ticket.netKg())
        ? ticket.bales() * crop.bale().massKg().mean()
        : ticket.netKg();
  }
}
