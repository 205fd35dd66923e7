package hurdline.fit;

import hurdline.plant.Delivery;
import hurdline.plant.Plant;
import hurdline.plant.Resource;
import hurdline.records.Records;
import hurdline.records.Spans;
import hurdline.records.TicketRecord;
import hurdline.records.TruckTimes;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;

/**
 * How long a truck stands on the scale. A ticket says when its weight was printed, not when the
 * truck drove on: on one scale that was when it came, or when the one before it was done, whichever
 * is later. So a wait for the scale is not in it.
 */
final class ScaleFits {
  private final Plant plant;
  private final Records records;

  /**
   * @param fromS when it drove on
   * @param toS when its weight was printed
   */
  record Weighing(int line, double fromS, double toS) {}

  ScaleFits(Plant plant, Records records) {
    this.plant = plant;
    this.records = records;
  }

  /** Whether the records know which truck was on the scale before another. */
  boolean isOneScale(Delivery delivery) {
    List<String> needs = delivery.weigh().orElseThrow().needs();
    return needs.isEmpty()
        || plant.resources().stream()
            .filter(of -> needs.contains(of.name()))
            .mapToInt(Resource::count)
            .allMatch(count -> count == 1);
  }

  /** Weighings in, and out where unloading ended by the ticket, within the receiving hours. */
  List<Weighing> of(Delivery delivery) {
    List<TicketRecord> tickets =
        records.tickets().stream().filter(one -> one.crop().equals(delivery.crop())).toList();
    NavigableSet<Double> printed = printed(delivery);
    List<Weighing> all = new ArrayList<>();
    for (TicketRecord one : tickets) {
      TruckTimes times = one.times();
      weighing(one.line(), times.cameS(), times.weighedInS(), printed).ifPresent(all::add);
      weighing(one.line(), times.unloadEndedS(), times.weighedOutS(), printed).ifPresent(all::add);
    }
    if (all.isEmpty()) {
      return all;
    }
    Spans open =
        ArrivalFits.receiving(
            records,
            delivery.hours(),
            all.stream().mapToDouble(Weighing::fromS).min().orElseThrow(),
            all.stream().mapToDouble(Weighing::toS).max().orElseThrow());
    return all.stream()
        .filter(of -> open.betweenS(of.fromS(), of.toS()) >= of.toS() - of.fromS())
        .filter(of -> open.holds(of.fromS()))
        .toList();
  }

  private static Optional<Weighing> weighing(
      int line, double readyS, double printedS, NavigableSet<Double> printed) {
    if (!(printedS >= readyS)) {
      return Optional.empty();
    }
    Double before = printed.lower(printedS);
    double fromS = before == null ? readyS : Math.max(readyS, before);
    return Optional.of(new Weighing(line, fromS, printedS));
  }

  /** When the scale was done with a truck; nothing where none has to wait for another. */
  private NavigableSet<Double> printed(Delivery delivery) {
    List<String> needs = delivery.weigh().orElseThrow().needs();
    NavigableSet<Double> printed = new TreeSet<>();
    for (Delivery other : plant.deliveries()) {
      boolean isIts =
          other.weigh().filter(job -> job.needs().stream().anyMatch(needs::contains)).isPresent();
      records.tickets().stream()
          .filter(one -> isIts && one.crop().equals(other.crop()))
          .forEach(
              one -> {
                double outS = one.times().weighedOutS();
                printed.add(one.times().weighedInS());
                printed.add(Double.isNaN(outS) ? one.outS() : outS);
              });
    }
    printed.remove(Double.NaN);
    return printed;
  }
}
