package hurdline.records;

import hurdline.plant.Crop;
import hurdline.plant.Machine;
import hurdline.plant.Plant;
import hurdline.plant.Product;
import hurdline.plant.Storage;
import hurdline.plant.Store;
import hurdline.plant.Yard;
import hurdline.unit.QuantityException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads yard.csv: rows of a bin or of a store of finished goods, and of all others which crop in
 * which place they count.
 */
final class YardReader {
  private final RecordTable table;
  private final Plant plant;
  private final NameReader names;
  private final NameReader products;
  private final List<String> places = new ArrayList<>();
  private final Map<String, Machine.Bin> bins = new HashMap<>();
  private final List<String> stores;
  private final DateReader dates;
  private final NumberReader counts;
  private final NumberReader levels;
  private final Map<String, Integer> lines = new HashMap<>();

  YardReader(RecordTable table, RecordsMap map, Plant plant) {
    this.table = table;
    this.plant = plant;
    names = new NameReader(map.machines());
    products = new NameReader(map.products());
    stores = plant.stores().stream().map(Store::name).toList();
    for (Machine machine : plant.machines()) {
      if (machine instanceof Machine.Bin bin) {
        bins.put(bin.name(), bin);
      }
    }
    plant.yard().places().stream().map(Yard.Place::name).forEach(places::add);
    places.addAll(bins.keySet().stream().sorted().toList());
    places.addAll(stores);
    dates = DateReader.of(table.column("date"), map.words(RecordKind.YARD).dates());
    counts = NumberReader.of(table, "count");
    levels = NumberReader.of(table, "level");
  }

  /** The bin or store that a row is of; empty for one of the yard. */
  private Optional<NameReader.Read> place(Row row) {
    return names
        .read(table.text(row, "place"), places)
        .filter(read -> bins.containsKey(read.name()) || stores.contains(read.name()));
  }

  /**
   * Place and crop that a row of the yard names; empty for any other row. To be asked after {@link
   * #read}.
   */
  Optional<String> counted(Row row) {
    String said = table.text(row, "crop");
    if (row.isSettled()) {
      return Optional.empty();
    }
    List<String> crops = plant.crops().stream().map(Crop::name).toList();
    Optional<NameReader.Read> crop =
        said.isEmpty() ? Optional.of(new NameReader.Read("", "")) : products.read(said, crops);
    if (crop.isEmpty()) {
      row.setAside("\"" + NumberReader.shortened(said) + "\" is no crop of the plant");
    } else {
      row.note(crop.get().how());
    }
    return crop.map(read -> (table.text(row, "place") + " " + read.name()).strip());
  }

  /** Whether a count of the yard is of a crop: by its name, or without any by its place. */
  static boolean isOf(DayRecord row, Plant plant, String crop) {
    boolean isNamed = plant.crops().stream().anyMatch(of -> names(row, of.name()));
    return isNamed ? names(row, crop) : crop.equals(ofPlace(row, plant));
  }

  private static String ofPlace(DayRecord row, Plant plant) {
    List<String> crops = plant.crops().stream().map(Crop::name).toList();
    return plant.yard().places().stream()
        .filter(place -> names(row, place.name()))
        .map(place -> crops.stream().filter(place::takes).toList())
        .filter(taken -> taken.size() == 1)
        .map(taken -> taken.get(0))
        .findFirst()
        .orElse(crops.get(0));
  }

  private static boolean names(DayRecord row, String word) {
    return (" " + row.what() + " ").contains(" " + word + " ");
  }

  List<ContentRecord> read() {
    List<ContentRecord> found = new ArrayList<>();
    for (Row row : table.rows()) {
      Optional<NameReader.Read> place = place(row);
      place.flatMap(of -> one(row, of)).ifPresent(found::add);
      boolean isLevel = !table.text(row, "level").isEmpty() && table.text(row, "count").isEmpty();
      if (place.isEmpty() && isLevel) {
        row.setAside(
            "\""
                + NumberReader.shortened(table.text(row, "place"))
                + "\" is no bin and no store of the plant");
      }
    }
    return found;
  }

