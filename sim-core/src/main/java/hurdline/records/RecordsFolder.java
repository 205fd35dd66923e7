package hurdline.records;

import hurdline.plant.Line;
import hurdline.plant.Plant;
import hurdline.plant.ProblemsException;
import hurdline.plant.yaml.tree.FileText;
import hurdline.plant.yaml.tree.Findings;
import hurdline.plant.yaml.tree.UnreadableException;
import hurdline.problem.LocatedProblem;
import hurdline.records.Spans.Span;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a folder of records: whichever of the files lie in it. */
public final class RecordsFolder {
  private static final long LARGEST = 64L << 20;
  private static final String MAP = "records.yaml";

  private final Path folder;
  private final Plant plant;
  private final Map<RecordKind, RecordTable> tables = new EnumMap<>(RecordKind.class);
  private final List<LocatedProblem> problems = new ArrayList<>();
  private final List<LocatedProblem> cautions = new ArrayList<>();
  private final ByteArrayOutputStream all = new ByteArrayOutputStream();
  private RecordsMap map = RecordsMap.none();
  private List<MeterColumn> meters = List.of();

  private RecordsFolder(Path folder, Plant plant) {
    this.folder = folder;
    this.plant = plant;
  }

  /**
   * @throws ProblemsException with every problem of files that cannot be read at all
   */
  public static Records read(Path folder, Plant plant) {
    return new RecordsFolder(folder, plant).records();
  }

  private Records records() {
    if (!Files.isDirectory(folder)) {
      throw refuse(
          folder.toString(),
          Files.exists(folder) ? "it is no folder" : "there is no such folder",
          "a folder with stops.csv, shifts.csv or other records");
    }
    readMap();
    for (RecordKind kind : RecordKind.values()) {
      table(kind).ifPresent(table -> tables.put(kind, table));
    }
    if (!problems.isEmpty()) {
      throw new ProblemsException(problems);
    }
    if (tables.isEmpty()) {
      throw refuse(
          folder.toString(),
          "it holds no records",
          "files such as stops.csv, shifts.csv, tickets.csv or made.csv");
    }
    return understood();
  }

  private void readMap() {
    Path file = folder.resolve(MAP);
    if (!Files.exists(file)) {
      return;
    }
    Findings findings = new Findings();
    try {
      map = RecordsMapReader.read(FileText.text(bytes(file)), findings);
    } catch (UnreadableException e) {
      findings.add(e.finding());
    }
    problems.addAll(findings.problemsOf(MAP));
  }

  private Optional<RecordTable> table(RecordKind kind) {
    String name = map.words(kind).file();
    Path file = folder.resolve(name);
    try {
      if (!Files.exists(file)) {
        if (map.files().containsKey(kind)) {
          throw refuse(
              name,
              "there is no such file",
              "a file in "
                  + folder
                  + ", or no \"files: {"
                  + kind.word()
                  + ": …}\" in records.yaml");
        }
        return Optional.empty();
      }
      if (!file.toRealPath().startsWith(folder.toRealPath())) {
        throw refuse(
            name,
            "it lies outside the folder of records and is not opened",
            "a file in that folder");
      }
      return Optional.of(
          HeadReader.table(kind, name, text(name, bytes(file)), map.words(kind).columns()));
    } catch (ProblemsException e) {
      problems.addAll(e.problems());
    } catch (IOException e) {
      problems.add(
          LocatedProblem.of(name, "it could not be read", "a file with read permission", ""));
    }
    return Optional.empty();
  }

  private byte[] bytes(Path file) {
    String name = file.getFileName().toString();
    try {
      if (!Files.isRegularFile(file) || !Files.isReadable(file)) {
        throw refuse(name, "it is no file that can be read", "a CSV file with read permission");
      }
      if (Files.size(file) > LARGEST) {
        throw refuse(name, "it is larger than 64 MB", "a CSV file of at most 64 MB");
      }
      byte[] read = Files.readAllBytes(file);
      all.writeBytes((name + "\n" + FileText.hash(read) + "\n").getBytes(StandardCharsets.UTF_8));
      return read;
    } catch (IOException e) {
      throw refuse(name, "it could not be read", "a CSV file with read permission");
    }
  }

  /** UTF-8, or UTF-16 where a mark says so; spreadsheets write both. */
  private String text(String name, byte[] bytes) {
    boolean wide =
        bytes.length > 1
            && (bytes[0] & 0xff) + (bytes[1] & 0xff) == 0xff + 0xfe
            && (bytes[0] & 0xff) >= 0xfe;
    try {
      String text =
          (wide ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8)
              .newDecoder()
              .decode(ByteBuffer.wrap(bytes))
              .toString();
      if (text.indexOf('\0') >= 0) {
        throw refuse(name, "it is a binary file", "a CSV file: text in UTF-8");
      }
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw refuse(name, "it is not text in UTF-8", "the file saved as \"CSV UTF-8\"");
    }
  }

  private static ProblemsException refuse(String name, String found, String expected) {
    return new ProblemsException(List.of(LocatedProblem.of(name, found, expected, "")));
  }

