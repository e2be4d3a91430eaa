package org.gaugeline.assessment;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.assembly.GivenStack;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.job.Assumption;
import org.gaugeline.job.StockEntry.InlineHolder;
import org.gaugeline.reference.ClampingFamily;
import org.gaugeline.reference.ColletSize;
import org.gaugeline.reference.GripModel;
import org.jspecify.annotations.Nullable;

/** What was left out of components in the caller's own words, and what is reckoned with instead. */
final class ComponentEstimates {
  private final JobContext context;
  private final List<Assumption> made = new ArrayList<>();

  private ComponentEstimates(JobContext context) {
    this.context = context;
  }

  /**
   * Everything that was assumed of a given assembly.
   *
   * @param saysStickOut whether it was said how far the tool stands out
   */
  static List<Assumption> of(
      JobContext context, GivenStack.Built built, Appraisal appraisal, boolean saysStickOut) {
    ComponentEstimates estimates = new ComponentEstimates(context);
    estimates.made.addAll(built.assumptions());
    if (!saysStickOut) {
      double out = appraisal.assembly().stickOutM();
      estimates.add("/assembly/stickOutMm", out, "shortest-that-clears", "plane-geometry");
    }
    for (GivenStack.Placed placed : built.placed()) {
      HolderBody body = placed.body();
      boolean holds =
          placed.kind() == GivenStack.Kind.HOLDER || placed.kind() == GivenStack.Kind.EXTENSION;
      if (placed.own() && body != null && holds) {
        estimates.nose(placed.pointer() + "/", placed.details(), body);
        estimates.rear(placed, body, appraisal);
      }
    }
    return List.copyOf(estimates.made);
  }

  private void nose(String at, InlineHolder said, HolderBody body) {
    ClampingFamily family = body.family();
    assume(said.runoutTirM(), at + "runoutUm", family.tipTirM().p95(), family.sourceKey());
    assume(
        said.maxSpindleSpeedRadPerS(),
        at + "maxSpindleSpeedRpm",
        SpeedLimits.familyCeilingRadPerS(context, body),
        family.sourceKey());
    ColletSize collet = body.colletSize();
    if (collet != null) {
      double usual = collet.nutTorqueNm().median();
      assume(said.nutTorqueNm(), at + "nutTorqueNm", usual, collet.sourceKey());
    } else if (context.arbor != null && family.gripModel() == GripModel.ARBOR) {
      double usual = context.arbor.screwTorqueNm().median();
      assume(said.nutTorqueNm(), at + "nutTorqueNm", usual, context.arbor.sourceKey());
    }
    if (family.gripModel() == GripModel.SHRINK) {
      Values values = context.models.values();
      double usual =
          values.shrinkInterferenceBaseM.median()
              + values.shrinkInterferenceSlope.median() * context.gripped.diameterM();
      assume(said.interferenceM(), at + "interferenceUm", usual, values.shrinkBasis);
    }
    double damping = context.models.data().practice("dampingRatio") * family.dampingFactor();
    assume(said.tested().dampingRatio(), at + "dampingRatio", damping, "dynamics-memory");
  }

  /** The joint behind it, and the balance of a body in one piece. */
  private void rear(GivenStack.Placed placed, HolderBody body, Appraisal appraisal) {
    if (placed.kind() != GivenStack.Kind.HOLDER) {
      return;
    }
    InlineHolder said = placed.details();
    String at = placed.pointer() + "/";
    String source = body.spindleInterface().limitsSourceKey();
    assume(
        said.tested().jointRadialNPerM(),
        at + "jointStiffness/radialNPerM",
        body.spindleInterface().translationNPerM().median(),
        source);
    assume(
        said.tested().jointRotationalNmPerRad(),
        at + "jointStiffness/rotationalNmPerRad",
        Stack.rotation(context, body).median(),
        source);
    if (body.ref().equals(appraisal.assembly().holder().ref())) {
      assume(said.massKg(), at + "massKg", appraisal.body().massKg(), "");
      if (said.balanceGradeMPerS() == null) {
        double residual = body.family().residualUnbalanceM() * appraisal.geometry().massKg();
        assume(
            said.residualUnbalanceKgM(),
            at + "residualUnbalanceGmm",
            residual,
            body.family().sourceKey());
      }
    }
  }

  private void assume(@Nullable Object said, String pointer, double value, String source) {
    if (said == null) {
      boolean drawn = source.isEmpty();
      add(pointer, value, drawn ? "from-profile" : "usual-for-such-a-part", source);
    }
  }

  private void add(String pointer, double value, String reason, String source) {
    made.add(new Assumption(pointer, value, reason, source));
  }
}
