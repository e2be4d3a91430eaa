package org.gaugeline.assessment;

import java.util.List;
import java.util.function.Consumer;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.ProfileSection;
import org.gaugeline.assembly.Seam;
import org.gaugeline.mechanics.reach.RadialProfile;

/** Which part of the stack meets a wall, step or floor, and by how much. */
record CollisionRule() implements Rule {
  private static final double TOUCHING_M = 1e-9;

  private static final List<String> CODES =
      List.of("nose-collides", "body-collides", "flange-collides", "host-collides");

  @Override
  public List<String> codes() {
    return CODES;
  }

  @Override
  public Criterion criterion() {
    return Criterion.REACH;
  }

  @Override
  public List<Severity> severities(String code) {
    return List.of(Severity.ERROR);
  }

  @Override
  public List<String> sources() {
    return List.of("plane-geometry");
  }

  @Override
  public void check(Inspection on, Consumer<Finding> found) {
    HolderBody holder = on.holder();
    double stickOut = on.appraisal().assembly().stickOutM();
    double worst = 0;
    String code = "";
    double behindNose = 0;
    for (int i = holder.sections().size() - 1; i >= 0; i--) {
      ProfileSection section = holder.sections().get(i);
      double gap = on.context().reach.holderGapM(outline(section, behindNose), stickOut);
      behindNose += section.lengthM();
      if (gap < worst) {
        worst = gap;
        code = part(holder, i, holder.projectionM() - behindNose);
      }
    }
    if (worst < 0) {
      found.accept(
          Inspection.finding(
              code,
              Severity.ERROR,
              Criterion.REACH,
              on.job().feature().wallClearanceM(),
              worst,
              Measure.LENGTH,
              "plane-geometry",
              "/assembly/stickOutMm"));
    }
  }

  private static RadialProfile outline(ProfileSection section, double behindNoseM) {
    return RadialProfile.startingAt(behindNoseM, section.endDiameterM() / 2)
        .to(behindNoseM + section.lengthM(), section.startDiameterM() / 2)
        .toProfile();
  }

  /** The part that a section belongs to, by where it begins from the gauge plane. */
  private static String part(HolderBody holder, int index, double fromGaugeM) {
    for (Seam seam : holder.seams()) {
      if (!(seam instanceof Seam.Sleeved) && fromGaugeM < seam.atM() - TOUCHING_M) {
        return "host-collides";
      }
    }
    int last = holder.sections().size() - 1;
    if (index == last) {
      return "nose-collides";
    }
    return index == 0 ? "flange-collides" : "body-collides";
  }
}
