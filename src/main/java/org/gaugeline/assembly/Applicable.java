package org.gaugeline.assembly;

import org.gaugeline.job.StockEntry.InlineHolder;
import org.gaugeline.job.StockEntry.TunedMass;
import org.gaugeline.reference.GripModel;
import org.jspecify.annotations.Nullable;

/** Which properties mean something to which component; the others are noted. */
final class Applicable {
  private final GivenAssembly.Component component;
  private final Estimates estimates;

  private Applicable(GivenAssembly.Component component, Estimates estimates) {
    this.component = component;
    this.estimates = estimates;
  }

  /**
   * Notes what was said of a component and does not apply to it.
   *
   * @param body the body that it grips by; null for adapters
   */
  static void check(
      GivenAssembly.Component component,
      GivenStack.Kind kind,
      @Nullable HolderBody body,
      Estimates estimates) {
    Applicable of = new Applicable(component, estimates);
    InlineHolder d = component.details();
    GripModel model = body == null ? null : body.family().gripModel();
    switch (kind) {
      case HOLDER -> {
        of.grip(d, model);
        of.face(d, body != null && InlineBodies.hasFace(body));
      }
      case EXTENSION -> {
        of.grip(d, model);
        of.face(d, false);
        of.note(d.interfaceId(), "interface");
        of.note(d.faceContact(), "faceContact");
        of.balance(d);
        of.note(d.tested().damper(), "damper");
      }
      case SLEEVE -> {
        of.inside(d);
        of.note(d.family(), "family");
        of.clamping(d);
      }
      case COLLET -> {
        of.inside(d);
        of.note(d.family(), "family");
        of.note(d.interferenceM(), "interferenceUm");
        of.note(d.massKg(), "massKg");
      }
      case ACCESSORY -> {
        of.inside(d);
        of.note(d.boreM(), "boreMm");
        of.note(d.family(), "family");
        of.note(d.massKg(), "massKg");
        of.note(d.runoutTirM(), "runoutUm");
        of.note(d.maxSpindleSpeedRadPerS(), "maxSpindleSpeedRpm");
        of.clamping(d);
      }
      case ADAPTER -> {
        of.note(d.boreM(), "boreMm");
        of.note(d.family(), "family");
        of.clamping(d);
        of.balance(d);
      }
    }
    of.tuning(d, kind);
  }

  private void grip(InlineHolder d, @Nullable GripModel model) {
    boolean turned =
        model != null
            && (model.usesCollet() || model == GripModel.ARBOR || model == GripModel.DISC_ARBOR);
    if (!turned) {
      note(d.nutTorqueNm(), "nutTorqueNm");
    }
    if (model != GripModel.SHRINK) {
      note(d.interferenceM(), "interferenceUm");
    }
  }

  private void face(InlineHolder d, boolean has) {
    if (!has) {
      note(d.tested().faceRunoutM(), "faceRunoutUm");
    }
    if (!has || d.tested().faceRunoutM() == null) {
      note(d.tested().faceDiameterM(), "faceDiameterMm");
    }
  }

  private void balance(InlineHolder d) {
    note(d.balanceGradeMPerS(), "balanceGrade");
    note(d.balanceSpeedRadPerS(), "balanceSpeedRpm");
    note(d.residualUnbalanceKgM(), "residualUnbalanceGmm");
  }

  private void clamping(InlineHolder d) {
    note(d.nutTorqueNm(), "nutTorqueNm");
    note(d.interferenceM(), "interferenceUm");
    note(d.frictionCoefficient(), "frictionCoefficient");
    note(d.clampingTorqueNm(), "clampingTorqueNm");
    note(d.axialHoldN(), "axialHoldN");
  }

  /** A part that lies inside another. */
  private void inside(InlineHolder d) {
    note(d.interfaceId(), "interface");
    note(d.projectionM(), "projectionMm");
    note(d.profile().isEmpty() ? null : d.profile(), "profile");
    note(d.material(), "material");
    note(d.faceContact(), "faceContact");
    note(d.tested().dampingRatio(), "dampingRatio");
    note(d.tested().damper(), "damper");
    balance(d);
    face(d, false);
  }

  /** The frequency and damping of a tuned mass bear on stable depth and speeds, on nothing else. */
  private void tuning(InlineHolder d, GivenStack.Kind kind) {
    TunedMass damper = d.tested().damper();
    boolean carries = kind == GivenStack.Kind.ADAPTER || kind == GivenStack.Kind.HOLDER;
    if (damper != null && carries) {
      if (damper.frequencyHz() != null) {
        estimates.misplaced(
            "damper-tuning-for-chatter", component.pointer() + "/damper/frequencyHz");
      } else if (damper.dampingRatio() != null) {
        estimates.misplaced(
            "damper-tuning-for-chatter", component.pointer() + "/damper/dampingRatio");
      }
    }
  }

  private void note(@Nullable Object said, String member) {
    if (said != null) {
      estimates.misplaced("property-not-applicable", component.pointer() + "/" + member);
    }
  }
}
