package hurdline.fit;

import hurdline.plant.Crop;
import hurdline.plant.Plant;
import hurdline.plant.Yard;
import hurdline.records.DayRecord;
import hurdline.records.MadeRecord;
import hurdline.records.Records;
import hurdline.records.ShiftRecord;
import hurdline.records.TicketRecord;
import hurdline.records.WallClock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;

/**
 * What bales had left of the mass at which they were weighed in when they were fed. Stock, loads
 * and what was fed are booked in the order of time, into places as the plant fills them and out of
 * them as it picks; a bale that has lain for t in a place of decay rate l has exp(−l·t) of its mass
 * (FORMAT.md, Yard).
 *
 * <p>The stock counts as weighed on the first day, as in the simulation. Which bale is the driest
 * no record says: there the oldest goes first. Bales that were fed and are in no record of stock or
 * loads have lost nothing.
 */
final class YardLedger {
  private static final double HALF_DAY_S = 43_200;

  /** A count in these days tells the stock with which the records begin. */
  private static final int FIRST_DAYS = 7;

  private final Yard yard;
  private final Map<String, Deque<Batch>> lying = new HashMap<>(); // by crop, oldest first
  private final double[] free;
  private final Map<String, Double> kept = new HashMap<>(); // by crop and shift

  /** Bales of one load in one place. */
  private static final class Batch {
    private final int place;
    private final double sinceS;
    private double bales;

    private Batch(int place, double sinceS, double bales) {
      this.place = place;
      this.sinceS = sinceS;
      this.bales = bales;
    }
  }

  /**
   * @param shift by {@link #key} where bales were fed; empty where they came
   */
  private record Booking(double atS, String crop, double bales, String shift) {}

  /**
   * @param baleKg mean mass at which a bale of each crop was weighed in
   */
  YardLedger(Plant plant, Records records, Map<String, Double> baleKg) {
    yard = plant.yard();
    free = yard.places().stream().mapToDouble(Yard.Place::holds).toArray();
    List<Booking> bookings = new ArrayList<>();
    for (Crop crop : plant.crops()) {
      opening(plant, records, crop.name(), bookings);
    }
    WallClock clock = new WallClock(records.map().zone());
    came(records, baleKg, bookings);
    fed(records, baleKg, clock, bookings);
    bookings.sort(Comparator.comparingDouble(Booking::atS));
    bookings.forEach(this::book);
  }

  static String key(String crop, LocalDate date, String shift) {
    return crop + "|" + date + "|" + shift;
  }

  /** Mean share of the mass as weighed in that bales fed in a shift had left. */
  double kept(String crop, LocalDate date, String shift) {
    return kept.getOrDefault(key(crop, date, shift), 1.0);
  }

  /** What was first counted in the first week, else what the plant file has on hand. */
  private void opening(Plant plant, Records records, String crop, List<Booking> bookings) {
    LocalDate first = records.first().orElse(plant.calendar().from());
    LocalDate counted = null;
    double bales = yard.onHand().getOrDefault(crop, 0);
    for (DayRecord row : records.counted(plant, crop).toList()) {
      boolean isEarly = Math.abs(ChronoUnit.DAYS.between(first, row.date())) < FIRST_DAYS;
      if (isEarly && (counted == null || !row.date().isAfter(counted))) {
        bales = row.date().equals(counted) ? bales + row.value() : row.value();
        counted = row.date();
      }
    }
    double atS = new WallClock(records.map().zone()).epochS(first.atStartOfDay());
    bookings.add(new Booking(atS, crop, bales, ""));
  }

  private static void came(Records records, Map<String, Double> baleKg, List<Booking> bookings) {
    for (TicketRecord ticket : records.tickets()) {
      double bales =
          Double.isNaN(ticket.bales())
              ? ticket.netKg() / baleKg.get(ticket.crop())
              : ticket.bales();
      if (!Double.isNaN(ticket.inS())) {
        bookings.add(new Booking(ticket.inS(), ticket.crop(), bales, ""));
      }
    }
  }

  private static void fed(
      Records records, Map<String, Double> baleKg, WallClock clock, List<Booking> bookings) {
    Map<String, Double> middles = new HashMap<>();
    for (ShiftRecord shift : records.shifts()) {
      middles.put(shift.date() + "|" + shift.shift(), (shift.fromS() + shift.toS()) / 2);
    }
    for (MadeRecord row : records.made()) {
      if (row.isFed()) {
        double bales =
            Double.isNaN(row.count()) ? row.massKg() / baleKg.get(row.what()) : row.count();
        double noonS = clock.epochS(row.date().atStartOfDay()) + HALF_DAY_S;
        double atS = middles.getOrDefault(row.date() + "|" + row.shift(), noonS);
        bookings.add(new Booking(atS, row.what(), bales, key(row.what(), row.date(), row.shift())));
      }
    }
  }

  private void book(Booking booking) {
    Deque<Batch> of = lying.computeIfAbsent(booking.crop(), crop -> new ArrayDeque<>());
    if (booking.shift().isEmpty()) {
      lay(booking, of);
    } else if (booking.bales() > 0) {
      kept.put(booking.shift(), feed(booking, of));
    }
  }

  /** Into the places in their order; what finds no room lies in the last that takes the crop. */
  private void lay(Booking booking, Deque<Batch> of) {
    double left = booking.bales();
    int last = -1;
    for (int place = 0; place < free.length && left > 0; place++) {
      if (yard.places().get(place).takes(booking.crop())) {
        double laid = Math.min(left, Math.max(0, free[place]));
        if (laid > 0) {
          add(of, place, booking.atS(), laid);
        }
        left -= laid;
        last = place;
      }
    }
    if (left > 0 && last >= 0) {
      add(of, last, booking.atS(), left);
    }
  }

  private void add(Deque<Batch> of, int place, double atS, double bales) {
    of.addLast(new Batch(place, atS, bales));
    free[place] -= bales;
  }

  /** Takes bales out and tells what share of their mass they had left. */
  private double feed(Booking booking, Deque<Batch> of) {
    double left = booking.bales();
    double keptBales = 0;
    for (Batch batch : picked(of)) {
      double taken = Math.min(left, batch.bales);
      if (!(taken > 0)) {
        break;
      }
      double lossPerS = yard.places().get(batch.place).decayPerS();
      keptBales += taken * Math.exp(-lossPerS * (booking.atS() - batch.sinceS));
      batch.bales -= taken;
      free[batch.place] += taken;
      left -= taken;
    }
    of.removeIf(batch -> !(batch.bales > 0));
    return (keptBales + left) / booking.bales();
  }

  private List<Batch> picked(Deque<Batch> of) {
    List<Batch> order = new ArrayList<>();
    boolean isNewest = yard.pick() instanceof Yard.NewestFirst;
    Iterator<Batch> all = isNewest ? of.descendingIterator() : of.iterator();
    all.forEachRemaining(order::add);
    if (yard.pick() instanceof Yard.ByPlace by) {
      order.sort(Comparator.comparingInt(batch -> rank(by, batch.place)));
    }
    return order;
  }

  /** Places that are not named come last, in the file's order. */
  private int rank(Yard.ByPlace by, int place) {
    int named = by.places().indexOf(yard.places().get(place).name());
    return named < 0 ? by.places().size() + place : named;
  }
}