  private Records understood() {
    WallClock clock = new WallClock(map.zone());
    List<ShiftRecord> shifts =
        of(RecordKind.SHIFTS)
            .map(t -> new ShiftReader(t, map.words(RecordKind.SHIFTS), plant, clock).read())
            .orElse(List.of());
    Map<String, Spans> crewed = crewed(shifts);
    List<StopRecord> stops =
        of(RecordKind.STOPS)
            .map(
                t ->
                    new StopReader(t, map, clock, new StopNames(t, map, plant), crewed, shifts)
                        .read())
            .orElse(List.of());
    List<TicketRecord> tickets =
        of(RecordKind.TICKETS)
            .map(t -> new TicketReader(t, map, plant, clock).read())
            .orElse(List.of());
    List<MadeRecord> made =
        of(RecordKind.MADE)
            .map(t -> new MadeReader(t, map, plant, clock, shifts).read())
            .orElse(List.of());
    List<ChangeRecord> changes =
        of(RecordKind.CHANGES)
            .map(t -> new ChangeReader(t, map, plant, clock).read())
            .orElse(List.of());
    Optional<YardReader> places =
        of(RecordKind.YARD).map(table -> new YardReader(table, map, plant));
    List<ContentRecord> contents = places.map(YardReader::read).orElse(List.of());
    List<DayRecord> yard =
        days(RecordKind.YARD, "date")
            .map(reader -> reader.counts(places.get()::counted, "count"))
            .orElse(List.of());
    List<DayRecord> bills = days(RecordKind.BILLS, "month").map(DayReader::bills).orElse(List.of());
    List<DayRecord> rain = days(RecordKind.RAIN, "date").map(DayReader::rain).orElse(List.of());
    of(RecordKind.POWER).ifPresent(this::readMeters);
    List<PowerRecord> power =
        days(RecordKind.POWER, "from")
            .map(reader -> reader.power(clock, motorsKW(), meters))
            .orElse(List.of());
    List<LocatedProblem> wrong = MapNames.problems(map, plant, stops);
    if (!wrong.isEmpty()) {
      throw new ProblemsException(wrong);
    }
    cautions.addAll(MapNames.cautions(map, plant));
    formsUntold(RecordKind.TICKETS, tickets.stream().map(TicketRecord::crop).toList());
    formsUntold(
        RecordKind.MADE, made.stream().filter(MadeRecord::isFed).map(MadeRecord::what).toList());
    Account account = account();
    caution(account);
    return new Records(
        map,
        shifts,
        stops,
        tickets,
        made,
        changes,
        yard,
        contents,
        power,
        bills,
        rain,
        crewed,
        account,
        List.copyOf(cautions),
        FileText.hash(all.toByteArray()));
  }

  private void readMeters(RecordTable table) {
    meters = MeterColumn.of(table, map, plant);
    meters.stream()
        .filter(meter -> !meter.how().isEmpty())
        .forEach(meter -> caution(table, "column " + meter.how(), "the name of a machine"));
  }

  private List<String> unused(RecordTable table) {
    return table.others().entrySet().stream()
        .filter(
            other ->
                table.kind() != RecordKind.POWER
                    || meters.stream().noneMatch(meter -> meter.at() == other.getValue()))
        .map(Map.Entry::getKey)
        .toList();
  }

  private Optional<RecordTable> of(RecordKind kind) {
    return Optional.ofNullable(tables.get(kind));
  }

  private Optional<DayReader> days(RecordKind kind, String dateColumn) {
    return of(kind).map(table -> new DayReader(table, map.words(kind), dateColumn));
  }

  /** Hours of each machine: those of every shift of a line that uses it. */
  private Map<String, Spans> crewed(List<ShiftRecord> shifts) {
    Map<String, List<Span>> spans = new LinkedHashMap<>();
    for (ShiftRecord shift : shifts) {
      for (Line line : plant.lines()) {
        if (shift.lines().contains(line.name())) {
          machines(line)
              .forEach(
                  machine ->
                      spans
                          .computeIfAbsent(machine, m -> new ArrayList<>())
                          .addAll(shift.worked()));
        }
      }
    }
    Map<String, Spans> crewed = new LinkedHashMap<>();
    spans.forEach((machine, any) -> crewed.put(machine, Spans.of(any)));
    return crewed;
  }

  private double motorsKW() {
    return plant.machines().stream().mapToDouble(machine -> machine.common().powerW()).sum() / 1000;
  }

  private static List<String> machines(Line line) {
    List<String> machines = new ArrayList<>(line.alongside());
    line.steps().forEach(step -> machines.add(step.machine()));
    return machines;
  }

  private Account account() {
    List<Account.Entry> entries = new ArrayList<>();
    Map<String, Integer> rows = new LinkedHashMap<>();
    for (RecordTable table : tables.values()) {
      rows.put(table.file(), table.rows().size());
      table.rows().forEach(row -> entries.add(row.entry()));
    }
    return new Account(entries, rows);
  }

  private void caution(Account account) {
    for (RecordTable table : tables.values()) {
      double aside = account.setAside(table.file());
      if (aside > 0.1) {
        caution(
            table,
            Math.round(100 * aside) + " % of its rows are set aside",
            "the reasons in account.csv, and what records.yaml can say about them");
      }
      List<String> unused = unused(table);
      if (!unused.isEmpty()) {
        caution(
            table,
            "columns not used: "
                + String.join(", ", unused.stream().limit(8).map(NumberReader::shortened).toList()),
            "\"columns\" in records.yaml, if one of them has a figure");
      }
    }
    if (tables.containsKey(RecordKind.STOPS) && !tables.containsKey(RecordKind.SHIFTS)) {
      cautions.add(
          warning(
              tables.get(RecordKind.STOPS).file(),
              "there is no shifts.csv, so hours are not known",
              "shifts as they were worked; without them only stops counted on calendar time can be fitted"));
    }
  }

  private void formsUntold(RecordKind kind, List<String> told) {
    of(kind).ifPresent(table -> cautions.addAll(CropNames.formsUntold(plant, table, told)));
  }

  private void caution(RecordTable table, String found, String then) {
    cautions.add(warning(table.file(), found, then));
  }

  private static LocatedProblem warning(String file, String found, String then) {
    return new LocatedProblem(LocatedProblem.Severity.WARNING, file, 0, 0, "", found, then, "", "");
  }
}
