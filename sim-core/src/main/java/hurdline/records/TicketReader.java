package hurdline.records;

import hurdline.plant.Delivery;
import hurdline.plant.Plant;
import hurdline.records.DateReader.Moment;
import hurdline.records.RecordsMap.FileWords;
import hurdline.unit.QuantityException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads scale tickets: each number once, masses in kilograms, moisture as a share. */
final class TicketReader {
  /** Pounds in a kilogram: a mass that is off by this has the other unit. */
  private static final double POUNDS = 2.205;

  private static final double ABOUT = 0.08;
  private static final double ROUNDING = 0.01;

  /** In the order in which they follow each other. */
  private static final List<String> TIMES =
      List.of(
          "load began",
          "load ended",
          "gate in",
          "weighed in",
          "unload began",
          "unload ended",
          "weighed out",
          "gate out");

  private final RecordTable table;
  private final FileWords words;
  private final CropNames crops;
  private final List<String> fields;
  private final WallClock clock;
  private final NameReader names;
  private final Map<String, NumberReader> numbers = new HashMap<>();
  private final Map<String, DateReader> dates = new HashMap<>();

  private record Load(Row row, String number, TicketRecord ticket) {}

  TicketReader(RecordTable table, RecordsMap map, Plant plant, WallClock clock) {
    this.table = table;
    this.words = map.words(RecordKind.TICKETS);
    this.clock = clock;
    names = new NameReader(map.products());
    crops = new CropNames(plant, names);
    fields =
        plant.deliveries().stream()
            .flatMap(delivery -> delivery.fields().stream())
            .map(Delivery.Field::name)
            .toList();
    for (String column : List.of("gross", "tare", "net", "bales", "moisture")) {
      numbers.put(column, NumberReader.of(table, column));
    }
    for (String column : TIMES) {
      dates.put(column, DateReader.of(table.column(column), words.dates()));
    }
  }

  List<TicketRecord> read() {
    List<Load> loads = new ArrayList<>();
    Set<String> doubtful = doubtful();
    Map<String, Integer> first = new HashMap<>();
    for (Row row : table.rows()) {
      String number = HeadReader.plain(table.text(row, "ticket"));
      if (number.isEmpty()) {
        row.setAside("no ticket number");
      } else if (doubtful.contains(number)) {
        row.setAside(
            "ticket " + NumberReader.shortened(table.text(row, "ticket")) + " has two weights");
      } else if (first.containsKey(number)) {
        row.setAside("same ticket as line " + first.get(number));
      } else {
        first.put(number, row.line());
        load(row).ifPresent(ticket -> loads.add(new Load(row, number, ticket)));
      }
    }
    return inOneUnit(loads);
  }

  /** Numbers under which there are different weights. */
  private Set<String> doubtful() {
    Map<String, String> weights = new HashMap<>();
    Set<String> doubtful = new HashSet<>();
    for (Row row : table.rows()) {
      String number = HeadReader.plain(table.text(row, "ticket"));
      String weight = table.text(row, "gross") + '|' + table.text(row, "net");
      String other = weights.putIfAbsent(number, weight);
      if (other != null && !other.equals(weight)) {
        doubtful.add(number);
      }
    }
    return doubtful;
  }

  private Optional<TicketRecord> load(Row row) {
    CropNames.Found crop = crops.of(table.text(row, "crop"), table.text(row, "form"));
    if (!crop.isOne()) {
      String word = NumberReader.shortened(table.text(row, "crop"));
      row.setAside(
          crop.said().isEmpty() ? "\"" + word + "\" is no crop of the plant" : crop.said());
      return Optional.empty();
    }
    row.note(crop.said());
    double netKg = netKg(row);
    if (!(netKg > 0)) {
      row.setAside(
          Double.isNaN(netKg) ? "no weight" : "net is not above 0: gross and tare changed round?");
      return Optional.empty();
    }
    String field = table.text(row, "field");
    Optional<NameReader.Read> known = names.read(field, fields);
    known.ifPresent(name -> row.note(name.how()));
    double inS = firstOf(row, "gate in", "weighed in");
    double outS = firstOf(row, "gate out", "weighed out");
    boolean backward = outS < inS;
    if (backward) {
      row.note("out before in: times not used");
    }
    return Optional.of(
        new TicketRecord(
            row.line(),
            crop.name(),
            known.map(NameReader.Read::name).orElse(field),
            backward ? Double.NaN : inS,
            backward ? Double.NaN : outS,
            netKg,
            number(row, "bales"),
            moisture(row),
            times(row)));
  }

