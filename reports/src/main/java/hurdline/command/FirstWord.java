package hurdline.command;

import hurdline.plant.Nearest;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What stands first in a call and is no command: a plant file, or a slip. */
final class FirstWord {
  private static final Map<String, String> WITH_A_FILE = new LinkedHashMap<>();

  static {
    WITH_A_FILE.put(
        "run", "simulates its calendar: what comes out, what limits it, what does it earn?");
    WITH_A_FILE.put("compare", "sets its options against the plant as it stands: do they pay?");
    WITH_A_FILE.put("yard", "sizes the yard of a crop: how many bales must it take?");
    WITH_A_FILE.put("season", "sets its season plans against each other: which is the best?");
  }

  private FirstWord() {}

  /** Whether the word is meant for a plant file. */
  static boolean isFile(String word) {
    String lower = word.toLowerCase(Locale.ROOT);
    try {
      return lower.endsWith(".yaml") || lower.endsWith(".yml") || Files.exists(Path.of(word));
    } catch (InvalidPathException none) {
      return false;
    }
  }

  /** Says what else may be asked of a file that was checked, since nothing was asked. */
  static void tellCommands(CommandContext setting, String... args) {
    if (Arrays.asList(args).contains("--quiet")) {
      return;
    }
    setting
        .err()
        .println("That was \"hurdline check\", since no command was given. With this file:");
    WITH_A_FILE.forEach(
        (command, does) ->
            setting
                .err()
                .println(
                    "  hurdline "
                        + command
                        + " "
                        + ShellWord.of(Path.of(args[0]))
                        + "\n        "
                        + does));
  }

  /** Refuses a word that is no command; the exit code. */
  static int refuse(CommandContext setting, String word, List<String> commands) {
    String near = Nearest.to(word, commands).map(command -> "perhaps " + command + "? ").orElse("");
    setting
        .err()
        .println(
            "hurdline: \""
                + word
                + "\" is no command and no file; "
                + near
                + "Commands are "
                + String.join(", ", commands)
                + ". See hurdline --help");
    return ExitCode.WRONG_CALL.number();
  }
}
