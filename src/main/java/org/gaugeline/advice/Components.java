package org.gaugeline.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.Part;
import org.gaugeline.assembly.Role;
import org.gaugeline.assembly.Seam;
import org.gaugeline.assessment.Appraisal;
import org.gaugeline.assessment.JobContext;
import org.gaugeline.job.Job;
import org.gaugeline.reference.ColletSize;
import org.gaugeline.reference.Coolant;
import org.gaugeline.reference.InterfaceKind;
import org.gaugeline.reference.ShankForm;
import org.gaugeline.reference.SpindleInterface;
import org.jspecify.annotations.Nullable;

/** Everything that must lie on the bench: bodies, collets, locks, screws, knob or tube. */
final class Components {
  private static final double NONE = Double.NaN;

  private Components() {}

  static List<Part> of(JobContext context, Appraisal appraisal) {
    Job job = context.job();
    HolderBody holder = appraisal.assembly().holder();
    List<Part> parts = new ArrayList<>();
    spindleEnd(job, holder.spindleInterface(), parts);
    parts.addAll(holder.components());
    for (Seam seam : holder.seams()) {
      if (seam instanceof Seam.Clamped clamped) {
        collet(job, clamped.host().colletSize(), clamped.shankDiameterM(), parts);
      }
    }
    collet(job, holder.colletSize(), job.tool().shankDiameterM(), parts);
    if (job.tool().shankForm() == ShankForm.FORM_LOCKED) {
      parts.add(sized(Role.FORM_LOCK, job.tool().shankDiameterM()));
    }
    if (context.needsBackStop(appraisal)) {
      parts.add(sized(Role.BACK_STOP_SCREW, job.tool().shankDiameterM()));
    }
    return List.copyOf(parts);
  }

  /** A steep taper is pulled by a knob, a hollow one gets its coolant by a tube. */
  private static void spindleEnd(Job job, SpindleInterface spindle, List<Part> parts) {
    boolean through = job.operation().coolant() == Coolant.THROUGH_TOOL;
    String id = spindle.id().toLowerCase(Locale.ROOT);
    if (spindle.kind() == InterfaceKind.STEEP_TAPER) {
      String form = through ? "-through" : "-solid";
      parts.add(Part.standard(Role.RETENTION_KNOB, "knob-" + id + form, NONE, spindle.sourceKey()));
    } else if (spindle.kind() == InterfaceKind.HOLLOW_TAPER && through) {
      parts.add(Part.standard(Role.COOLANT_TUBE, "tube-" + id, NONE, spindle.sourceKey()));
    }
  }

  private static void collet(Job job, @Nullable ColletSize size, double boreM, List<Part> parts) {
    if (size == null) {
      return;
    }
    boolean sealed = job.operation().coolant() == Coolant.THROUGH_TOOL;
    parts.add(
        Part.standard(
            sealed ? Role.COOLANT_COLLET : Role.COLLET, size.id(), boreM, size.sourceKey()));
  }

  private static Part sized(Role role, double shankDiameterM) {
    String size = String.format(Locale.ROOT, "%.4g", shankDiameterM * 1e3);
    return Part.standard(role, role.id() + "-" + size, shankDiameterM, "grip-practice");
  }
}
