package hurdline.browser;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** The sheets of a printed page, read back by their text. */
public final class Sheets {
  private final List<String> texts = new ArrayList<>();
  private final List<String> beyondEdge = new ArrayList<>();
  private double largestPt;

  public Sheets(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (int sheet = 1; sheet <= document.getNumberOfPages(); sheet++) {
        float width = document.getPage(sheet - 1).getMediaBox().getWidth();
        PDFTextStripper reader = new Reader(width);
        reader.setStartPage(sheet);
        reader.setEndPage(sheet);
        texts.add(reader.getText(document));
      }
    }
  }

  /** Numbers, from 1, of the sheets on which a text stands. */
  public List<Integer> with(String text) {
    List<Integer> found = new ArrayList<>();
    for (int sheet = 0; sheet < texts.size(); sheet++) {
      if (texts.get(sheet).contains(text)) {
        found.add(sheet + 1);
      }
    }
    return found;
  }

  public int count() {
    return texts.size();
  }

  /** Letters that stand over the right edge of their sheet. */
  public List<String> beyondEdge() {
    return beyondEdge;
  }

  /**
   * Height of the largest letters, in points; a browser makes all smaller for a table that is too
   * wide.
   */
  public double largestPt() {
    return largestPt;
  }

  private final class Reader extends PDFTextStripper {
    private final float width;

    Reader(float width) {
      this.width = width;
    }

    @Override
    protected void processTextPosition(TextPosition text) {
      if (text.getX() + text.getWidth() > width) {
        beyondEdge.add(text.getUnicode());
      }
      largestPt = Math.max(largestPt, text.getFontSizeInPt());
      super.processTextPosition(text);
    }
  }
}
