package hurdline.chart.kit;

import hurdline.measure.State;
import java.awt.Color;
import java.awt.Paint;

/**
 * Colours that colour-blind readers tell apart, ordered for contrast between neighbours, all but
 * two with patterns for prints in grey. Machine states are not coloured like a traffic light: a
 * starved machine is no fault of it.
 *
 * @see "Okabe and Ito, Color universal design (2008), for the eight colours; from memory"
 */
public final class Palette {
  public static final Color INK = new Color(0x222222);
  public static final Color GRID = new Color(0xdddddd);
  public static final Color BLUE = new Color(0x0072b2);
  public static final Color SKY = new Color(0x56b4e9);
  public static final Color ORANGE = new Color(0xe69f00);
  public static final Color YELLOW = new Color(0xf0e442);
  public static final Color GREEN = new Color(0x009e73);
  public static final Color VERMILLION = new Color(0xd55e00);
  static final Color PURPLE = new Color(0xcc79a7);

  private static final Paint[] SERIES = {
    BLUE,
    new Hatch(ORANGE, INK, Hatch.Kind.RISING),
    new Hatch(GREEN, Color.WHITE, Hatch.Kind.UPRIGHT),
    new Hatch(YELLOW, INK, Hatch.Kind.DOTTED),
    new Hatch(VERMILLION, Color.WHITE, Hatch.Kind.LEVEL),
    new Hatch(SKY, INK, Hatch.Kind.FALLING),
    PURPLE,
    new Hatch(Color.WHITE, INK, Hatch.Kind.CROSSED),
  };

  private Palette() {}

  static int seriesCount() {
    return SERIES.length;
  }

  /** The paint of the n-th series of a stack, from 0. */
  public static Paint series(int n) {
    return SERIES[n % SERIES.length];
  }

  public static Paint state(State state) {
    return switch (state) {
      case FULL_RATE -> BLUE;
      case SLOWED -> new Hatch(SKY, Color.WHITE, Hatch.Kind.RISING);
      case BLOCKED -> new Hatch(VERMILLION, Color.WHITE, Hatch.Kind.UPRIGHT);
      case STARVED -> new Hatch(YELLOW, INK, Hatch.Kind.FALLING);
      case CHANGING -> new Hatch(PURPLE, INK, Hatch.Kind.DOTTED);
      case DOWN -> INK;
      case PLANNED -> new Hatch(Color.LIGHT_GRAY, INK, Hatch.Kind.CROSSED);
      case UNCREWED -> Color.LIGHT_GRAY;
      case CHANGEOVER -> new Hatch(Color.WHITE, INK, Hatch.Kind.LEVEL);
      case UNUSED -> Color.WHITE;
    };
  }
}
