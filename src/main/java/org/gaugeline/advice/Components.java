package org.gaugeline.advice;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.Part;
import org.gaugeline.assembly.Role;
import org.gaugeline.assembly.Seam;
import org.gaugeline.assembly.StandardPart;
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
  private final List<StandardPart> given;
  private final boolean sealed;
  private final List<Part> all = new ArrayList<>();

  private Components(List<StandardPart> given, boolean sealed) {
    this.given = given;
    this.sealed = sealed;
  }

  /**
   * The parts of an assembly, spindle first.
   *
   * @param given small parts that somebody chose: they stand for what would be usual there
   */
  static List<Part> of(JobContext context, Appraisal appraisal, List<StandardPart> given) {
    Job job = context.job();
    HolderBody holder = appraisal.assembly().holder();
    boolean sealed = job.operation().coolant() == Coolant.THROUGH_TOOL;
    Components parts = new Components(given, sealed);
    parts.spindleEnd(holder.spindleInterface());
    Iterator<Seam.Clamped> hosts =
        holder.seams().stream()
            .filter(Seam.Clamped.class::isInstance)
            .map(Seam.Clamped.class::cast)
            .iterator();
    for (Part part : holder.components()) {
      if (part.role() == Role.EXTENSION && hosts.hasNext()) {
        Seam.Clamped clamped = hosts.next();
        parts.collet(clamped.host().colletSize(), clamped.shankDiameterM());
      }
      parts.all.add(part);
    }
    double shank = job.tool().shankDiameterM();
    parts.collet(holder.colletSize(), shank);
    boolean locked = job.tool().shankForm() == ShankForm.FORM_LOCKED;
    parts.add(Role.FORM_LOCK, locked ? StandardPart.behind(Role.FORM_LOCK, shank) : null);
    boolean rests = context.needsBackStop(appraisal);
    parts.add(
        Role.BACK_STOP_SCREW, rests ? StandardPart.behind(Role.BACK_STOP_SCREW, shank) : null);
    return List.copyOf(parts.all);
  }

  /** A steep taper is pulled by a knob, a hollow one gets its coolant by a tube. */
  private void spindleEnd(SpindleInterface spindle) {
    boolean steep = spindle.kind() == InterfaceKind.STEEP_TAPER;
    boolean fed = spindle.kind() == InterfaceKind.HOLLOW_TAPER && sealed;
    add(Role.RETENTION_KNOB, steep ? StandardPart.knob(spindle, sealed) : null);
    add(Role.COOLANT_TUBE, fed ? StandardPart.tube(spindle) : null);
  }

  private void add(Role role, @Nullable StandardPart usual) {
    boolean chosen = false;
    for (StandardPart part : given) {
      if (part.role() == role) {
        all.add(part.part());
        chosen = true;
      }
    }
    if (!chosen && usual != null) {
      all.add(usual.part());
    }
  }

  private void collet(@Nullable ColletSize size, double boreM) {
    if (size != null) {
      Role role = sealed ? Role.COOLANT_COLLET : Role.COLLET;
      all.add(Part.standard(role, size.id(), boreM, size.sourceKey()));
    }
  }
}
