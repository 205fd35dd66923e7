package hurdline.web;

import hurdline.service.PlantText;
import hurdline.web.http.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The plant files of one folder.
 *
 * <p>A name is looked up in the folder's own list and never joined to it, so no name leads out;
 * links are not listed. A file that has changed since it was read is not written over.
 */
final class PlantFolder {
  private static final int LARGEST = 4 << 20;
  private static final int CONFLICT = 409;
  private static final String MARK = "\uFEFF";
  private static final String TYPED = "plant.yaml";
  private static final Pattern PLANT = Pattern.compile("[^.~].*\\.ya?ml");
  private static final Pattern NEW_NAME =
      Pattern.compile("[\\p{L}\\p{N}]([\\p{L}\\p{M}\\p{N} _-]{0,58}[\\p{L}\\p{M}\\p{N}_-])?");

  /** Names that some systems keep for devices, in any folder. */
  private static final Pattern DEVICE =
      Pattern.compile("(?i)con|prn|aux|nul|com[0-9]|lpt[0-9]|conin\\$|conout\\$");

  private final Path folder;

  PlantFolder(Path folder) throws IOException {
    this.folder = folder.toRealPath();
  }

  /**
   * The text of a file at one moment, without a byte-order mark and with lines that end as in an
   * editor.
   *
   * @param version tells the file from any other
   */
  record Version(String text, String version) {}

  /**
   * Refuses what is no folder below this one, links followed.
   *
   * @throws Refusal if it is none
   */
  void refuseOutside(String name) throws IOException {
    Path inner = folder.resolve(name);
    if (!Files.isDirectory(inner) || !inner.toRealPath().startsWith(folder.toRealPath())) {
      throw new Refusal(400, "There is no folder \"" + name + "\" below that of the plants.");
    }
  }

  Path path() {
    return folder;
  }

  List<String> plants() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(one -> Files.isRegularFile(one, LinkOption.NOFOLLOW_LINKS))
          .map(one -> one.getFileName().toString())
          .filter(name -> PLANT.matcher(name).matches())
          .sorted()
          .toList();
    }
  }

  /**
   * The path of a plant file.
   *
   * @throws Refusal if the folder has none of that name
   */
  Path plant(String name) throws IOException {
    if (!plants().contains(name)) {
      throw new Refusal(404, "This folder has no plant file of that name.");
    }
    return folder.resolve(name);
  }

  /** A text as it stands in an editor, whose rain files lie in the folder whatever its own name. */
  PlantText typed(String text) {
    return PlantText.edited(folder.resolve(TYPED), text);
  }

  Version read(String name) throws IOException {
    byte[] bytes = bytes(plant(name));
    return new Version(LineEnds.plain(unmarked(text(bytes))), hash(bytes));
  }

  private static String unmarked(String text) {
    return text.startsWith(MARK) ? text.substring(MARK.length()) : text;
  }

  private static byte[] bytes(Path plant) throws IOException {
    try (InputStream in = Files.newInputStream(plant, LinkOption.NOFOLLOW_LINKS)) {
      byte[] bytes = in.readNBytes(LARGEST + 1);
      if (bytes.length > LARGEST) {
        throw new Refusal(413, "The file is larger than 4 MB.");
      }
      return bytes;
    }
  }

  private static String text(byte[] bytes) {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      throw new Refusal(415, "The file is not text in UTF-8; save it as UTF-8 first.");
    }
  }

  /**
   * Writes a text in place of the one that was read: beside it first, then moved, so that the file
   * is whole at any moment. What an editor does not show stays as it is: the mark, and how each
   * line ends.
   *
   * @param was the version that was read
   * @throws Refusal if the file has changed meanwhile, may not be written, or finds no room
   */
  synchronized Version save(String name, String text, String was) throws IOException {
    Path plant = plant(name);
    byte[] before = bytes(plant);
    if (!hash(before).equals(was)) {
      throw new Refusal(CONFLICT, "The file was changed by another program; nothing is saved.");
    }
    String whole = text(before);
    String mark = whole.startsWith(MARK) ? MARK : "";
    byte[] bytes = encoded(mark + LineEnds.asIn(unmarked(whole), text));
    if (!Files.isWritable(plant)) {
      throw new Refusal(403, name + " is not saved: it is marked as one that may only be read.");
    }
    try {
      replace(plant, bytes);
    } catch (IOException fault) {
      throw FileFault.refusal(name + " is not saved", fault);
    }
    return new Version(text, hash(bytes));
  }

  private void replace(Path plant, byte[] bytes) throws IOException {
    Path part = Files.createTempFile(folder, ".saving-", ".part");
    try {
      Files.write(part, bytes, StandardOpenOption.SYNC, StandardOpenOption.WRITE);
      keepPermissions(plant, part);
      Files.move(part, plant, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  /**
   * The bytes of a text.
   *
   * @throws Refusal if no file can hold it
   */
  static byte[] encoded(String text) {
    ByteBuffer bytes;
    try {
      bytes = StandardCharsets.UTF_8.newEncoder().encode(CharBuffer.wrap(text));
    } catch (CharacterCodingException half) {
      throw new Refusal(
          400, "The text holds half of a sign, which no file can hold; type that place again.");
    }
    if (bytes.remaining() > LARGEST) {
      throw new Refusal(413, "The text is larger than 4 MB.");
    }
    return Arrays.copyOf(bytes.array(), bytes.remaining());
  }

  private static void keepPermissions(Path from, Path to) throws IOException {
    if (from.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      Files.setPosixFilePermissions(to, Files.getPosixFilePermissions(from));
    }
  }

  /**
   * Writes a new file, never over another; its name.
   *
   * @param wanted with or without its ending
   */
  String create(String wanted, String text) throws IOException {
    String plain = wanted.replaceFirst("(?i)\\.ya?ml$", "");
    if (!NEW_NAME.matcher(plain).matches() || DEVICE.matcher(plain).matches()) {
      throw new Refusal(
          400,
          "A name has at most 60 letters, digits, spaces, - and _ and begins with a letter or"
              + " digit.");
    }
    String name = plain + ".yaml";
    byte[] bytes = encoded(text);
    try {
      Path file = Files.createFile(folder.resolve(name));
      fill(file, bytes);
    } catch (FileAlreadyExistsException taken) {
      throw new Refusal(CONFLICT, "There is a file " + name + " already; choose another name.");
    } catch (IOException fault) {
      throw FileFault.refusal(name + " is not made", fault);
    }
    return name;
  }

  /** A file that cannot be filled is taken away again, so that its name stays free. */
  private static void fill(Path file, byte[] bytes) throws IOException {
    try {
      Files.write(file, bytes, StandardOpenOption.SYNC, StandardOpenOption.WRITE);
    } catch (IOException full) {
      Files.deleteIfExists(file);
      throw full;
    }
  }

  private static String hash(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
