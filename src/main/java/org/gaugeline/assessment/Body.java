package org.gaugeline.assessment;

import org.gaugeline.assembly.Damper;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.Part;
import org.gaugeline.assembly.ProfileSection;
import org.gaugeline.assembly.Role;
import org.gaugeline.assembly.Seam;
import org.gaugeline.mechanics.beam.BeamChain;
import org.gaugeline.mechanics.beam.BeamMaterial;
import org.gaugeline.mechanics.beam.BeamSegment;
import org.gaugeline.mechanics.beam.TipCompliance;
import org.gaugeline.mechanics.reach.RadialProfile;

/**
 * A holder body with everything that no request can change, computed once: mass, flexibility at its
 * front face, outline from its nose.
 *
 * <p>The part of the bore that grips is taken as filled (shank or collet bends with the body), with
 * the body's own material: the shank's is known only with the job and changes little.
 *
 * @param frontMassKg mass before the gauge plane
 * @param rotaryKgM2 no less than the rotary inertia ∫ρI dx of that mass
 * @param massKg mass with the part behind the gauge plane
 * @param centroidM centre of that mass before the gauge plane, m (negative: behind)
 * @param frontFlexibilityMPerN deflection of the front face by a force there
 * @param frontCouplingRadPerN rotation of the front face by a force there
 * @param frontRotationRadPerNm rotation of the front face by a moment there
 * @param fromNose outline measured from the nose towards the spindle
 * @param chain the body alone as a beam, gauge plane first
 * @param profileIsGeneric whether a part of the outline is a generic size and not the part's own
 */
public record Body(
    HolderBody holder,
    double frontMassKg,
    double rotaryKgM2,
    double massKg,
    double centroidM,
    double frontFlexibilityMPerN,
    double frontCouplingRadPerN,
    double frontRotationRadPerNm,
    double noseDiameterM,
    double largestDiameterM,
    RadialProfile fromNose,
    BeamChain chain,
    boolean profileIsGeneric) {
  private static final double SAME_PLACE_M = 1e-7;

  /** A part that was weighed lighter than it can be still weighs something. */
  private static final double LEAST_KG = 1e-3;

  /** Stiffness that a mass in rubber lends to the bar around it: none that matters. */
  private static final double SUSPENDED_SHARE = 1e-6;

  public static Body prepare(HolderBody holder, Models models) {
    BeamChain chain = chain(holder, models);
    double shank = holder.spindleInterface().shankMassKg();
    double modelled = chain.massKg() + shank;
    double centroid =
        (chain.massKg() * chain.centroidM() - shank * holder.spindleInterface().shankCentroidM())
            / modelled;
    double largest = 0;
    for (ProfileSection section : holder.sections()) {
      largest = Math.max(largest, Math.max(section.startDiameterM(), section.endDiameterM()));
    }
    ProfileSection nose = holder.sections().get(holder.sections().size() - 1);
    return new Body(
        holder,
        chain.massKg(),
        chain.massKg() * largest * largest / 8,
        massKg(holder, modelled, models),
        centroid,
        TipCompliance.of(chain),
        TipCompliance.rotationRadPerN(chain),
        TipCompliance.rotationRadPerNm(chain),
        nose.endDiameterM(),
        largest,
        outline(holder),
        chain,
        profileIsGeneric(holder));
  }

  /** What is modelled, with every part that was weighed at its weight. */
  private static double massKg(HolderBody holder, double modelledKg, Models models) {
    double mass = modelledKg;
    double from = 0;
    for (Part part : holder.components()) {
      boolean hasLength = !Double.isNaN(part.projectionM());
      double to = from + (hasLength ? part.projectionM() : 0);
      if (!Double.isNaN(part.weighedKg())) {
        double shank = from == 0 ? holder.spindleInterface().shankMassKg() : 0;
        double own = hasLength ? massBetweenKg(holder, from, to, models) + shank : 0;
        mass += part.weighedKg() - own;
      }
      from = to;
    }
    return Math.max(mass, LEAST_KG);
  }

  private static double massBetweenKg(HolderBody holder, double fromM, double toM, Models models) {
    BeamChain.Builder builder = BeamChain.fromBase();
    double at = 0;
    for (ProfileSection section : holder.sections()) {
      double middle = at + section.lengthM() / 2;
      if (middle > fromM && middle < toM) {
        builder.add(segment(holder, section, at, models));
      }
      at += section.lengthM();
    }
    return builder.toTip().massKg();
  }

  private static BeamChain chain(HolderBody holder, Models models) {
    BeamChain.Builder builder = BeamChain.fromBase();
    double fromGauge = 0;
    for (ProfileSection section : holder.sections()) {
      for (Seam seam : holder.seams()) {
        if (Math.abs(seam.atM() - fromGauge) < SAME_PLACE_M) {
          BodyBeam.addSeam(builder, seam, models, BodyBeam.AT_MEDIAN);
        }
      }
      builder.add(segment(holder, section, fromGauge, models));
      fromGauge += section.lengthM();
    }
    return builder.toTip();
  }

  private static BeamSegment segment(
      HolderBody holder, ProfileSection section, double fromM, Models models) {
    BeamMaterial body = models.beam(section.solidId());
    double middle = fromM + section.lengthM() / 2;
    double bore = isFilled(holder, middle) ? 0 : section.boreM();
    Damper damper = holder.damper();
    boolean carries =
        damper != null && damper.atM() >= fromM && damper.atM() < fromM + section.lengthM();
    BeamMaterial core = damper != null && carries ? tunedMass(damper, section, body) : body;
    return new BeamSegment(
        section.lengthM(),
        section.startDiameterM(),
        section.endDiameterM(),
        bore,
        body,
        carries ? bore : 0,
        core);
  }

  /** Whether a shank stands in the bore there: the tool's, or that of an extension. */
  static boolean isFilled(HolderBody holder, double fromGaugeM) {
    if (fromGaugeM > holder.projectionM() - holder.maxInsertionM()) {
      return true;
    }
    for (Seam seam : holder.seams()) {
      if (seam instanceof Seam.Clamped clamped
          && fromGaugeM < clamped.atM()
          && fromGaugeM > clamped.atM() - clamped.insertionM()) {
        return true;
      }
    }
    return false;
  }

  /** The tuned mass spread over its section: it weighs, hung in rubber it does not stiffen. */
  private static BeamMaterial tunedMass(Damper damper, ProfileSection section, BeamMaterial steel) {
    double volume = Math.PI / 4 * section.boreM() * section.boreM() * section.lengthM();
    return new BeamMaterial(
        steel.youngPa() * SUSPENDED_SHARE, steel.poisson(), damper.massKg() / volume);
  }

  private static boolean profileIsGeneric(HolderBody holder) {
    for (Part part : holder.components()) {
      boolean estimated = part.origin() == HolderBody.Origin.REQUEST && !isGiven(part);
      if (part.role() != Role.SLEEVE && (estimated || part.origin() == HolderBody.Origin.GENERIC)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isGiven(Part part) {
    return part.sourceKey().equals("given");
  }

  private static RadialProfile outline(HolderBody holder) {
    int last = holder.sections().size() - 1;
    ProfileSection nose = holder.sections().get(last);
    RadialProfile.Builder outline = RadialProfile.startingAt(0, nose.endDiameterM() / 2);
    double z = 0;
    for (int i = last; i >= 0; i--) {
      ProfileSection section = holder.sections().get(i);
      outline.to(z, section.endDiameterM() / 2);
      z += section.lengthM();
      outline.to(z, section.startDiameterM() / 2);
    }
    return outline.toProfile();
  }
}
