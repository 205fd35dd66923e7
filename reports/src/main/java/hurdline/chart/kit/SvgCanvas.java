package hurdline.chart.kit;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.StringWriter;
import java.util.HashMap;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGGraphics2DIOException;
import org.apache.batik.svggen.SVGIDGenerator;
import org.w3c.dom.DOMImplementation;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * A canvas that becomes SVG text: letters stay letters, ids carry the drawing's name so that many
 * drawings can share one page, and the same drawing gives the same bytes.
 */
public final class SvgCanvas {
  private static final String SVG = "http://www.w3.org/2000/svg";

  /** Java's own, found once: to look for others takes longer than many a drawing. */
  private static final DOMImplementation DOM = dom();

  /**
   * Verdana and DejaVu Sans have the same widths, so that labels keep their room where DejaVu is
   * missing.
   */
  private static final String FAMILIES = "'DejaVu Sans', Verdana, sans-serif";

  private static final double LEAST_SCALE = 0.8;

  /** A hundredth of a unit is less than any screen or printer shows. */
  private static final int DECIMALS = 2;

  private final String name;
  private final int width;
  private final int height;
  private final Document document;
  private final SVGGraphics2D graphics;
  private boolean full;

  public SvgCanvas(String name, int width, int height) {
    this.name = name.replaceAll("[^A-Za-z0-9_-]", "_");
    this.width = width;
    this.height = height;
    this.document = DOM.createDocument(SVG, "svg", null);
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
    context.setComment("");
    context.setPrecision(DECIMALS);
    context.setIDGenerator(new NamedIds(this.name));
    graphics = new EvenLetters(context);
    graphics.setSVGCanvasSize(new Dimension(width, height));
    graphics.setFont(Fonts.of(12));
  }

  public SVGGraphics2D graphics() {
    return graphics;
  }

  /** The graphics, with white behind all that is drawn. */
  public Graphics2D onWhite() {
    graphics.setPaint(Color.WHITE);
    graphics.fill(new Rectangle2D.Double(0, 0, width, height));
    return graphics;
  }

  /** Of all drawings, before there is one. */
  public static FontMetrics metrics(Font font) {
    return EvenLetters.MEASURING.getFontMetrics(font);
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  /** A page scrolls it sooner than it makes it smaller. */
  public SvgCanvas atFullSize() {
    full = true;
    return this;
  }

  /** The finished drawing as one svg element, with its title and text alternative. */
  public String finish(String title, String alternative) {
    Element root = graphics.getRoot();
    root.setAttribute("viewBox", "0 0 " + width + " " + height);
    root.setAttribute("role", "img");
    if (full || width > ChartStyle.widthPx()) {
      // A page that would shrink it to its own width would make its letters too small.
      root.setAttribute("style", "min-width:" + (full ? 1 : LEAST_SCALE) * width + "px");
    }
    root.setAttribute("aria-labelledby", name + ".title " + name + ".desc");
    // Before the defs, so that a reading device meets them first.
    Node first = root.getFirstChild();
    root.insertBefore(text("title", title), first);
    root.insertBefore(text("desc", alternative), first);
    StringWriter out = new StringWriter();
    try {
      graphics.stream(root, out, false, false);
    } catch (SVGGraphics2DIOException e) {
      throw new IllegalStateException("drawing " + name + " could not be written", e);
    }
    String svg = out.toString().replace("\r\n", "\n");
    svg = svg.substring(svg.indexOf("<svg")).replace("<!---->", "").strip() + "\n";
    svg = svg.replace("id=\"genericDefs\"", "id=\"" + name + ".defs\"");
    return svg.replace("&apos;DejaVu Sans&apos;", FAMILIES).replace("'DejaVu Sans'", FAMILIES);
  }

  private Element text(String tag, String content) {
    Element element = document.createElementNS(SVG, tag);
    element.setAttribute("id", name + "." + tag);
    element.appendChild(document.createTextNode(content));
    return element;
  }

  private static DOMImplementation dom() {
    try {
      return DocumentBuilderFactory.newDefaultInstance()
          .newDocumentBuilder()
          .getDOMImplementation();
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("this Java has no XML parser", e);
    }
  }

  /**
   * Measures text by the font's own widths, not by those rounded for some screen, which SVG viewers
   * do not share, and draws hatches line by line.
   */
  private static final class EvenLetters extends SVGGraphics2D {
    private static final Stroke FINE =
        new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
    private static final Graphics2D MEASURING = measuring();

    EvenLetters(SVGGeneratorContext context) {
      super(context, false);
    }

    private EvenLetters(EvenLetters original) {
      super(original);
    }

    private static Graphics2D measuring() {
      Fonts.of(12);
      Graphics2D graphics = new BufferedImage(1, 1, BufferedImage.TYPE_INT_ARGB).createGraphics();
      graphics.setRenderingHint(
          RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
      graphics.setRenderingHint(
          RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
      return graphics;
    }

    @Override
    public Graphics create() {
      return new EvenLetters(this);
    }

    @Override
    public void draw(Shape shape) {
      super.draw(DrawingReach.of(shape));
    }

    @Override
    public void drawString(String text, float x, float y) {
      if (DrawingReach.has(x, y)) {
        super.drawString(text, x, y);
      }
    }

    @Override
    public void fill(Shape wanted) {
      Shape shape = DrawingReach.of(wanted);
      if (getPaint() instanceof Hatch hatch) {
        Stroke stroke = getStroke();
        setPaint(hatch.ground());
        super.fill(shape);
        setPaint(hatch.ink());
        setStroke(FINE);
        draw(hatch.kind(), shape);
        setStroke(stroke);
        setPaint(hatch);
      } else {
        super.fill(shape);
      }
    }

    private void draw(Hatch.Kind kind, Shape shape) {
      Rectangle2D box = shape.getBounds2D();
      Shape clip = getClip();
      if (!shape.contains(box)) {
        clip(shape);
      }
      draw(HatchLines.of(kind, box));
      setClip(clip);
    }

    @Override
    public FontMetrics getFontMetrics(Font font) {
      return MEASURING.getFontMetrics(font);
    }

    @Override
    public FontRenderContext getFontRenderContext() {
      return new FontRenderContext(new AffineTransform(), true, true);
    }
  }

  private static final class NamedIds extends SVGIDGenerator {
    private final String name;
    private final Map<String, Integer> used = new HashMap<>();

    NamedIds(String name) {
      this.name = name;
    }

    @Override
    public String generateID(String prefix) {
      return name + "." + prefix + used.merge(prefix, 1, Integer::sum);
    }
  }
}
