package hurdline.records;

import hurdline.plant.Stop.Counted;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What {@code records.yaml} says of a folder of records; a folder without one has {@link #none()}.
 *
 * @param zone of the clock on the wall; UTC stands for one that never changes
 * @param files what is said of a file, by its kind
 * @param machines machines by the words that stand for them
 * @param reasons stops by the words that stand for them
 * @param products products and crops by the words that stand for them
 * @param loggedFromS shorter repairs were never written down, by {@code machine.stop}
 * @param counted on what a stop's amount is counted where the plant file does not say, by {@code
 *     machine.stop}
 * @param take what a row means that a reader must not guess, by file and line
 */
public record RecordsMap(
    ZoneId zone,
    Optional<LocalDate> from,
    Optional<LocalDate> to,
    Map<RecordKind, FileWords> files,
    Map<String, String> machines,
    Map<String, String> reasons,
    Map<String, String> products,
    Map<String, Double> loggedFromS,
    List<Changed> changed,
    Map<String, Counted> counted,
    Map<String, Map<Integer, String>> take) {

  /**
   * @param file its name in the folder
   * @param columns heads by the column that they mean
   * @param unit of masses where neither a column nor a head has one
   */
  public record FileWords(
      String file, Map<String, String> columns, String unit, DateReader.Order dates) {}

  /** From a date on, these stops are other ones. */
  public record Changed(LocalDate on, String what, List<String> stops) {
    public Changed {
      stops = List.copyOf(stops);
    }
  }

  static RecordsMap none() {
    return new RecordsMap(
        ZoneOffset.UTC,
        Optional.empty(),
        Optional.empty(),
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        List.of(),
        Map.of(),
        Map.of());
  }

  FileWords words(RecordKind kind) {
    return files.getOrDefault(
        kind, new FileWords(kind.file(), Map.of(), "kg", DateReader.Order.UNKNOWN));
  }

  /** What is to be taken of a row; empty where nothing is said. */
  String taken(String file, int line) {
    return take.getOrDefault(file, Map.of()).getOrDefault(line, "");
  }
}
