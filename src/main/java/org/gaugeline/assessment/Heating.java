package org.gaugeline.assessment;

import org.gaugeline.assembly.HolderBody;
import org.gaugeline.mechanics.grip.ShrinkFit;
import org.gaugeline.reference.GripModel;
import org.gaugeline.reference.ReferenceData;

/** How hot a shrink bore must get. */
final class Heating {
  private Heating() {}

  static double insertionRiseK(JobContext context, Body body) {
    HolderBody holder = body.holder();
    if (holder.family().gripModel() != GripModel.SHRINK) {
      return Double.NaN;
    }
    ReferenceData data = context.models.data();
    double given = holder.ratings().interferenceM();
    double interference =
        Double.isNaN(given)
            ? data.practice("shrinkInterferenceBaseM")
                + data.practice("shrinkInterferenceSlope") * holder.boreM()
            : given;
    return new ShrinkFit(
            holder.boreM(),
            body.noseDiameterM(),
            context.models.elasticSteel(),
            context.models.elastic(context.job.tool().solid()))
        .insertionTemperatureRiseK(interference, data.practice("shrinkReleaseClearanceM"));
  }
}
