package hurdline.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import picocli.CommandLine;

/** From what day on a season is simulated, and what says how it was before. */
final class AsOfFlags {
  @CommandLine.Option(
      names = "--as-of",
      paramLabel = "DATE",
      description =
          "Simulates the rest of the season from that day on; what was before is taken from the"
              + " plant's records.")
  private String asOf;

  @CommandLine.Option(
      names = "--records",
      paramLabel = "DIR",
      description = "The folder of records for --as-of. Default: records beside the plant file.")
  private Path records;

  /**
   * The day, if one is asked for.
   *
   * @throws CallException for what is no date, or records without a day
   */
  Optional<LocalDate> day() {
    if (asOf == null) {
      if (records != null) {
        throw new CallException(
            "--records is for a season that is under way; expected --as-of with a date too, such as"
                + " --as-of 2027-08-01");
      }
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDate.parse(asOf));
    } catch (DateTimeParseException wrong) {
      throw new CallException("--as-of " + asOf + " is no date; expected one such as 2027-08-01");
    }
  }

  Path folder(Path plant) {
    return records == null ? plant.resolveSibling("records") : records;
  }
}
