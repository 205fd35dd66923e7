package hurdline.command;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The way in: {@code hurdline VERB …}. */
@Command(
    name = "hurdline",
    customSynopsis = "hurdline VERB ...",
    description =
        "Plays a bast-fiber separation plant in a shared cotton gin through its calendar: what"
            + " comes out, what holds the line, what it costs.",
    subcommands = {CheckVerb.class, RunVerb.class, CompareVerb.class, YardVerb.class, SeasonVerb.class, NewVerb.class},
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
    if (args.length == 0) {
      dressed(setting, ofAllVerbs(setting)).usage(setting.err());
      return ExitCode.WRONG_CALL.number();
    }
    CommandLine line = ofVerb(setting, args[0]).orElseGet(() -> ofAllVerbs(setting));
    return dressed(setting, line).execute(args);
  }

  private static CommandLine ofAllVerbs(Setting setting) {
    return new CommandLine(new Hurdline(), new Verbs(setting));
  }

  /** Only the verb that is called for: reading the flags of all of them takes a while. */
  private static Optional<CommandLine> ofVerb(Setting setting, String name) {
    Verbs verbs = new Verbs(setting);
    return Stream.of(Hurdline.class.getAnnotation(Command.class).subcommands())
        .filter(verb -> verb.getAnnotation(Command.class).name().equals(name))
        .findAny()
        .map(
            verb ->
                new CommandLine(CommandLine.Model.CommandSpec.create().name("hurdline"), verbs)
                    .addSubcommand(verb));
  }

  private static CommandLine dressed(Setting setting, CommandLine line) {
    return line.setOut(setting.out())
        .setErr(setting.err())
        .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
        .setUsageHelpWidth(100)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setParameterExceptionHandler((wrong, args) -> Failures.call(setting, wrong))
        .setExecutionExceptionHandler((fault, command, parsed) -> Failures.of(setting, fault));
  }
}
