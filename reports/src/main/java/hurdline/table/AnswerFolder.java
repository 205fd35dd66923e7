package hurdline.table;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * The folder that an answer is written into: claimed before work begins, so that a full disk or a
 * forbidden folder shows at once, and never one that holds anything already. A file is written
 * under another name and moved when it is whole.
 */
public final class AnswerFolder {
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmmss", Locale.ROOT);
  private static final int NAMES_TRIED = 1000;

  private final Path path;
  private final boolean made;

  private AnswerFolder(Path path, boolean made) {
    this.path = path;
    this.made = made;
  }

  /** Writes one file's text. */
  @FunctionalInterface
  public interface Content {
    void writeTo(Writer out) throws IOException;
  }

  /**
   * Claims the folder that the user named.
   *
   * @throws DirectoryNotEmptyException if it holds anything
   * @throws NotDirectoryException if it is a file
   */
  public static AnswerFolder named(Path folder) throws IOException {
    if (Files.exists(folder)) {
      if (!Files.isDirectory(folder)) {
        throw new NotDirectoryException(folder.toString());
      }
      try (Stream<Path> inside = Files.list(folder)) {
        if (inside.findAny().isPresent()) {
          throw new DirectoryNotEmptyException(folder.toString());
        }
      }
      return new AnswerFolder(folder, false);
    }
    return new AnswerFolder(Files.createDirectories(folder), true);
  }

  /** Goes on in a folder that an answer was begun in; the caller has looked that it is the same. */
  public static AnswerFolder begun(Path folder) {
    return new AnswerFolder(folder, false);
  }

  /**
   * Claims a new dated folder beside the plant file: {@code
   * sweetgum-bend-answer-2026-11-25-153012}.
   */
  public static AnswerFolder beside(Path plantFile, LocalDateTime now) throws IOException {
    return beside(plantFile, "answer", now);
  }

  /**
   * Claims a new dated folder beside any file.
   *
   * @param what stands behind the file's name
   */
  public static AnswerFolder beside(Path file, String what, LocalDateTime now) throws IOException {
    String base =
        file.getFileName().toString().replaceFirst("\\.(ya?ml|json)$", "")
            + "-"
            + what
            + "-"
            + now.format(STAMP);
    for (int attempt = 1; attempt <= NAMES_TRIED; attempt++) {
      Path folder = file.resolveSibling(attempt == 1 ? base : base + "-" + attempt);
      try {
        return new AnswerFolder(Files.createDirectory(folder), true);
      } catch (FileAlreadyExistsException taken) {
        continue;
      }
    }
    throw new FileAlreadyExistsException(base);
  }

  public Path path() {
    return path;
  }

  /**
   * Writes a file, in a folder within if the name has a slash; none of it is left where that fails.
   */
  public void write(String name, Content content) throws IOException {
    Path target = path.resolve(name);
    Files.createDirectories(target.getParent());
    Path part = target.resolveSibling(target.getFileName() + ".part");
    try {
      try (Writer out = Files.newBufferedWriter(part, StandardCharsets.UTF_8)) {
        content.writeTo(out);
      }
      Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException | RuntimeException fault) {
      Files.deleteIfExists(part);
      throw fault;
    }
  }

  /** Takes the folder away again if nothing was written into it and it was made for this answer. */
  public void giveBack() throws IOException {
    if (made) {
      try {
        Files.deleteIfExists(path);
      } catch (DirectoryNotEmptyException kept) {
        return;
      }
    }
  }
}
