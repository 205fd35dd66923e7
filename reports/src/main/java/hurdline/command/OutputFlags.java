package hurdline.command;

import hurdline.text.Wording;
import picocli.CommandLine;

/** How an answer is shown. */
final class OutputFlags {
  @CommandLine.Mixin private ReadersFlags reader;

  @CommandLine.Option(
      names = "--json",
      description = "Prints the answer as JSON on standard output, all else on standard error.")
  private boolean json;

  @CommandLine.Option(
      names = "--quiet",
      description = "Shows neither progress nor the answer in words.")
  private boolean quiet;

  @CommandLine.Option(
      names = "--steered",
      hidden = true,
      description =
          "For programs: progress as JSON lines, and a line \"stop\" on standard input ends.")
  private boolean steered;

  private final CommandContext setting;

  OutputFlags(CommandContext setting) {
    this.setting = setting;
  }

  boolean json() {
    return json;
  }

  boolean quiet() {
    return quiet;
  }

  /** Whether another program has started this one and follows it. */
  boolean steered() {
    return steered;
  }

  Wording wording() {
    return reader.wording(setting.locale());
  }
}
