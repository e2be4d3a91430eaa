package org.gaugeline.drawing;

import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import org.gaugeline.assessment.StabilityChart;
import org.gaugeline.assessment.StabilityChart.Point;
import org.gaugeline.job.Job;
import org.gaugeline.quantity.TextUnits;
import org.gaugeline.quantity.UnitSuffix;

/**
 * A stability chart as SVG: depth over spindle speed, the limit with its band, the asked cut, the
 * best speeds, and the same in words for those who do not see it.
 */
public final class StabilityDiagram {
  /** Where lines end that go up without an end, in heights of the plot. */
  private static final double FAR_ABOVE = 10;

  private static final int WIDTH = 860;
  private static final int HEIGHT = 520;
  private static final int LEFT = 80;
  private static final int RIGHT = 30;
  private static final int TOP = 56;
  private static final int BOTTOM = 100;
  private static final int MARKS = 8;
  private static final double HEADROOM = 1.25;
  private static final double SHOWN_SHARE = 0.85;
  private static final int DIGITS = 4;

  private final StabilityChart chart;
  private final Job job;
  private final UnitSuffix unit;
  private final RoundAxis speed;
  private final RoundAxis depth;
  private final StringBuilder svg = new StringBuilder(32 * 1024);

  private StabilityDiagram(StabilityChart chart, Job job) {
    this.chart = chart;
    this.job = job;
    this.unit = job.textUnits() == TextUnits.INCH ? UnitSuffix.IN : UnitSuffix.MM;
    List<Point> boundary = chart.boundary();
    this.speed =
        RoundAxis.within(rpm(boundary.get(0)), rpm(boundary.get(boundary.size() - 1)), MARKS);
    this.depth = RoundAxis.covering(0, highest(), MARKS);
  }

  /**
   * Draws a chart.
   *
   * @param chart what to draw
   * @param job whose units of text the drawing takes, and whose label it bears
   * @return an SVG document
   */
  public static String of(StabilityChart chart, Job job) {
    return new StabilityDiagram(chart, job).drawn();
  }

  /** Most of the boundary and the asked cut are shown; pockets that rise far above are cut off. */
  private double highest() {
    double[] finite =
        DoubleStream.concat(
                chart.boundary().stream().mapToDouble(Point::depthM),
                chart.band().p05().stream().mapToDouble(Point::depthM))
            .filter(Double::isFinite)
            .sorted()
            .toArray();
    double most = finite.length == 0 ? 0 : finite[(int) (SHOWN_SHARE * (finite.length - 1))];
    return HEADROOM * unit.fromSi(Math.max(most, Math.max(chart.cut().depthM(), 1e-4)));
  }

  private String drawn() {
    text(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" width=\"%d\" height=\"%d\""
            + " role=\"img\" aria-labelledby=\"title desc\" font-family=\"sans-serif\""
            + " font-size=\"13\">",
        WIDTH, HEIGHT, WIDTH, HEIGHT);
    svg.append("<title id=\"title\">").append(escaped(title())).append("</title>");
    svg.append("<desc id=\"desc\">").append(escaped(described())).append("</desc>");
    text("<rect width=\"%d\" height=\"%d\" fill=\"#ffffff\"/>", WIDTH, HEIGHT);
    label(WIDTH / 2.0, 28, "middle", "font-size=\"16\"", title());
    axes();
    text(
        "<clipPath id=\"plot\"><rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\"/></clipPath>",
        LEFT, TOP, WIDTH - LEFT - RIGHT, HEIGHT - TOP - BOTTOM);
    // What lies above the plot is cut off, not bent along its edge.
    svg.append("<g clip-path=\"url(#plot)\">");
    band();
    boundary();
    svg.append("</g>");
    best();
    asked();
    legend();
    return svg.append("</svg>\n").toString();
  }

  private String title() {
    return "Stable depth of cut over spindle speed"
        + (job.label().isEmpty() ? "" : ": " + job.label());
  }

  private String described() {
    StabilityChart.Cut cut = chart.cut();
    StringBuilder said = new StringBuilder(400);
    said.append("Speeds from ")
        .append(number(speed.from()))
        .append(" to ")
        .append(number(speed.to()))
        .append(" 1/min. At any of them stable down to ")
        .append(length(chart.guaranteed().depthM()))
        .append(". The asked cut of ")
        .append(length(cut.depthM()))
        .append(" at ")
        .append(number(UnitSuffix.RPM.fromSi(cut.spindleRadPerS())))
        .append(" 1/min, where the limit is ")
        .append(length(cut.limit().depthM()))
        .append(", is stable with a probability of ")
        .append(number(100 * cut.probabilityStable()))
        .append(" %. ");
    if (chart.best().isEmpty()) {
      said.append("No better speed is known.");
    } else {
      said.append("Best speeds: ");
      for (int i = 0; i < chart.best().size(); i++) {
        Point point = chart.best().get(i);
        said.append(i == 0 ? "" : "; ")
            .append(number(rpm(point)))
            .append(" 1/min with ")
            .append(length(point.depthM()));
      }
      said.append('.');
    }
    return said.append(" Response of the tip: ")
        .append(chart.measured() ? "measured." : "predicted.")
        .toString();
  }

