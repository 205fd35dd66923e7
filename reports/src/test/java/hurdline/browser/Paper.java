package hurdline.browser;

/** Sheets that pages are printed on. */
public enum Paper {
  LETTER(8.5, 11),
  A4(210 / 25.4, 297 / 25.4);

  private final double widthIn;
  private final double heightIn;

  Paper(double widthIn, double heightIn) {
    this.widthIn = widthIn;
    this.heightIn = heightIn;
  }

  public double widthIn() {
    return widthIn;
  }

  public double heightIn() {
    return heightIn;
  }
}
