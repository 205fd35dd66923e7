package hurdline.answer;

import java.time.LocalDate;
import java.util.List;

/**
 * Which plant, which program and which settings an answer rests on. Nothing in here may differ
 * between two runs of the same settings: no clock time, no folder, no thread count.
 *
 * @param plant the plant's name, the file's {@code plant} key
 * @param file base name of the plant file with its ending and without any folder
 * @param contentHash hash of the plant file's content
 * @param version the program's version
 * @param option the options that are applied, {@code A+B}, or {@code base} for the plant as it
 *     stands
 * @param changes each {@code --set} as it was given, {@code KEY=VALUE}
 * @param seed the seed of all chance
 * @param replicationsAsked how many replications were asked for (with {@code until}: to begin with)
 * @param replications how many the answer rests on; 0 where nothing is simulated
 * @param until the aim of {@code --until} as it was given, or empty
 * @param stopped whether the user stopped it before all replications were done
 * @param currency the file's currency code, or empty if the file has no money
 * @param from first date of the horizon
 * @param to last date of the horizon
 */
public record Header(
    String plant,
    String file,
    String contentHash,
    String version,
    String option,
    List<String> changes,
    long seed,
    int replicationsAsked,
    int replications,
    String until,
    boolean stopped,
    String currency,
    LocalDate from,
    LocalDate to) {
  public Header {
    changes = List.copyOf(changes);
  }
}
