package hurdline.command;

import hurdline.table.AnswerFolder;
import hurdline.table.PartFolder;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The folder of an answer that may have been begun by an earlier call, and then goes on there. */
final class BegunAnswer {
  private final String called;
  private final String parts;

  /**
   * @param called what a message calls such an answer: {@code a grid}
   * @param parts folder of its finished parts
   */
  BegunAnswer(String called, String parts) {
    this.called = called;
    this.parts = parts;
  }

  /** Begins an answer in a new folder. */
  @FunctionalInterface
  interface Begin {
    void in(AnswerFolder folder) throws IOException;
  }

  /**
   * The folder that was begun with the same settings, or a new one.
   *
   * @param file the plant file, beside which the answer lies by default
   * @param out the folder that was asked for; null for a dated one beside the file
   */
  AnswerFolder claimed(Path file, Path out, List<String> settings, Begin begin) throws IOException {
    if (out != null && PartFolder.isBegunIn(out, parts)) {
      refuseOthers(out, PartFolder.settingsIn(out, parts), settings);
      return AnswerFolder.begun(out);
    }
    AnswerFolder folder = AnswerWriter.folder(file, out);
    begin.in(folder);
    return folder;
  }

  private void refuseOthers(Path out, List<String> there, List<String> here) {
    if (there.equals(here)) {
      return;
    }
    List<String> onlyThere = new ArrayList<>(there);
    onlyThere.removeAll(here);
    List<String> onlyHere = new ArrayList<>(here);
    onlyHere.removeAll(there);
    throw new CallException(
        out
            + " holds "
            + called
            + " that was begun otherwise (there "
            + said(onlyThere)
            + "; here "
            + said(onlyHere)
            + ") and is not written over; expected the same call, or a new or an empty folder");
  }

  private static String said(List<String> lines) {
    return lines.isEmpty() ? "nothing more" : String.join(", ", lines);
  }
}
