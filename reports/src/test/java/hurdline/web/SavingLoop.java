package hurdline.web;

import java.io.IOException;
import java.nio.file.Path;

/** Saves two texts in turn until it is killed; a program of its own for a test. */
final class SavingLoop {
  private SavingLoop() {}

  static String text(int turn) {
    return ("# text " + turn + " of a plant\n").repeat(20_000);
  }

  public static void main(String[] args) throws IOException {
    PlantFolder folder = new PlantFolder(Path.of(args[0]));
    PlantFolder.Version version = folder.read("p.yaml");
    System.out.println("saving");
    for (int turn = 0; true; turn++) {
      version = folder.save("p.yaml", text(turn % 2), version.version());
    }
  }
}
