package hurdline.command;

import picocli.CommandLine;

/** How a verb's page is asked for. */
final class HelpFlag {
  @CommandLine.Option(names = "--help", usageHelp = true, description = "Shows this page.")
  private boolean help;
}
