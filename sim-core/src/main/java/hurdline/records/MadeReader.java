package hurdline.records;

import hurdline.plant.Packaging;
import hurdline.plant.Plant;
import hurdline.plant.Product;
import hurdline.records.DateReader.Moment;
import hurdline.records.Spans.Span;
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

/** Reads what was fed and made, shift by shift. */
final class MadeReader {
  /** A package that is off by more has a wrong count or mass. */
  private static final double OFF = 3;

  private static final double LONGEST_S = 12 * 3600;

  private final RecordTable table;
  private final String fileUnit;
  private final NameReader names;
  private final CropNames crops;
  private final List<String> products;
  private final Map<String, Double> packageKg = new HashMap<>();
  private final Set<String> several = new HashSet<>(); // packed in several ways
  private final DateReader dates;
  private final DateReader from;
  private final DateReader to;
  private final WallClock clock;
  private final NumberReader counts;
  private final NumberReader masses;
  private final Map<String, Integer> lines = new HashMap<>();
  private final Set<LocalDate> worked = new HashSet<>();

  MadeReader(
      RecordTable table, RecordsMap map, Plant plant, WallClock clock, List<ShiftRecord> shifts) {
    this.clock = clock;
    from = DateReader.of(table.column("from"), map.words(RecordKind.MADE).dates());
    to = DateReader.of(table.column("to"), map.words(RecordKind.MADE).dates());
    shifts.forEach(shift -> worked.add(shift.date()));
    this.table = table;
    fileUnit = map.words(RecordKind.MADE).unit();
    names = new NameReader(map.products());
    crops = new CropNames(plant, names);
    products = plant.products().stream().map(Product::name).toList();
    for (Product product : plant.products()) {
      List<Packaging> kinds = plant.packagings(product);
      if (kinds.size() == 1) {
        packageKg.put(product.name(), kinds.get(0).massKg());
      } else if (kinds.size() > 1) {
        several.add(product.name());
      }
    }
    dates = DateReader.of(table.column("date"), map.words(RecordKind.MADE).dates());
    counts = NumberReader.of(table, "count");
    masses = NumberReader.of(table, "mass");
  }

  List<MadeRecord> read() {
    List<MadeRecord> made = new ArrayList<>();
    table.rows().forEach(row -> one(row).ifPresent(made::add));
    return made;
  }

  private Optional<MadeRecord> one(Row row) {
    Optional<Moment> date = dates.read(table.text(row, "date"));
    if (date.isEmpty() || date.get().date().isEmpty()) {
      row.setAside(dates.found().isEmpty() ? "no date" : dates.found());
      return Optional.empty();
    }
    String what = table.text(row, "what");
    boolean fed = what.toLowerCase(Locale.ROOT).matches(".*\\bfed\\b.*");
    CropNames.Found name = fed ? crop(row, what) : product(what);
    if (!name.isOne()) {
      row.setAside(
          !name.said().isEmpty()
              ? name.said()
              : "\""
                  + NumberReader.shortened(what)
                  + "\" is no product and no crop that was fed; say it under called: {products: …}");
      return Optional.empty();
    }
    row.note(name.said());
    double count = number(row, counts, "count");
    double massKg = massKg(row);
    Integer first =
        lines.putIfAbsent(
            date.get().date().get()
                + "|"
                + table.text(row, "shift")
                + "|"
                + what
                + "|"
                + table.text(row, "form")
                + "|"
                + table.text(row, "from"),
            row.line());
    if (first != null || Double.isNaN(count) && Double.isNaN(massKg)) {
      row.setAside(
          first != null ? "same date, shift and name as line " + first : "neither count nor mass");
      return Optional.empty();
    }
    if (Double.isNaN(massKg) && several.contains(name.name())) {
      row.setAside("a count of several kinds of packages says no mass; write the mass");
      return Optional.empty();
    }
    double off = massKg / count / packageKg.getOrDefault(name.name(), Double.NaN);
    boolean wrong = count > 0 && (off > OFF || off < 1 / OFF);
    if (wrong) {
      row.note(
          String.format(
              Locale.ROOT, "%.0f packages of %.1f kg: count not used", count, massKg / count));
    }
    LocalDate day = date.get().date().get();
    if (fed && count > 0 && !worked.isEmpty() && !worked.contains(day)) {
      row.note(
          String.format(
              Locale.ROOT, "no shift on %s, yet %.0f were fed: they do not count", day, count));
    }
    row.use(
        fed
            ? "fed"
            : wrong || Double.isNaN(count)
                ? "mass"
                : Double.isNaN(massKg) ? "packages" : "mass packages");
    return Optional.of(
        new MadeRecord(
            row.line(),
            date.get().date().get(),
            table.text(row, "shift"),
            name.name(),
            fed,
            when(row, day),
            wrong ? Double.NaN : count,
            massKg));
  }

  /** Of a run over midnight the end is on the next day. */
  private Optional<Span> when(Row row, LocalDate day) {
    Optional<Moment> began = from.read(table.text(row, "from"));
    Optional<Moment> ended = to.read(table.text(row, "to"));
    if (began.isEmpty() || ended.isEmpty()) {
      return Optional.empty();
    }
    LocalDate first = began.get().date().orElse(day);
    double fromS = clock.epochS(began.get(), first);
    double toS = clock.epochS(ended.get(), ended.get().date().orElse(first));
    if (toS < fromS && ended.get().date().isEmpty()) {
      toS = clock.epochS(ended.get(), first.plusDays(1));
    }
    if (!(toS > fromS) || toS - fromS > LONGEST_S) {
      row.note("from and to are no part of a shift: not used");
      return Optional.empty();
    }
    return Optional.of(new Span(fromS, toS));
  }

  private CropNames.Found crop(Row row, String what) {
    return crops.of(what.replaceAll("(?i)\\bfed\\b", "").strip(), table.text(row, "form"));
  }

  private CropNames.Found product(String what) {
    return names
        .read(what, products)
        .map(read -> new CropNames.Found(read.name(), read.how()))
        .orElse(new CropNames.Found("", ""));
  }

  private double massKg(Row row) {
    double mass = number(row, masses, "mass");
    if (Double.isNaN(mass)) {
      return mass;
    }
    String own = !table.text(row, "unit").isEmpty() ? table.text(row, "unit") : masses.unit();
    String unit = own.isEmpty() ? table.unit("mass", fileUnit) : own;
    try {
      return mass * NumberReader.scale(unit, "kg");
    } catch (QuantityException e) {
      row.note("\"" + NumberReader.shortened(unit) + "\" is no unit of mass: mass not used");
      return Double.NaN;
    }
  }

  private double number(Row row, NumberReader reader, String column) {
    OptionalDouble value = reader.read(table.text(row, column));
    row.note(reader.found());
    return value.orElse(Double.NaN);
  }
}
