package org.gaugeline.assessment;

import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.ProfileSection;
import org.gaugeline.job.Job;

/**
 * The most slender place of a stack between spindle face and cutting edges: where the distance to
 * the tip over the diameter there is largest. Flutes do not count, nor does the body of a cutter on
 * an arbor. Both ends of each section are looked at, between which that ratio has no peak.
 *
 * @param ofTool whether it is in the tool
 * @param diameterM diameter there
 * @param perDiameter distance to the tip over it
 */
record SlenderPart(boolean ofTool, double diameterM, double perDiameter) {

  static SlenderPart of(Job.Tool tool, HolderBody holder, double stickOutM) {
    double toTip = holder.projectionM() + stickOutM;
    SlenderPart most = new SlenderPart(false, Double.POSITIVE_INFINITY, 0);
    for (ProfileSection section : holder.sections()) {
      most = most.orAt(false, toTip, section.startDiameterM());
      toTip -= section.lengthM();
      most = most.orAt(false, toTip, section.endDiameterM());
    }
    if (tool.bored()) {
      return most;
    }
    double neckM = Math.min(tool.neckLengthM(), stickOutM);
    if (neckM > tool.fluteLengthM()) {
      most = most.orAt(true, neckM, tool.neckDiameterM());
    }
    return stickOutM > Math.max(neckM, tool.fluteLengthM())
        ? most.orAt(true, stickOutM, tool.shankDiameterM())
        : most;
  }

  private SlenderPart orAt(boolean inTool, double toTipM, double diameterHereM) {
    double here = toTipM / diameterHereM;
    return here > perDiameter ? new SlenderPart(inTool, diameterHereM, here) : this;
  }
}
