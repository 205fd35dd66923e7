package hurdline.audit;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import hurdline.command.CommandCall;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * An answer as a user has it: the files of its folder and what the terminal said, with the plant
 * file it is about.
 */
final class WrittenAnswer {
  private final PlantFacts plant;
  private final Map<String, Table> tables;
  private final JsonObject record;
  private final List<PageTable> page;
  private final String prose;
  private final String terminal;
  private final Map<String, Samples> samples; // of measures.csv, by option
  private List<String> options; // of measures.csv, read when they are first asked for

  private WrittenAnswer(
      PlantFacts plant,
      Map<String, Table> tables,
      JsonObject record,
      List<PageTable> page,
      String prose,
      String terminal,
      Map<String, Samples> samples) {
    this.plant = plant;
    this.tables = tables;
    this.record = record;
    this.page = page;
    this.prose = prose;
    this.terminal = terminal;
    this.samples = samples;
  }

  /**
   * Calls the program and reads back what it wrote.
   *
   * @param out the folder of the answer, not yet there
   */
  static WrittenAnswer of(String verb, Path plant, Path out, String... flags) throws IOException {
    List<String> args = new ArrayList<>(List.of(verb, plant.toString(), "--out", out.toString()));
    args.addAll(List.of(flags));
    CommandCall call = CommandCall.of(args.toArray(String[]::new));
    assertThat(call.code()).as(call.err()).isZero();
    Map<String, Table> tables = new LinkedHashMap<>();
    try (Stream<Path> files = Files.list(out)) {
      for (Path file : files.filter(path -> path.toString().endsWith(".csv")).sorted().toList()) {
        tables.put(file.getFileName().toString(), Table.read(file));
      }
    }
    String page = Files.readString(out.resolve("report.html"));
    return new WrittenAnswer(
        PlantFacts.read(plant),
        tables,
        JsonParser.parseString(Files.readString(out.resolve("record.json"))).getAsJsonObject(),
        PageTable.all(page),
        PageTable.text(page),
        call.out(),
        new LinkedHashMap<>());
  }

  boolean has(String file) {
    return tables.containsKey(file);
  }

  Table table(String file) {
    Table table = tables.get(file);
    if (table == null) {
      throw new IllegalArgumentException("the answer has no " + file + ": " + tables.keySet());
    }
    return table;
  }

  List<Table> tables() {
    return List.copyOf(tables.values());
  }

  /** The plants of measures.csv, the one compared with first. */
  List<String> options() {
    if (options == null) {
      options = Samples.options(table(Tables.MEASURES));
    }
    return options;
  }

  Samples samples(String option) {
    return samples.computeIfAbsent(option, name -> new Samples(table(Tables.MEASURES), name));
  }

  /** What the plant file says with an option or under a plan. */
  PlantFacts plant(String option) {
    return plant.with(option);
  }

  /** The content of record.json under its envelope. */
  JsonObject record() {
    return record.getAsJsonObject("answer");
  }

  /** What the page shows in place of names. */
  TitledNames names() {
    return new TitledNames(plant);
  }

  /** The same with an option or under a plan, which may have more. */
  TitledNames names(String option) {
    return new TitledNames(plant(option));
  }

  List<PageTable> page() {
    return page;
  }

  /** All that the page says, without markup. */
  String prose() {
    return prose;
  }

  String terminal() {
    return terminal;
  }

  /** The same with one table changed, for controls. */
  WrittenAnswer with(Table changed) {
    Map<String, Table> others = new LinkedHashMap<>(tables);
    others.put(changed.file(), changed);
    boolean same = !changed.file().equals(Tables.MEASURES);
    return new WrittenAnswer(
        plant, others, record, page, prose, terminal, same ? samples : new LinkedHashMap<>());
  }

  /** The same with another page, for controls. */
  WrittenAnswer withPage(List<PageTable> changed) {
    return new WrittenAnswer(plant, tables, record, changed, prose, terminal, samples);
  }

  /** The same with other sentences on the page, for controls. */
  WrittenAnswer withProse(String changed) {
    return new WrittenAnswer(plant, tables, record, page, changed, terminal, samples);
  }

  /** The same with other words on the terminal, for controls. */
  WrittenAnswer withTerminal(String changed) {
    return new WrittenAnswer(plant, tables, record, page, prose, changed, samples);
  }
}
