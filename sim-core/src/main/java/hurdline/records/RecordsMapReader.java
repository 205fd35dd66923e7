package hurdline.records;

import hurdline.plant.Nearest;
import hurdline.plant.Stop.Counted;
import hurdline.plant.yaml.tree.Findings;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.Tree.Entries;
import hurdline.plant.yaml.tree.Tree.Entry;
import hurdline.plant.yaml.tree.Tree.Items;
import hurdline.plant.yaml.tree.Tree.Scalar;
import hurdline.plant.yaml.tree.TreeReader;
import hurdline.records.RecordsMap.Changed;
import hurdline.records.RecordsMap.FileWords;
import hurdline.unit.Dimension;
import hurdline.unit.Quantity;
import hurdline.unit.QuantityException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;

/**
 * Reads {@code records.yaml}; what is wrong goes to the findings with its place. As long as the
 * file has keys, a method each.
 */
final class RecordsMapReader {
  private static final List<String> KEYS =
      List.of(
          "records",
          "zone",
          "from",
          "to",
          "files",
          "called",
          "logged_from",
          "changed",
          "counted",
          "take");
  private static final List<String> FILE_KEYS = List.of("file", "columns", "unit", "dates");
  private static final List<String> UNITS = List.of("kg", "t", "lb", "ton");
  private static final String TAKEN = "\"ended +12 h\" or \"day and month\"";

  private final Findings findings;
  private ZoneId zone = ZoneOffset.UTC;
  private final Map<String, LocalDate> dates = new LinkedHashMap<>();
  private final Map<RecordKind, FileWords> files = new LinkedHashMap<>();
  private final Map<String, String> machines = new LinkedHashMap<>();
  private final Map<String, String> reasons = new LinkedHashMap<>();
  private final Map<String, String> products = new LinkedHashMap<>();
  private final Map<String, Double> loggedFromS = new LinkedHashMap<>();
  private final List<Changed> changed = new ArrayList<>();
  private final Map<String, Counted> counted = new LinkedHashMap<>();
  private final Map<String, Map<Integer, String>> take = new LinkedHashMap<>();

  private RecordsMapReader(Findings findings) {
    this.findings = findings;
  }

  static RecordsMap read(String text, Findings findings) {
    RecordsMapReader reader = new RecordsMapReader(findings);
    reader.all(TreeReader.read(text, findings));
    return new RecordsMap(
        reader.zone,
        Optional.ofNullable(reader.dates.get("from")),
        Optional.ofNullable(reader.dates.get("to")),
        Map.copyOf(reader.files),
        Map.copyOf(reader.machines),
        Map.copyOf(reader.reasons),
        Map.copyOf(reader.products),
        Map.copyOf(reader.loggedFromS),
        List.copyOf(reader.changed),
        Map.copyOf(reader.counted),
        Map.copyOf(reader.take));
  }

  private void all(Tree tree) {
    Entries top = map(tree, "", "keys such as \"zone\" and \"files\"");
    known(top, "", KEYS);
    if (top.at("records").flatMap(RecordsMapReader::text).filter("1"::equals).isEmpty()) {
      findings.add(
          top.place(),
          "records",
          "it does not say \"records: 1\"",
          "\"records: 1\", the version of this format");
    }
    top.at("zone").ifPresent(this::zone);
    for (String key : List.of("from", "to")) {
      top.at(key).ifPresent(value -> date(value, key).ifPresent(date -> dates.put(key, date)));
    }
    each(top, "files", this::file);
    each(top, "called", this::called);
    each(
        top,
        "logged_from",
        (stop, value) ->
            time(value, "logged_from." + stop).ifPresent(s -> loggedFromS.put(stop, s)));
    each(top, "counted", this::counted);
    each(top, "take", this::take);
    top.at("changed").ifPresent(this::changes);
  }

  private void zone(Tree value) {
    try {
      zone = ZoneId.of(text(value).orElse(""));
    } catch (DateTimeException e) {
      findings.add(
          value.place(),
          "zone",
          "there is no such time zone",
          "a zone such as America/Chicago or Europe/Berlin");
    }
  }

  private void file(String name, Tree value) {
    String path = "files." + name;
    Optional<RecordKind> kind = RecordKind.of(name);
    if (kind.isEmpty()) {
      List<String> words =
          java.util.stream.Stream.of(RecordKind.values()).map(RecordKind::word).toList();
      findings.add(
          value.place(),
          path,
          "\"" + name + "\" is no kind of record",
          Nearest.expected("a kind of record", name, words));
      return;
    }
    Entries said = map(value, path, "\"file\", \"columns\", \"unit\" or \"dates\"");
    known(said, path, FILE_KEYS);
    Map<String, String> columns = new LinkedHashMap<>();
    List<String> known = kind.get().columns().stream().map(RecordKind.Column::name).toList();
    each(
        said,
        "columns",
        (column, head) -> {
          if (!known.contains(column)) {
            findings.add(
                head.place(),
                path + ".columns." + column,
                "\"" + column + "\" is no column of it",
                Nearest.expected("a column", column, known));
          }
          text(head).ifPresent(word -> columns.put(column, word));
        });
    String unit = said.at("unit").flatMap(u -> word(u, path + ".unit", UNITS)).orElse("kg");
    String order =
        said.at("dates")
            .flatMap(d -> word(d, path + ".dates", List.of("month-first", "day-first")))
            .orElse("unknown");
    files.put(
        kind.get(),
        new FileWords(
            said.at("file").flatMap(RecordsMapReader::text).orElse(kind.get().file()),
            Map.copyOf(columns),
            unit,
            DateReader.Order.valueOf(order.toUpperCase(Locale.ROOT).replace('-', '_'))));
  }

