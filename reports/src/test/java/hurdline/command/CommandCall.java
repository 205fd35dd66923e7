package hurdline.command;

import hurdline.service.EngineStudies;
import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * One call of the program as a user makes it, with the real engine, for tests of other packages.
 *
 * @param code the exit code
 * @param out what it printed, the answer in words
 * @param err what else it said
 */
public record CommandCall(int code, String out, String err) {
  public static CommandCall of(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandContext setting =
        new CommandContext(
            new PrintWriter(out, true), new PrintWriter(err, true), false, new EngineStudies());
    int code = Hurdline.call(setting, args);
    return new CommandCall(code, out.toString(), err.toString());
  }
}
