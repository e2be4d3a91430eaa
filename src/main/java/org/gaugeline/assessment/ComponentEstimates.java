package org.gaugeline.assessment;

import java.util.ArrayList;
import java.util.List;
import org.gaugeline.assembly.GivenStack;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.Ratings;
import org.gaugeline.assembly.Seam;
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
    int couplings = 0;
    for (GivenStack.Placed placed : built.placed()) {
      HolderBody body = placed.body();
      boolean holds =
          placed.kind() == GivenStack.Kind.HOLDER || placed.kind() == GivenStack.Kind.EXTENSION;
      if (placed.own() && body != null && holds) {
        // what a collet behind it says is said
        boolean last = placed.equals(built.gripping());
        estimates.nose(
            placed.pointer() + "/", body, (last ? built.body() : body).ratings(), built.body());
        estimates.rear(placed, body, appraisal);
      }
      if (placed.kind() == GivenStack.Kind.ADAPTER) {
        if (placed.own()) {
          estimates.adapter(placed, built.body(), couplings);
        }
        couplings++;
      }
    }
    return List.copyOf(estimates.made);
  }

  /** The seat behind an adapter, and the coupling in front of it. */
  private void adapter(GivenStack.Placed placed, HolderBody whole, int index) {
    InlineHolder said = placed.details();
    String at = placed.pointer() + "/";
    if (index == 0) {
      joint(
          placed,
          whole.spindleInterface().translationNPerM().median(),
          Stack.rotation(context, whole).median(),
          whole.spindleInterface().limitsSourceKey());
    } else if (whole.seams().get(index - 1) instanceof Seam.Coupled behind) {
      joint(
          placed,
          behind.coupling().translationNPerM().median(),
          behind.coupling().nativeRotationNmPerRad().median(),
          behind.coupling().limitsSourceKey());
    }
    if (whole.seams().get(index) instanceof Seam.Coupled front) {
      assume(
          said.runoutTirM(),
          at + "runoutUm",
          front.coupling().nativeSeatTirM().p95(),
          front.coupling().limitsSourceKey());
    }
  }

  private void joint(
      GivenStack.Placed placed, double radialNPerM, double rotationalNmPerRad, String source) {
    String at = placed.pointer() + "/jointStiffness/";
    InlineHolder said = placed.details();
    assume(said.tested().jointRadialNPerM(), at + "radialNPerM", radialNPerM, source);
    assume(
        said.tested().jointRotationalNmPerRad(),
        at + "rotationalNmPerRad",
        rotationalNmPerRad,
        source);
  }

  private void nose(String at, HolderBody body, Ratings said, HolderBody whole) {
    ClampingFamily family = body.family();
    assume(number(said.runoutTirM()), at + "runoutUm", family.tipTirM().p95(), family.sourceKey());
    assume(
        number(said.maxSpeedRadPerS()),
        at + "maxSpindleSpeedRpm",
        SpeedLimits.familyCeilingRadPerS(context, body),
        family.sourceKey());
    ColletSize collet = body.colletSize();
    if (collet != null) {
      double usual = collet.nutTorqueNm().median();
      assume(number(said.nutTorqueNm()), at + "nutTorqueNm", usual, collet.sourceKey());
    } else if (context.arbor != null && family.gripModel() == GripModel.ARBOR) {
      double usual = context.arbor.screwTorqueNm().median();
      assume(number(said.nutTorqueNm()), at + "nutTorqueNm", usual, context.arbor.sourceKey());
    }
    if (family.gripModel() == GripModel.SHRINK) {
      Values values = context.models.values();
      double usual =
          values.shrinkInterferenceBaseM.median()
              + values.shrinkInterferenceSlope.median() * context.gripped.diameterM();
      assume(number(said.interferenceM()), at + "interferenceUm", usual, values.shrinkBasis);
    }
    double damping = StackDynamics.usualDampingRatio(context, whole, StackDraw.MEDIAN);
    assume(number(body.known().dampingRatio()), at + "dampingRatio", damping, "dynamics-memory");
  }

  /** The joint behind it, and the balance of a body in one piece. */
  private void rear(GivenStack.Placed placed, HolderBody body, Appraisal appraisal) {
    int last = body.seams().size() - 1;
    if (placed.kind() != GivenStack.Kind.HOLDER) {
      if (last >= 0 && body.seams().get(last) instanceof Seam.Clamped clamped) {
        double d = clamped.shankDiameterM();
        double factor = clamped.host().family().jointFactor();
        joint(
            placed,
            context.models.jointTranslationNPerM(d, factor),
            context.models.jointRotationNmPerRad(d, factor),
            "joint-fit");
      }
      return;
    }
    InlineHolder said = placed.details();
    String at = placed.pointer() + "/";
    joint(
        placed,
        body.spindleInterface().translationNPerM().median(),
        Stack.rotation(context, body).median(),
        body.spindleInterface().limitsSourceKey());
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

  private static @Nullable Double number(double value) {
    return Double.isNaN(value) ? null : value;
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
