package hurdline.fit;

import hurdline.plant.Stop.Counted;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One stop of one machine as the log has it.
 *
 * @param isNew whether the plant file has no such stop
 * @param counted on what it is counted, by the plant file, records.yaml, or what fits best
 * @param earlier fits of periods before the last change
 * @param warnings trends, clusters, and other things that a law of renewals does not have
 */
public record StopFit(
    String machine,
    String stop,
    boolean isNew,
    Counted counted,
    AmountFit every,
    AmountFit lasts,
    Optional<LocalDate> since,
    List<AmountFit> earlier,
    List<String> warnings) {
  public StopFit {
    earlier = List.copyOf(earlier);
    warnings = List.copyOf(warnings);
  }

  public String key() {
    return machine + "." + stop;
  }
}
