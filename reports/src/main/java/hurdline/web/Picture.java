package hurdline.web;

import hurdline.chart.kit.Chart;
import java.nio.charset.StandardCharsets;
import java.util.Base64;

/**
 * A drawing as a picture: nothing in it can become a part of the page.
 *
 * @param source the picture itself, as an address
 */
record Picture(String title, String alternative, String source) {
  static Picture of(Chart chart) {
    byte[] bytes = chart.svg().getBytes(StandardCharsets.UTF_8);
    String source = "data:image/svg+xml;base64," + Base64.getEncoder().encodeToString(bytes);
    return new Picture(chart.title(), chart.alternative(), source);
  }
}
