package hurdline.web;

import hurdline.web.http.Call;
import hurdline.web.http.Refusal;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Why the machine did not read or write a file, in words for whoever sits at the page. */
final class FileFault {
  private static final int FORBIDDEN = 403;
  private static final int GONE = 404;
  private static final int FAULT = 500;
  private static final int FULL = 507;

  private FileFault() {}

  /** A call that tells such a fault, in place of no answer at all. */
  static Call told(Call call) {
    return ask -> {
      try {
        return call.answer(ask);
      } catch (IOException fault) {
        throw refusal("This was not done", fault);
      }
    };
  }

  /**
   * A refusal that says it.
   *
   * @param failed what has not been done, such as {@code small.yaml is not saved}
   */
  static Refusal refusal(String failed, IOException fault) {
    String said = String.valueOf(fault.getMessage());
    if (fault instanceof NoSuchFileException gone) {
      return new Refusal(GONE, failed + ": " + name(gone) + " or its folder is no longer there.");
    }
    if (said.contains("No space left") || said.contains("quota")) {
      return new Refusal(FULL, failed + ": the disk is full. Make room, then try again.");
    }
    if (said.contains("Read-only file system")) {
      return new Refusal(
          FORBIDDEN, failed + ": the folder lies on a disk that can only be read. Copy it first.");
    }
    if (fault instanceof AccessDeniedException closed) {
      return new Refusal(
          FORBIDDEN,
          failed + ": " + name(closed) + " or its folder is not yours to read and write.");
    }
    return new Refusal(FAULT, failed + ": " + said + ".");
  }

  /** Without the folders above it. */
  private static String name(FileSystemException fault) {
    Path last = fault.getFile() == null ? null : Path.of(fault.getFile()).getFileName();
    String name = String.valueOf(last);
    return last == null || name.startsWith(".") ? "the file" : name;
  }
}
