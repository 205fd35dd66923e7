package hurdline.web;

import hurdline.web.http.Refusal;
import java.io.IOException;
import java.nio.file.Path;

/** Saves and makes a large plant where files may not grow; a program of its own for a test. */
final class HalfWritten {
  private HalfWritten() {}

  public static void main(String[] args) throws IOException {
    PlantFolder folder = new PlantFolder(Path.of(args[0]));
    PlantFolder.Version was = folder.read("p.yaml");
    String large = "# a line of a plant\n".repeat(50_000);
    try {
      folder.save("p.yaml", large, was.version());
    } catch (Refusal refused) {
      System.out.println(refused.getMessage());
    }
    try {
      folder.create("new", large);
    } catch (Refusal refused) {
      System.out.println(refused.getMessage());
    }
  }
}
