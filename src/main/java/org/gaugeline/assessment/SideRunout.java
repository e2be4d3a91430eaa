package org.gaugeline.assessment;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.assembly.Assembly;
import org.gaugeline.mechanics.runout.RunoutJoint;
import org.gaugeline.mechanics.runout.RunoutStack;
import org.gaugeline.reference.OperationKind;
import org.gaugeline.reference.ToolKind;
import org.jspecify.annotations.Nullable;

/**
 * Runout of a disc cutter's sides: every tilt θ of the axis swings the rim by ±θ·D/2, so that the
 * indicator at the side reads θ·D; faces and spacers add their own. The tilts are those of the
 * runout at the tip, as independent random vectors. A slot comes out wider than the disc by the
 * whole reading.
 */
final class SideRunout {
  private SideRunout() {}

  /** The random sum for an assembly; null where the tool is no disc. */
  static @Nullable RunoutStack of(JobContext context, Assembly assembly) {
    if (context.job.tool().kind() != ToolKind.DISC_CUTTER) {
      return null;
    }
    double arm = context.job.tool().diameterM() / 2;
    double own = RunoutStack.sigmaFromP95TirM(context.models.values().discSideTirP95M);
    List<RunoutJoint> sides = new ArrayList<>();
    sides.add(new RunoutJoint(own, 0, arm));
    for (RunoutJoint joint : RunoutModel.joints(context, assembly.holder(), assembly.stickOutM())) {
      sides.add(new RunoutJoint(0, joint.tiltRad(), arm));
    }
    return RunoutStack.of(sides);
  }

  /** Whether it is the width of a slot that the sides make. */
  static boolean makesTheWidth(JobContext context) {
    return context.job.tool().kind() == ToolKind.DISC_CUTTER
        && context.job.operation().kind() == OperationKind.SLOTTING;
  }
}