  private void axes() {
    double bottom = HEIGHT - BOTTOM;
    for (double mark = depth.firstMark(); depth.holds(mark); mark += depth.step()) {
      text("<path d=\"M%s %sH%d\" stroke=\"#dddddd\"/>", LEFT, coordinate(y(mark)), WIDTH - RIGHT);
      label(LEFT - 8, y(mark) + 4, "end", "", number(mark));
    }
    for (double mark = speed.firstMark(); speed.holds(mark); mark += speed.step()) {
      text("<path d=\"M%s %dV%s\" stroke=\"#dddddd\"/>", coordinate(x(mark)), TOP, bottom);
      label(x(mark), bottom + 18, "middle", "", number(mark));
    }
    text(
        "<path d=\"M%d %dV%sH%d\" fill=\"none\" stroke=\"#000000\"/>",
        LEFT, TOP, bottom, WIDTH - RIGHT);
    label((LEFT + WIDTH - RIGHT) / 2.0, bottom + 40, "middle", "", "Spindle speed, 1/min");
    double middle = (TOP + bottom) / 2;
    label(
        22,
        middle,
        "middle",
        "transform=\"rotate(-90 22 " + coordinate(middle) + ")\"",
        "Axial depth of cut, " + unit.label());
  }

  private void band() {
    StringBuilder path = new StringBuilder();
    List<Point> low = chart.band().p05();
    List<Point> high = chart.band().p95();
    for (int i = 0; i < low.size(); i++) {
      append(path, low.get(i), i == 0);
    }
    for (int i = high.size() - 1; i >= 0; i--) {
      append(path, high.get(i), false);
    }
    text(
        "<path id=\"band\" d=\"%sZ\" fill=\"#9ecae1\" fill-opacity=\"0.45\" stroke=\"none\"/>",
        path);
  }

  private void boundary() {
    StringBuilder path = new StringBuilder();
    for (int i = 0; i < chart.boundary().size(); i++) {
      append(path, chart.boundary().get(i), i == 0);
    }
    text(
        "<path id=\"boundary\" d=\"%s\" fill=\"none\" stroke=\"#08519c\" stroke-width=\"2\"/>",
        path);
  }

  private void append(StringBuilder path, Point point, boolean first) {
    path.append(first ? 'M' : 'L')
        .append(coordinate(x(rpm(point))))
        .append(' ')
        .append(coordinate(height(depth.share(unit.fromSi(point.depthM()), FAR_ABOVE))));
  }

  private void best() {
    for (Point point : chart.best()) {
      double x = x(rpm(point));
      double y = y(unit.fromSi(point.depthM()));
      text(
          "<path class=\"best\" d=\"M%s %sl-6 -10h12Z\" fill=\"#006d2c\"><title>%s</title></path>",
          coordinate(x), coordinate(y), number(rpm(point)) + " 1/min, " + length(point.depthM()));
    }
  }

  private void asked() {
    double x = x(UnitSuffix.RPM.fromSi(chart.cut().spindleRadPerS()));
    double y = y(unit.fromSi(chart.cut().depthM()));
    text(
        "<circle id=\"asked\" cx=\"%s\" cy=\"%s\" r=\"5\" fill=\"#a50f15\"/>",
        coordinate(x), coordinate(y));
    boolean leftHalf = x < WIDTH / 2.0;
    label(x + (leftHalf ? 9 : -9), y - 7, leftHalf ? "start" : "end", "fill=\"#a50f15\"", "asked");
  }

  private void legend() {
    double y = HEIGHT - 26.0;
    text("<path d=\"M%d %sh24\" stroke=\"#08519c\" stroke-width=\"2\"/>", LEFT, coordinate(y));
    label(LEFT + 30, y + 4, "start", "", "limit (" + chart.method().id() + ")");
    text(
        "<rect x=\"%d\" y=\"%s\" width=\"24\" height=\"12\" fill=\"#9ecae1\" fill-opacity=\"0.45\"/>",
        LEFT + 240, coordinate(y - 6));
    label(LEFT + 270, y + 4, "start", "", "5 to 95 % of the spread");
    text("<path d=\"M%d %sl-6 -10h12Z\" fill=\"#006d2c\"/>", LEFT + 456, coordinate(y + 5));
    label(LEFT + 468, y + 4, "start", "", "best speeds");
  }

  private void label(double x, double y, String anchor, String attributes, String words) {
    text(
        "<text x=\"%s\" y=\"%s\" text-anchor=\"%s\" %s>%s</text>",
        coordinate(x), coordinate(y), anchor, attributes, escaped(words));
  }

  private double x(double rpm) {
    return LEFT + (WIDTH - LEFT - RIGHT) * speed.share(rpm);
  }

  private double y(double depthInUnit) {
    return height(depth.share(depthInUnit));
  }

  private static double height(double share) {
    return HEIGHT - BOTTOM - (HEIGHT - TOP - BOTTOM) * share;
  }

  private String length(double depthM) {
    return Double.isInfinite(depthM) ? "any depth" : job.textUnits().length(depthM);
  }

  private static double rpm(Point point) {
    return UnitSuffix.RPM.fromSi(point.spindleRadPerS());
  }

  private static String number(double value) {
    return TextUnits.number(value, DIGITS);
  }

  private static String coordinate(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  private void text(String format, Object... values) {
    svg.append(String.format(Locale.ROOT, format, values));
  }

  private static String escaped(String words) {
    return words
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
