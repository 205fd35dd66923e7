package hurdline.fit;

import hurdline.fit.AmountFit.AmountUnit;
import hurdline.fit.LawChoice.Chosen;
import hurdline.fit.Observations.Seen;
import hurdline.plant.Delivery;
import hurdline.plant.Delivery.DayHours;
import hurdline.plant.Plant;
import hurdline.random.RandomStreams;
import hurdline.records.Records;
import hurdline.records.Spans;
import hurdline.records.Spans.Span;
import hurdline.records.TicketRecord;
import hurdline.records.WallClock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Times between loads of a stream, on the stream's own receiving hours as the engine counts them.
 */
final class ArrivalFits {
  private static final double MINUTE_S = 60;

  private final Plant plant;
  private final Records records;
  private final RandomStreams streams;

  ArrivalFits(Plant plant, Records records, RandomStreams streams) {
    this.plant = plant;
    this.records = records;
    this.streams = streams;
  }

  List<AmountFit> all() {
    return plant.deliveries().stream().flatMap(delivery -> fit(delivery).stream()).toList();
  }

  private Optional<AmountFit> fit(Delivery delivery) {
    double[] inS =
        records.tickets().stream()
            .filter(ticket -> ticket.crop().equals(delivery.crop()))
            .mapToDouble(TicketRecord::inS)
            .filter(s -> !Double.isNaN(s))
            .sorted()
            .toArray();
    if (delivery.loads().isEmpty() || inS.length < 2) {
      return Optional.empty();
    }
    Count count =
        new Count.Hours(
            receiving(records, delivery.loads().get().hours(), inS[0], inS[inS.length - 1]));
    List<Seen> seen = new ArrayList<>();
    for (int i = 1; i < inS.length; i++) {
      double between = count.untilInstant(inS[i]) - count.untilInstant(inS[i - 1]);
      seen.add(between < MINUTE_S ? new Seen(0, MINUTE_S, 0) : Seen.whole(between, 0));
    }
    String key = "deliveries." + delivery.crop() + ".loads.every";
    Observations all = Observations.of(seen);
    Chosen chosen =
        new LawChoice(all, GoodnessOfFit.amounts(all, 0), 0, streams.of(1, key)).every();
    List<String> notes = new ArrayList<>(chosen.notes());
    double[] whole = seen.stream().mapToDouble(Seen::high).toArray();
    Clusters.of(whole, streams.of(1, key + " clusters"))
        .filter(Clusters::isSignificant)
        .ifPresent(
            found ->
                notes.add("loads come in clusters: drawn one by one they will come too evenly"));
    return Optional.of(
        new AmountFit(
            key,
            AmountUnit.SECONDS,
            chosen.taken(),
            all,
            chosen.tried(),
            chosen.taken().meanErrorShare(),
            notes));
  }

  /** The receiving hours of the days from one instant to another. */
  static Spans receiving(Records records, DayHours hours, double fromS, double toS) {
    WallClock clock = new WallClock(records.map().zone());
    List<Span> spans = new ArrayList<>();
    LocalDate last = clock.wall(toS).toLocalDate();
    for (LocalDate day = clock.wall(fromS).toLocalDate();
        !day.isAfter(last);
        day = day.plusDays(1)) {
      if (hours.days().contains(day.getDayOfWeek())) {
        double midnightS = clock.epochS(day.atStartOfDay());
        spans.add(new Span(midnightS + hours.fromS(), midnightS + hours.toS()));
      }
    }
    return Spans.of(spans);
  }
}
