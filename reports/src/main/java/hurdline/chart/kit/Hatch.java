package hurdline.chart.kit;

import java.awt.Color;
import java.awt.Paint;
import java.awt.PaintContext;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.ColorModel;

/** A colour with a pattern on it, so that a print in grey still tells neighbours apart. */
public record Hatch(Color ground, Color ink, Kind kind) implements Paint {
  /** What is drawn on the ground, on a lattice that all shapes of a picture share. */
  public enum Kind {
    RISING,
    FALLING,
    LEVEL,
    UPRIGHT,
    CROSSED,
    DOTTED
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
