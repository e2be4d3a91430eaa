package org.gaugeline.assessment;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.assembly.Assembly;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.mechanics.beam.ElasticJoint;
import org.gaugeline.reference.Word;

/**
 * How far out a plain round bar may stand before the asked axial depth is more than it bears at any
 * speed: a bar as thick as the stack is at its most slender place, straight from the spindle to the
 * cutting edges.
 *
 * <p>The bar stands on the stack's own spindle joint and has the damping of its tip, both at the
 * median; its overhang counts from the gauge plane. What the stack has thicker or thinner elsewhere
 * the bar lacks, so that it tells where bars of that thickness end and not what the stack itself
 * bears. Always predicted, also where the tip was measured.
 *
 * @param ofTool whether the most slender place is in the tool, not in the body
 * @param diameterM of the bars
 * @param overhangM of the stack as it stands: gauge plane to the cutting edges
 * @param dampingRatio of the bars' modes
 * @param depthM asked axial depth
 * @param shortestPerDiameter overhang over diameter from which is looked
 * @param longestPerDiameter overhang over diameter up to which is looked
 * @param bars in the order of their words
 */
public record Overhangs(
    boolean ofTool,
    double diameterM,
    double overhangM,
    double dampingRatio,
    double depthM,
    double shortestPerDiameter,
    double longestPerDiameter,
    List<Bar> bars) {

  /** Where a bar falls short of the asked depth. */
  public enum Loses implements Word {
    /** At an overhang that was found. */
    WITHIN_RANGE("within-range"),
    /** Already at the shortest that was looked at. */
    BEFORE_RANGE("before-range"),
    /** Not up to the longest that was looked at. */
    BEYOND_RANGE("beyond-range");

    private final String id;

    Loses(String id) {
      this.id = id;
    }

    @Override
    public String id() {
      return id;
    }
  }

  /**
   * One bar.
   *
   * @param losesAtM overhang from which it bears less than the asked depth; 0 where the shortest
   *     that was looked at does, +∞ where the longest still bears it
   * @param guaranteedM depth stable at any speed at the stack's overhang; +∞ where none chatters
   */
  public record Bar(PlainBar bar, double losesAtM, double guaranteedM) {
    /** Where it falls short. */
    public Loses loses() {
      if (losesAtM == 0) {
        return Loses.BEFORE_RANGE;
      }
      return Double.isInfinite(losesAtM) ? Loses.BEYOND_RANGE : Loses.WITHIN_RANGE;
    }
  }

  /** The bars for a cut. */
  static Overhangs of(JobContext context, ChatterCut cut, Body body, Assembly assembly) {
    HolderBody holder = body.holder();
    SlenderPart slender = SlenderPart.of(context.job.tool(), holder, assembly.stickOutM());
    double diameter = slender.diameterM();
    double damping = StackDynamics.of(context, body, assembly).lowestDampingRatio();
    ElasticJoint joint =
        new ElasticJoint(Stack.translation(holder), Stack.rotation(context, holder).median());
    double shortest = context.practice("plainBarLeastPerDiameter");
    double longest = context.practice("plainBarMostPerDiameter");
    double asked = context.job.operation().axialDepthM();
    List<Bar> bars = new ArrayList<>();
    for (PlainBar bar : PlainBar.values()) {
      BarDepth depth =
          new BarDepth(
              joint,
              diameter,
              bar.material(context.models),
              bar.room(context.models.data()),
              damping,
              cut.undamped());
      bars.add(
          new Bar(
              bar,
              depth.losesAtM(asked, shortest * diameter, longest * diameter),
              depth.guaranteedM(assembly.gaugeLengthM())));
    }
    return new Overhangs(
        slender.ofTool(),
        diameter,
        assembly.gaugeLengthM(),
        damping,
        asked,
        shortest,
        longest,
        List.copyOf(bars));
  }

  /** What a bar bears at the stack's overhang over the asked depth; +∞ where none chatters. */
  public double margin(Bar bar) {
    return bar.guaranteedM / depthM;
  }
}
