package hurdline.command;

import java.nio.file.Path;

/** A path as it can be typed or pasted into a shell. */
final class ShellWord {
  private ShellWord() {}

  /** In quotes where a blank or another sign would part or change it. */
  static String of(Path path) {
    String text = path.toString();
    return text.matches("[\\p{L}\\p{N}_./\\\\:@%+-]+") ? text : "\"" + text + "\"";
  }
}
