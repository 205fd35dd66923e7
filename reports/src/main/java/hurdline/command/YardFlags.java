package hurdline.command;

import hurdline.study.yard.YardAsk;
import hurdline.unit.Dimension;
import hurdline.unit.Quantity;
import hurdline.unit.QuantityException;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine;

/** What is asked of the yard. */
final class YardFlags {
  private static final double USUAL = 0.05;

  @CommandLine.Option(
      names = "--overflow",
      paramLabel = "SHARE",
      description = "Share of seasons in which the yard may overflow. Default: 5%%.")
  private String overflow;

  @CommandLine.Option(
      names = "--crop",
      paramLabel = "CROP",
      description = "Whose yard. Default: the file's first crop.")
  private String crop;

  @CommandLine.Option(
      names = "--place",
      paramLabel = "NAME",
      description =
          "Which place of the yard is made larger or smaller. Default: the last one that takes the crop and"
              + " whose ground has a price, else the last one that takes it.")
  private String place;

  @CommandLine.Option(
      names = "--acres",
      paramLabel = "SHARE",
      description =
          "Also says how many acres can be contracted so that this share of seasons finishes the crop,"
              + " such as 90%%.")
  private String acres;

  @CommandLine.Option(
      names = "--carry-over",
      paramLabel = "BALES",
      description =
          "With --acres: how many bales may be left when the season ends, such as those that lie there when"
              + " it begins. Default: none.")
  private Integer carryOver;

  @CommandLine.Option(
      names = "--gain",
      description =
          "Also says what shortens the peak: a truck more or less, longer receiving hours, another"
              + " shift, the file's options, 10 %% more of each machine.")
  private boolean gain;

  YardAsk ask() {
    return new YardAsk(
        Optional.ofNullable(crop),
        Optional.ofNullable(place),
        overflow == null ? USUAL : share("--overflow", overflow),
        acres == null ? OptionalDouble.empty() : OptionalDouble.of(share("--acres", acres)),
        carryOver(),
        gain);
  }

  private int carryOver() {
    if (carryOver == null) {
      return 0;
    }
    if (acres == null) {
      throw new CallException(
          "--carry-over belongs to --acres; expected both, such as --acres 90%");
    }
    if (carryOver < 0) {
      throw new CallException("--carry-over is " + carryOver + "; expected 0 or more bales");
    }
    return carryOver;
  }

  boolean isOverflowGiven() {
    return overflow != null;
  }

  /** A share between 0 and 100 %, both excluded. */
  private static double share(String flag, String text) {
    try {
      double share = Quantity.read(text, Dimension.SHARE).si();
      if (share > 0 && share < 1) {
        return share;
      }
    } catch (QuantityException e) {
      throw wrong(flag, e.getMessage());
    }
    throw wrong(flag, "\"" + text + "\" is no such share");
  }

  private static CallException wrong(String flag, String said) {
    return new CallException(
        flag + " " + said + "; expected a share above 0 % and below 100 %, such as 5%");
  }
}
