package hurdline.command;

import hurdline.service.EngineStudies;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The way in: {@code hurdline VERB …}. */
@Command(
    name = "hurdline",
    customSynopsis = "hurdline COMMAND ...",
    description =
        "Discrete-event simulation of a bast-fiber separation plant in a shared cotton gin: what"
            + " comes out, which machine is the bottleneck, what it costs.",
    subcommands = {
      CheckVerb.class,
      RunVerb.class,
      CompareVerb.class,
      ChooseVerb.class,
      YardVerb.class,
      SeasonVerb.class,
      PageVerb.class,
      FitVerb.class,
      BacktestVerb.class,
      NewVerb.class,
      OpenVerb.class
    },
    versionProvider = Version.class,
    commandListHeading = "%nCommands:%n",
    optionListHeading = "%nFlags:%n",
    footer = {
      "",
      "hurdline COMMAND --help says what a command can do, with examples. A first hour:",
      "  hurdline new my-plant                  a plant file to edit",
      "  hurdline check my-plant/small.yaml     is it right, what can its machines do?",
      "  hurdline run my-plant/small.yaml       what will it do?",
      "  hurdline compare my-plant/small.yaml   do its options pay?",
      "  hurdline fit my-plant/small.yaml my-plant/records",
      "                                         what do your own records say?",
      "hurdline FILE does what hurdline check FILE does.",
      "",
      "Exit codes: 0 done, 1 a fault in the program, 2 the file or the call is wrong, 130 stopped"
          + " by the user."
    })
public final class Hurdline implements Callable<Integer> {
  private static final String CHECK = "check";

  @CommandLine.Mixin private HelpFlag help;

  @CommandLine.Option(
      names = "--version",
      versionHelp = true,
      description = "Shows the program's version.")
  private boolean version;

  @CommandLine.Option(
      names = "--completion",
      description =
          "Prints a script with which bash and zsh complete verbs and options; to use it:"
              + " source <(scripts/hurdline --completion)")
  private boolean completion;

  private final CommandContext setting;

  private Hurdline(CommandContext setting) {
    this.setting = setting;
  }

  /** Without a verb there is only the completion script to ask for. */
  @Override
  public Integer call() {
    if (!completion) {
      dressed(setting, ofAllVerbs(setting)).usage(setting.err());
      return ExitCode.WRONG_CALL.number();
    }
    setting.out().print(AutoComplete.bash("hurdline", ofAllVerbs(setting)));
    setting.out().flush();
    return ExitCode.DONE.number();
  }

  public static void main(String[] args) {
    Printed printed = new Printed(new FileOutputStream(FileDescriptor.out));
    PrintWriter out =
        new PrintWriter(new java.io.OutputStreamWriter(printed, StandardCharsets.UTF_8), true);
    PrintWriter err =
        new PrintWriter(new java.io.OutputStreamWriter(System.err, StandardCharsets.UTF_8), true);
    CommandContext setting =
        new CommandContext(
            out,
            err,
            Terminal.isThere(),
            new EngineStudies(),
            Terminal.locale(),
            Terminal.showsColours(),
            Terminal.columns());
    int code = call(setting, args);
    out.flush();
    if (printed.fault().isPresent()) {
      err.println(
          "hurdline: printing failed: "
              + printed.fault().get()
              + "; print to a terminal or a file with room");
      code = code == ExitCode.DONE.number() ? ExitCode.WRONG_CALL.number() : code;
    }
    err.flush();
    System.exit(code);
  }

  /** One call with its arguments; the exit code. */
  static int call(CommandContext terminal, String... args) {
    CommandContext setting = terminal.of(args);
    if (args.length == 0) {
      dressed(setting, ofAllVerbs(setting)).usage(setting.err());
      return ExitCode.WRONG_CALL.number();
    }
    Optional<CommandLine> verb = ofVerb(setting, args[0]);
    if (verb.isPresent() || args[0].startsWith("-")) {
      return dressed(setting, verb.orElseGet(() -> ofAllVerbs(setting))).execute(args);
    }
    return FirstWord.isFile(args[0])
        ? checked(setting, args)
        : FirstWord.refuse(setting, args[0], verbs().map(Hurdline::name).toList());
  }

  /** Checks a file that no command stands before. */
  private static int checked(CommandContext setting, String... args) {
    String[] check = Stream.concat(Stream.of(CHECK), Stream.of(args)).toArray(String[]::new);
    int code = dressed(setting, ofVerb(setting, CHECK).orElseThrow()).execute(check);
    if (code == ExitCode.DONE.number()) {
      FirstWord.tellCommands(setting, args);
    }
    return code;
  }

  private static Stream<Class<?>> verbs() {
    return Stream.of(Hurdline.class.getAnnotation(Command.class).subcommands());
  }

  private static String name(Class<?> verb) {
    return verb.getAnnotation(Command.class).name();
  }

  private static CommandLine ofAllVerbs(CommandContext setting) {
    return new CommandLine(new Hurdline(setting), new CommandTexts(setting));
  }

  /** Only the verb that is called for: reading the flags of all of them takes a while. */
  private static Optional<CommandLine> ofVerb(CommandContext setting, String name) {
    CommandTexts verbs = new CommandTexts(setting);
    return verbs()
        .filter(verb -> name(verb).equals(name))
        .findAny()
        .map(
            verb ->
                new CommandLine(CommandLine.Model.CommandSpec.create().name("hurdline"), verbs)
                    .addSubcommand(verb));
  }

  private static CommandLine dressed(CommandContext setting, CommandLine line) {
    return line.setOut(setting.out())
        .setErr(setting.err())
        .setColorScheme(
            CommandLine.Help.defaultColorScheme(new AnsiStyle(setting.inColour()).ansi()))
        .registerConverter(int.class, WholeNumber.small())
        .registerConverter(Integer.class, WholeNumber.small())
        .registerConverter(long.class, WholeNumber.large())
        .setUsageHelpWidth(80)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setParameterExceptionHandler((wrong, args) -> Failures.call(setting, wrong))
        .setExecutionExceptionHandler(
            (fault, command, parsed) -> Failures.of(setting, parsed, fault));
  }
}
