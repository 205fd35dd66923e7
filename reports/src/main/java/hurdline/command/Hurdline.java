package hurdline.command;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The way in: {@code hurdline VERB …}. */
@Command(
    name = "hurdline",
    customSynopsis = "hurdline VERB ...",
    description =
        "Plays a bast-fiber separation plant in a shared cotton gin through its calendar: what"
            + " comes out, what holds the line, what it costs.",
    subcommands = {CheckVerb.class, RunVerb.class, CompareVerb.class, NewVerb.class},
    versionProvider = Version.class,
    commandListHeading = "%nVerbs:%n",
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "hurdline VERB --help tells what a verb can do.",
      "Exit codes: 0 done, 1 a fault in the program, 2 the file or the call is wrong, 130 stopped"
          + " by the user."
    })
public final class Hurdline {
  @CommandLine.Option(names = "--help", usageHelp = true, description = "Shows this page.")
  private boolean help;

  @CommandLine.Option(
      names = "--version",
      versionHelp = true,
      description = "Shows the program's version.")
  private boolean version;

  private Hurdline() {}

  public static void main(String[] args) {
    PrintWriter out =
        new PrintWriter(new java.io.OutputStreamWriter(System.out, StandardCharsets.UTF_8), true);
    PrintWriter err =
        new PrintWriter(new java.io.OutputStreamWriter(System.err, StandardCharsets.UTF_8), true);
    int code = call(new Setting(out, err, Terminal.isThere(), new EngineStudies()), args);
    out.flush();
    err.flush();
    System.exit(code);
  }

  /** One call with its arguments; the exit code. */
  static int call(Setting setting, String... args) {
    CommandLine line = commandLine(setting);
    if (args.length == 0) {
      line.usage(setting.err());
      return ExitCode.WRONG_CALL.number();
    }
    return line.execute(args);
  }

  static CommandLine commandLine(Setting setting) {
    return new CommandLine(new Hurdline(), new Verbs(setting))
        .setOut(setting.out())
        .setErr(setting.err())
        .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
        .setUsageHelpWidth(100)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setParameterExceptionHandler((wrong, args) -> Failures.call(setting, wrong))
        .setExecutionExceptionHandler((fault, command, parsed) -> Failures.of(setting, fault));
  }
}
