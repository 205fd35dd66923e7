package hurdline.service;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** The plants to start from; they are packed with the program. */
public enum Template {
  SMALL("small.yaml", "one short line with a mill"),
  SHARED(
      "sweetgum-bend.yaml",
      "stalks and seed cotton in turn through one gin building, with options"),
  STALK("stalk.yaml", "a year of stalks with fields, trucks and two shifts");

  private final String file;
  private final String description;

  Template(String file, String description) {
    this.file = file;
    this.description = description;
  }

  /** The name of the file that it becomes. */
  public String file() {
    return file;
  }

  public String description() {
    return description;
  }

  public String text() throws IOException {
    try (InputStream in = Template.class.getResourceAsStream("/line-configs/" + file)) {
      if (in == null) {
        throw new IllegalStateException(
            "the plant file " + file + " is not packed with the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
