package hurdline.command;

import hurdline.plant.ProblemsException;
import hurdline.table.RecordFault;
import hurdline.table.RecordFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NotDirectoryException;
import java.util.List;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** What went wrong, in lines for a user; never a stack trace. */
final class Failures {
  private Failures() {}

  /** The call itself cannot be read. */
  static int call(CommandContext setting, ParameterException wrong) {
    String verb = wrong.getCommandLine().getCommandSpec().qualifiedName();
    String message = said(wrong).replaceAll("\\s*\\R\\s*", " ");
    List<String> near =
        wrong instanceof UnmatchedArgumentException unmatched
            ? unmatched.getSuggestions()
            : List.of();
    String hint = near.isEmpty() ? "" : " Perhaps " + near.get(0) + "?";
    setting
        .err()
        .println(
            "hurdline: "
                + message
                + (message.endsWith(".") ? "" : ".")
                + hint
                + " See "
                + verb
                + " --help");
    return ExitCode.WRONG_CALL.number();
  }

  /** Our own words where the value of a flag is wrong, with the flag before them. */
  private static String said(ParameterException wrong) {
    if (!(wrong.getCause() instanceof CallException own)) {
      return wrong.getMessage();
    }
    boolean names = own.getMessage().startsWith("--");
    return wrong.getArgSpec() instanceof OptionSpec flag && !names
        ? flag.longestName() + " " + own.getMessage()
        : own.getMessage();
  }

  /** The same, problems of a plant as JSON too where that is asked for. */
  static int of(CommandContext setting, ParseResult call, Throwable fault) throws IOException {
    ParseResult verb = call.hasSubcommand() ? call.subcommand() : call;
    if (fault instanceof ProblemsException problems && verb.hasMatchedOption("--json")) {
      RecordFile.write(verb.commandSpec().name(), problems.problems(), setting.out());
    }
    return of(setting, fault);
  }

  /** Something went wrong while a verb was at work. */
  static int of(CommandContext setting, Throwable fault) {
    if (fault instanceof ProblemsException problems) {
      problems.lines().forEach(setting.err()::println);
      return ExitCode.WRONG_CALL.number();
    }
    if (fault instanceof CallException) {
      setting.err().println("hurdline: " + fault.getMessage());
      return ExitCode.WRONG_CALL.number();
    }
    if (fault instanceof UncheckedIOException wrapped) {
      return of(setting, wrapped.getCause());
    }
    if (fault instanceof WritingFault half) {
      setting.err().println("hurdline: " + half.getMessage());
      return ExitCode.WRONG_CALL.number();
    }
    if (fault instanceof RecordFault record) {
      setting.err().println(record.getMessage());
      return ExitCode.WRONG_CALL.number();
    }
    if (fault instanceof IOException file) {
      setting.err().println("hurdline: " + file(file));
      return ExitCode.WRONG_CALL.number();
    }
    setting.err().println(fault(fault));
    return ExitCode.FAULT.number();
  }

  private static String file(IOException fault) {
    String name = fault instanceof FileSystemException system ? system.getFile() : null;
    if (fault instanceof DirectoryNotEmptyException) {
      return name
          + " holds something already and is not written over; name a new or an empty folder with"
          + " --out";
    }
    if (fault instanceof NotDirectoryException) {
      return name + " is a file; name a new or an empty folder with --out";
    }
    if (fault instanceof AccessDeniedException) {
      return name + " may not be written; name another folder with --out";
    }
    if (fault instanceof FileAlreadyExistsException) {
      return name + " is there already and is not written over";
    }
    return "writing failed: "
        + fault.getMessage()
        + "; make room or name another folder with --out";
  }

  private static String fault(Throwable fault) {
    if (fault instanceof OutOfMemoryError) {
      return "hurdline ran out of memory; ask for fewer --replications or --threads, or give it"
          + " more with HURDLINE_JVM=-Xmx4g";
    }
    StackTraceElement[] trace = fault.getStackTrace();
    String place =
        trace.length == 0
            ? ""
            : " at "
                + trace[0].getClassName()
                + "."
                + trace[0].getMethodName()
                + ":"
                + trace[0].getLineNumber();
    String message =
        fault.getMessage() == null ? "" : ": " + fault.getMessage().replaceAll("\\s*\\R\\s*", " ");
    return "hurdline failed ("
        + fault.getClass().getSimpleName()
        + message
        + place
        + "). This is a fault in the program, not in your file: please report this line, the"
        + " command and the plant file to those you have hurdline from.";
  }
}