  private void called(String kind, Tree value) {
    Map<String, Map<String, String>> kinds =
        Map.of("machines", machines, "reasons", reasons, "products", products);
    if (!kinds.containsKey(kind)) {
      findings.add(
          value.place(),
          "called." + kind,
          "\"" + kind + "\" is nothing that is called",
          Nearest.expected("a key", kind, List.of("machines", "reasons", "products")));
      return;
    }
    map(value, "called." + kind, "names by the words that stand for them")
        .map()
        .forEach(
            (word, entry) ->
                text(entry.value()).ifPresent(name -> kinds.get(kind).put(word, name)));
  }

  private void counted(String stop, Tree value) {
    List<String> words =
        java.util.stream.Stream.of(Counted.values())
            .map(c -> c.name().toLowerCase(Locale.ROOT))
            .toList();
    word(value, "counted." + stop, words)
        .ifPresent(word -> counted.put(stop, Counted.valueOf(word.toUpperCase(Locale.ROOT))));
  }

  private void take(String file, Tree value) {
    Map<Integer, String> lines = new LinkedHashMap<>();
    map(value, "take." + file, TAKEN + " by line number")
        .map()
        .forEach(
            (line, entry) -> {
              String said = text(entry.value()).orElse("");
              boolean isKnown =
                  said.matches("ended \\+[0-9]{1,2} h") || said.equals("day and month");
              if (!line.matches("[1-9][0-9]{0,6}") || !isKnown) {
                findings.add(
                    entry.value().place(),
                    "take." + file + "." + line,
                    "\"" + said + "\" of line " + line + " cannot be taken",
                    "a line number with " + TAKEN);
              } else {
                lines.put(Integer.parseInt(line), said);
              }
            });
    take.put(file, Map.copyOf(lines));
  }

  private void changes(Tree value) {
    if (!(value instanceof Items items)) {
      findings.add(
          value.place(),
          "changed",
          "it is no list",
          "a list of {on: DATE, what: TEXT, stops: [machine.stop]}");
      return;
    }
    for (int i = 0; i < items.list().size(); i++) {
      String path = "changed." + i;
      Entries one = map(items.list().get(i), path, "\"on\", \"what\" and \"stops\"");
      Optional<LocalDate> on = one.at("on").flatMap(day -> date(day, path + ".on"));
      List<String> stops = new ArrayList<>();
      one.at("stops")
          .ifPresent(
              list -> {
                if (list instanceof Items named) {
                  named.list().forEach(item -> text(item).ifPresent(stops::add));
                }
              });
      if (on.isEmpty() || stops.isEmpty()) {
        findings.add(
            one.place(),
            path,
            "it does not say from when on which stops are other ones",
            "{on: 2026-06-15, what: new saw, stops: [stalk_saw.choke]}");
      } else {
        changed.add(
            new Changed(
                on.get(),
                one.at("what").flatMap(RecordsMapReader::text).orElse("a change"),
                stops));
      }
    }
  }

  private Optional<LocalDate> date(Tree value, String path) {
    try {
      return Optional.of(LocalDate.parse(text(value).orElse("")));
    } catch (DateTimeException e) {
      findings.add(value.place(), path, "it is no date", "a date such as 2026-01-05");
      return Optional.empty();
    }
  }

  private Optional<Double> time(Tree value, String path) {
    try {
      return Optional.of(Quantity.read(text(value).orElse(""), Dimension.TIME).si());
    } catch (QuantityException e) {
      findings.add(value.place(), path, e.getMessage(), Dimension.TIME.phrase());
      return Optional.empty();
    }
  }

  private Optional<String> word(Tree value, String path, List<String> words) {
    Optional<String> said = text(value);
    if (said.filter(words::contains).isEmpty()) {
      findings.add(
          value.place(),
          path,
          "\"" + NumberReader.shortened(said.orElse("")) + "\" is not one of its words",
          "one of " + String.join(", ", words));
      return Optional.empty();
    }
    return said;
  }

  private void known(Entries map, String path, List<String> keys) {
    map.map()
        .forEach(
            (key, entry) -> {
              if (!keys.contains(key)) {
                findings.add(
                    entry.keyPlace(),
                    path.isEmpty() ? key : path + "." + key,
                    "\"" + NumberReader.shortened(key) + "\" is no key here",
                    Nearest.expected("a key", key, keys));
              }
            });
  }

  private void each(Entries map, String key, BiConsumer<String, Tree> reader) {
    map.at(key)
        .ifPresent(
            value ->
                map(value, key, "a map")
                    .map()
                    .forEach((name, entry) -> reader.accept(name, entry.value())));
  }

  private Entries map(Tree value, String path, String expected) {
    if (value instanceof Entries entries) {
      return entries;
    }
    findings.add(value.place(), path, "it is no map", expected);
    return new Entries(Map.<String, Entry>of(), value.place());
  }

  private static Optional<String> text(Tree value) {
    return value instanceof Scalar scalar && !scalar.isNull()
        ? Optional.of(scalar.text())
        : Optional.empty();
  }
}
