package hurdline.records;

import hurdline.plant.Machine;
import hurdline.plant.Nearest;
import hurdline.plant.Plant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which machine and which of its stops a row of the log means. A reason that the plant file does
 * not know becomes a stop of its own where a machine has it three times or more and no known one is
 * like it.
 */
final class StopNames {
  private static final int OFTEN = 3;
  private static final double ALIKE = 0.8;

  /** How people call a job that the plant file has as such. */
  private static final Map<String, String> JOBS =
      Map.of(
          "bag change", StopRecord.PACKAGE_CHANGE,
          "bale change", StopRecord.PACKAGE_CHANGE,
          "change of bag", StopRecord.PACKAGE_CHANGE);

  record Found(String machine, String stop) {}

  private final NameReader machineNames;
  private final NameReader reasonNames;
  private final Map<String, List<String>> stops = new LinkedHashMap<>();

  StopNames(RecordTable table, RecordsMap map, Plant plant) {
    machineNames = new NameReader(map.machines());
    Map<String, String> reasons = new LinkedHashMap<>(map.reasons());
    JOBS.forEach(reasons::putIfAbsent);
    reasonNames = new NameReader(reasons);
    Set<String> packers = PackageNames.filled(plant).keySet();
    for (Machine machine : plant.machines()) {
      List<String> known =
          new ArrayList<>(
              machine.common().stops().stream().map(hurdline.plant.Stop::name).toList());
      if (machine instanceof Machine.HammerMill) {
        known.add(StopRecord.SCREEN_CHANGE);
      }
      if (packers.contains(machine.name())) {
        known.add(StopRecord.PACKAGE_CHANGE);
      }
      stops.put(machine.name(), known);
    }
    map.counted()
        .keySet()
        .forEach(
            key ->
                add(
                    key.substring(0, Math.max(0, key.lastIndexOf('.'))),
                    key.substring(key.lastIndexOf('.') + 1)));
    addFrequent(table);
  }

  private void add(String machine, String stop) {
    if (stops.containsKey(machine) && !stops.get(machine).contains(stop)) {
      stops.get(machine).add(stop);
    }
  }

  private void addFrequent(RecordTable table) {
    Map<String, Map<String, Integer>> counts = new LinkedHashMap<>();
    for (Row row : table.rows()) {
      machineNames
          .read(table.text(row, "machine"), stops.keySet())
          .ifPresent(
              machine ->
                  counts
                      .computeIfAbsent(machine.name(), m -> new LinkedHashMap<>())
                      .merge(name(table.text(row, "reason")), 1, Integer::sum));
    }
    counts.forEach(
        (machine, reasons) ->
            reasons.entrySet().stream()
                .filter(reason -> reason.getValue() >= OFTEN && !reason.getKey().isEmpty())
                .sorted(
                    Map.Entry.<String, Integer>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .filter(reason -> isNew(reason, stops.get(machine)))
                .forEach(reason -> stops.get(machine).add(reason)));
  }

  private boolean isNew(String reason, List<String> known) {
    return reasonNames.read(reason, known).isEmpty()
        && Nearest.to(reason, known).isEmpty()
        && known.stream()
            .noneMatch(name -> NameReader.alike(HeadReader.plain(reason), name) >= ALIKE);
  }

  /** A reason as the plant file would name it. */
  private static String name(String reason) {
    return reason
        .strip()
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^\\p{L}\\p{N}]+", "_")
        .replaceAll("^_+|_+$", "");
  }

  /** What the row means; nothing where that is not clear, and the row is set aside. */
  Optional<Found> of(Row row, String machine, String reason, Set<String> all) {
    if (machine.isEmpty()) {
      row.setAside("no machine");
      return Optional.empty();
    }
    Optional<NameReader.Read> which = machineNames.read(machine, stops.keySet());
    if (which.isEmpty()) {
      row.setAside(
          all.contains(HeadReader.plain(machine))
              ? "stops all machines; name one under \"called\""
              : unknown("machine", machine, "machines", stops.keySet()));
      return Optional.empty();
    }
    row.note(which.get().how());
    List<String> known = stops.get(which.get().name());
    Optional<NameReader.Read> why = reasonNames.read(reason, known);
    if (why.isEmpty()) {
      row.setAside(
          reason.isEmpty()
              ? "no reason"
              : unknown("reason of " + which.get().name(), reason, "reasons", known));
      return Optional.empty();
    }
    row.note(why.get().how());
    return Optional.of(new Found(which.get().name(), why.get().name()));
  }

  private static String unknown(
      String kind, String word, String key, java.util.Collection<String> known) {
    String near =
        known.stream()
            .max(
                java.util.Comparator.comparingDouble(
                        (String name) -> NameReader.alike(HeadReader.plain(word), name))
                    .thenComparing(java.util.Comparator.reverseOrder()))
            .map(name -> "; nearest is " + name)
            .orElse("");
    return "\""
        + NumberReader.shortened(word)
        + "\" is no "
        + kind
        + near
        + "; say it under called: {"
        + key
        + ": …}";
  }
}
