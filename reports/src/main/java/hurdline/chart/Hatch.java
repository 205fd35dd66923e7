package hurdline.chart;

import java.awt.Color;
import java.awt.Paint;
import java.awt.PaintContext;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.ColorModel;
import java.util.Locale;

/** A colour with a pattern on it, so that a print in grey still tells neighbours apart. */
record Hatch(Color ground, Color ink, Kind kind) implements Paint {
  /** The pattern's figure, drawn in a tile of eight units. */
  enum Kind {
    RISING("M-2,2 l4,-4 M0,8 l8,-8 M6,10 l4,-4"),
    FALLING("M-2,6 l4,4 M0,0 l8,8 M6,-2 l4,4"),
    LEVEL("M0,2 h8 M0,6 h8"),
    UPRIGHT("M2,0 v8 M6,0 v8"),
    CROSSED("M0,0 l8,8 M8,0 l-8,8"),
    DOTTED("M1.5,2.5 h2 M5.5,6.5 h2");

    private final String path;

    Kind(String path) {
      this.path = path;
    }

    String path() {
      return path;
    }
  }

  static String hex(Color color) {
    return String.format(Locale.ROOT, "#%06x", color.getRGB() & 0xffffff);
  }

  /** Names the pattern in the drawing; equal hatches have equal names. */
  String key() {
    return kind.name().toLowerCase(Locale.ROOT) + hex(ground).substring(1);
  }

  /** Only the SVG writer draws hatches; any other canvas gets the plain colour. */
  @Override
  public PaintContext createContext(
      ColorModel model,
      Rectangle device,
      Rectangle2D user,
      AffineTransform transform,
      RenderingHints hints) {
    return ground.createContext(model, device, user, transform, hints);
  }

  @Override
  public int getTransparency() {
    return OPAQUE;
  }
}
