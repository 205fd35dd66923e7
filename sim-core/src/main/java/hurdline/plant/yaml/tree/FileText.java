package hurdline.plant.yaml.tree;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The bytes of a plant file or a file that it names, and why they may not be text. */
public final class FileText {
  private static final int LARGEST = 4 << 20;

  /**
   * The YAML parser takes time by the square of a word's length: 7 s for one of 2 MB, 20 ms for one
   * of this.
   */
  private static final int LONGEST_LINE = 100_000;

  private static final String PLANT_FILE = "a plant file: YAML text in UTF-8 of at most 4 MB";

  private FileText() {}

  /** All bytes of the file; a file that is too large is refused before it is read. */
  public static byte[] bytes(Path file) {
    if (!Files.exists(file)) {
      throw refuse("there is no such file", "the path of a plant file");
    }
    if (Files.isDirectory(file)) {
      throw refuse("it is a directory", "a plant file in it");
    }
    if (!Files.isRegularFile(file)) {
      throw refuse("it is a pipe, a device or a socket", "a file on a disk");
    }
    if (!Files.isReadable(file)) {
      throw refuse("it may not be read", "a file with read permission");
    }
    try (InputStream in = Files.newInputStream(file)) {
      // Some files have no size to ask for, so the reading itself stops at the limit too.
      byte[] bytes =
          Files.size(file) > LARGEST ? new byte[LARGEST + 1] : in.readNBytes(LARGEST + 1);
      if (bytes.length > LARGEST) {
        throw refuse("it is larger than 4 MB", PLANT_FILE);
      }
      return bytes;
    } catch (IOException e) {
      throw refuse("it could not be read (" + e.getClass().getSimpleName() + ")", PLANT_FILE);
    }
  }

  public static String text(byte[] bytes) {
    refuseMarks(bytes);
    try {
      return text(StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
    } catch (CharacterCodingException e) {
      throw refuse("it is not text in UTF-8", "the file saved as UTF-8");
    }
  }

  /** The text without a byte-order mark: editors put one there, and their users never see it. */
  public static String text(String read) {
    String text = read.startsWith("\uFEFF") ? read.substring(1) : read;
    if (text.length() > LARGEST) {
      throw refuse("it is larger than 4 MB", PLANT_FILE);
    }
    if (text.indexOf('\0') >= 0) {
      throw refuse("it is a binary file", PLANT_FILE);
    }
    if (text.isBlank()) {
      throw refuse("it is empty", "a plant file that begins with \"hurdline: 1\"");
    }
    refuseLongLines(text);
    return text;
  }

  private static void refuseLongLines(String text) {
    int begin = 0;
    for (int at = 0; at < text.length(); at++) {
      begin = text.charAt(at) == '\n' || text.charAt(at) == '\r' ? at + 1 : begin;
      if (at - begin >= LONGEST_LINE) {
        int line = 1 + (int) text.substring(0, begin).lines().count();
        throw new UnreadableException(
            new SourcePosition(line, 1),
            "the line is longer than 100,000 characters",
            "lines that a person can read");
      }
    }
  }

  private static void refuseMarks(byte[] bytes) {
    boolean utf16 = bytes.length > 1 && (bytes[0] & 0xff) + (bytes[1] & 0xff) == 0xff + 0xfe;
    boolean starts = utf16 && ((bytes[0] & 0xff) == 0xff || (bytes[0] & 0xff) == 0xfe);
    if (starts) {
      throw refuse(
          "it begins with a byte-order mark of UTF-16", "the file saved as UTF-8 without one");
    }
  }

  /** SHA-256, in hex. */
  public static String hash(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  private static UnreadableException refuse(String said, String expected) {
    return new UnreadableException(SourcePosition.NOWHERE, said, expected);
  }
}
