package hurdline.chart.kit;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The one font of all charts, brought along.
 *
 * <p>A headless Java on a machine without fonts or fontconfig cannot even measure text. So the font
 * is unpacked and AWT is told by a small file of its own where to find it, before AWT is touched;
 * text then measures alike on all machines.
 */
public final class Fonts {
  private static final String FILE = "DejaVuSans.ttf";
  private static final String FAMILY = "DejaVu Sans";
  private static final boolean READY = prepare();

  private Fonts() {}

  /** The font at a size in pixels. */
  public static Font of(int size) {
    return READY ? new Font(FAMILY, Font.PLAIN, size) : null;
  }

  /** A text cut so that it has room; what it is in full stands in a table. */
  public static String fitted(String text, int size, double room) {
    String cut = text;
    while (cut.length() > 4 && SvgCanvas.metrics(of(size)).stringWidth(cut) > room) {
      cut = cut.substring(0, cut.length() - 2).stripTrailing() + "…";
    }
    return cut;
  }

  public static Font bold(int size) {
    return of(size).deriveFont(Font.BOLD);
  }

  private static boolean prepare() {
    System.setProperty("java.awt.headless", "true");
    try {
      Path folder = Files.createTempDirectory("hurdline-font");
      Path font = folder.resolve(FILE);
      Path config = folder.resolve("fontconfig.properties");
      // Deleted in reverse order of registration, so the folder is empty when its turn comes.
      for (Path path : new Path[] {folder, font, config}) {
        path.toFile().deleteOnExit();
      }
      try (InputStream in = Fonts.class.getResourceAsStream(FILE)) {
        Files.copy(in, font);
      }
      Files.writeString(config, fontConfig(font.toFile()));
      System.setProperty("sun.awt.fontconfig", config.toString());
      GraphicsEnvironment.getLocalGraphicsEnvironment()
          .registerFont(Font.createFont(Font.TRUETYPE_FONT, font.toFile()));
      return true;
    } catch (IOException e) {
      throw new UncheckedIOException(
          "the charts' font could not be unpacked: " + e.getMessage(), e);
    } catch (FontFormatException e) {
      throw new IllegalStateException("the charts' font is damaged", e);
    }
  }

  private static String fontConfig(File font) {
    return String.join(
        "\n",
        "version=1",
        "allfonts.latin-1=" + FAMILY,
        "sequence.allfonts=latin-1",
        "filename.DejaVu_Sans=" + font.getPath(),
        "");
  }
}