  private Optional<ContentRecord> one(Row row, NameReader.Read place) {
    row.note(place.how());
    Optional<LocalDate> date = dates.read(table.text(row, "date")).flatMap(DateReader.Moment::date);
    if (date.isEmpty()) {
      row.setAside(dates.found().isEmpty() ? "no date" : dates.found());
      return Optional.empty();
    }
    boolean isBin = bins.containsKey(place.name());
    Optional<String> product = isBin ? Optional.of("") : product(row, place.name());
    OptionalDouble amount =
        product.isEmpty()
            ? OptionalDouble.empty()
            : isBin ? level(row, bins.get(place.name())) : packages(row, product.get());
    if (amount.isEmpty()) {
      return Optional.empty();
    }
    String key = date.get() + "|" + place.name() + "|" + product.get();
    Integer first = lines.putIfAbsent(key, row.line());
    if (first != null) {
      row.setAside("same day as line " + first);
      return Optional.empty();
    }
    row.use(isBin ? "bin" : "store");
    return Optional.of(
        new ContentRecord(
            row.line(), date.get(), place.name(), product.get(), amount.getAsDouble()));
  }

  /** A store of one product needs no name of it. */
  private Optional<String> product(Row row, String store) {
    List<String> there =
        plant.products().stream()
            .filter(of -> of.storage().map(Storage::store).filter(store::equals).isPresent())
            .map(Product::name)
            .toList();
    String said = table.text(row, "crop");
    if (said.isEmpty() && there.size() == 1) {
      return Optional.of(there.get(0));
    }
    Optional<NameReader.Read> read = products.read(said, there);
    read.ifPresent(name -> row.note(name.how()));
    if (read.isEmpty()) {
      row.setAside("\"" + NumberReader.shortened(said) + "\" is no product of the store " + store);
    }
    return read.map(NameReader.Read::name);
  }

  private OptionalDouble packages(Row row, String product) {
    OptionalDouble count = number(row, counts, "count");
    OptionalDouble level = number(row, levels, "level");
    if (count.isPresent() && level.isPresent()) {
      row.note("mass not used beside a count");
    }
    double packageKg =
        plant.products().stream()
            .filter(of -> of.name().equals(product))
            .findFirst()
            .flatMap(plant::packaging)
            .orElseThrow()
            .massKg();
    if (count.isPresent()) {
      return whole(row, count.getAsDouble());
    }
    if (level.isEmpty()) {
      return none(row, or(counts.found(), "no count of packages"));
    }
    OptionalDouble kg = inUnit(row, level.getAsDouble(), "kg", "t");
    return kg.isPresent() ? OptionalDouble.of(Math.rint(kg.getAsDouble() / packageKg)) : kg;
  }

  private static String or(String found, String otherwise) {
    return found.isEmpty() ? otherwise : found;
  }

  private static OptionalDouble whole(Row row, double count) {
    return count == Math.rint(count)
        ? notBelow0(row, count)
        : none(row, "packages are counted whole");
  }

  private OptionalDouble level(Row row, Machine.Bin bin) {
    OptionalDouble level = number(row, levels, "level");
    if (level.isEmpty()) {
      return none(row, or(levels.found(), "no level of the bin, such as 40 in %"));
    }
    if (unit(row).equals("%")) {
      return notBelow0(row, bin.holds() * level.getAsDouble() / 100);
    }
    return bin.byVolume()
        ? inUnit(row, level.getAsDouble(), "m3", "m3 or %")
        : inUnit(row, level.getAsDouble(), "kg", "t or %");
  }

  private OptionalDouble inUnit(Row row, double amount, String in, String expected) {
    String unit = unit(row);
    try {
      return notBelow0(row, amount * NumberReader.scale(unit, in));
    } catch (QuantityException e) {
      return none(
          row,
          unit.isEmpty()
              ? "no unit of the level; expected " + expected
              : "\"" + NumberReader.shortened(unit) + "\" is no unit of it; expected " + expected);
    }
  }

  private String unit(Row row) {
    String own = table.text(row, "unit");
    return !own.isEmpty()
        ? own
        : !levels.unit().isEmpty() ? levels.unit() : table.unit("level", "");
  }

  private static OptionalDouble notBelow0(Row row, double amount) {
    return amount >= 0 ? OptionalDouble.of(amount) : none(row, "below 0: no reading");
  }

  private static OptionalDouble none(Row row, String why) {
    row.setAside(why);
    return OptionalDouble.empty();
  }

  private OptionalDouble number(Row row, NumberReader reader, String column) {
    OptionalDouble value = reader.read(table.text(row, column));
    row.note(reader.found());
    return value;
  }
}