  /** Of times that do not follow each other all are left out. */
  private TruckTimes times(Row row) {
    double[] atS = TIMES.stream().mapToDouble(column -> instant(row, column)).toArray();
    double beforeS = Double.NEGATIVE_INFINITY;
    boolean isRising = true;
    for (double at : atS) {
      if (!Double.isNaN(at)) {
        isRising &= at >= beforeS;
        beforeS = at;
      }
    }
    if (!isRising && TIMES.stream().anyMatch(column -> !isGate(column) && table.has(column))) {
      row.note("times do not follow each other: only those of the gate used");
    }
    String truck = HeadReader.plain(table.text(row, "truck"));
    return isRising
        ? new TruckTimes(truck, atS[0], atS[1], atS[2], atS[3], atS[4], atS[5], atS[6])
        : TruckTimes.none(truck);
  }

  private static boolean isGate(String column) {
    return column.startsWith("gate");
  }

  private double netKg(Row row) {
    String own = table.text(row, "unit");
    double net = number(row, "net");
    double gross = number(row, "gross");
    double tare = number(row, "tare");
    double kg =
        kgPer(row, own.isEmpty() ? table.unit("net", table.unit("gross", words.unit())) : own);
    if (!Double.isNaN(gross)
        && !Double.isNaN(tare)
        && !Double.isNaN(net)
        && Math.abs(gross - tare - net) > ROUNDING * Math.abs(net)) {
      row.note("gross less tare is not net: net not used");
      return (gross - tare) * kg;
    }
    return (Double.isNaN(net) ? gross - tare : net) * kg;
  }

  private static double kgPer(Row row, String unit) {
    try {
      return NumberReader.scale(unit, "kg");
    } catch (QuantityException e) {
      row.note("\"" + NumberReader.shortened(unit) + "\" is no unit of mass");
      return Double.NaN;
    }
  }

  private double number(Row row, String column) {
    OptionalDouble value = numbers.get(column).read(table.text(row, column));
    row.note(numbers.get(column).found());
    return value.orElse(Double.NaN);
  }

  private double moisture(Row row) {
    double told = number(row, "moisture");
    boolean isShare = table.unit("moisture", "%").equalsIgnoreCase("share");
    if (!isShare && told < 1 && told > 0) {
      row.note(String.format(Locale.ROOT, "moisture %.3f: %.1f %%? Not used", told, 100 * told));
      return Double.NaN;
    }
    double share = isShare ? told : told / 100;
    if (share < 0 || share >= 1) {
      row.note("moisture is not between 0 and 100 %: not used");
      return Double.NaN;
    }
    return share;
  }

  /** A scale house without a gate writes the weighing alone. */
  private double firstOf(Row row, String column, String other) {
    double atS = instant(row, column);
    return Double.isNaN(atS) ? instant(row, other) : atS;
  }

  private double instant(Row row, String column) {
    DateReader reader = dates.get(column);
    Optional<Moment> moment = reader.read(table.text(row, column));
    row.note(reader.found());
    Optional<LocalDate> other =
        dates.get("gate in").read(table.text(row, "gate in")).flatMap(Moment::date);
    Optional<LocalDate> day = moment.flatMap(Moment::date).or(() -> other);
    return moment.isPresent() && day.isPresent()
        ? clock.epochS(moment.get(), day.get())
        : Double.NaN;
  }

  /** Without those whose bale is off from the others' by what parts pounds from kilograms. */
  private List<TicketRecord> inOneUnit(List<Load> loads) {
    Map<String, List<Double>> bales = new HashMap<>();
    loads.stream()
        .filter(load -> load.ticket().bales() > 0)
        .forEach(
            load ->
                bales
                    .computeIfAbsent(load.ticket().crop(), c -> new ArrayList<>())
                    .add(load.ticket().netKg() / load.ticket().bales()));
    List<TicketRecord> tickets = new ArrayList<>();
    for (Load load : loads) {
      TicketRecord ticket = load.ticket();
      double off =
          ticket.bales() > 0
              ? ticket.netKg() / ticket.bales() / median(bales.get(ticket.crop()))
              : 1;
      if (isPounds(off) || isPounds(1 / off)) {
        load.row()
            .setAside(
                String.format(
                    Locale.ROOT,
                    "%.0f kg a bale is 2.2 times off from the others: kg for lb?",
                    ticket.netKg() / ticket.bales()));
        continue;
      }
      load.row().use(figures(ticket));
      tickets.add(ticket);
    }
    return tickets;
  }

  private static boolean isPounds(double off) {
    return off > POUNDS * (1 - ABOUT) && off < POUNDS * (1 + ABOUT);
  }

  private static String figures(TicketRecord ticket) {
    return "mass"
        + (ticket.bales() > 0 ? " bales" : "")
        + (Double.isNaN(ticket.moisture()) ? "" : " moisture")
        + (Double.isNaN(ticket.inS()) ? "" : " arrivals");
  }

  static double median(List<Double> values) {
    List<Double> rising = values.stream().sorted().toList();
    int n = rising.size();
    return n == 0 ? Double.NaN : (rising.get((n - 1) / 2) + rising.get(n / 2)) / 2;
  }
}
