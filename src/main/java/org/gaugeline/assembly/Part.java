package org.gaugeline.assembly;

import org.jspecify.annotations.Nullable;

/**
 * A component as it is listed in an answer.
 *
 * @param role what it does
 * @param ref catalogue id, or what to ask for where it is of a standard and has none
 * @param origin where its description comes from; null for standard parts
 * @param familyId how it grips; empty where it grips nothing
 * @param interfaceId its spindle end; empty where it has none
 * @param couplingId the interface that it offers to the next part; empty where it has none
 * @param shankDiameterM its own shank; NaN where it has none
 * @param boreM its bore; NaN where it has none
 * @param projectionM gauge plane, or the front face before it, to its own front face; NaN for parts
 *     inside another
 * @param price price; NaN where unknown
 * @param weighedKg its weighed mass; NaN where not weighed
 * @param faceContact whether its flange touches the face before it
 * @param throughCoolant whether coolant passes
 * @param sourceKey source of the description
 */
public record Part(
    Role role,
    String ref,
    HolderBody.@Nullable Origin origin,
    String familyId,
    String interfaceId,
    String couplingId,
    double shankDiameterM,
    double boreM,
    double projectionM,
    double price,
    double weighedKg,
    boolean faceContact,
    boolean throughCoolant,
    String sourceKey) {
  private static final double NONE = Double.NaN;

  /** A part of a standard that is asked for by name. */
  public static Part standard(Role role, String ref, double boreM, String sourceKey) {
    return new Part(
        role, ref, null, "", "", "", NONE, boreM, NONE, NONE, NONE, false, true, sourceKey);
  }

  /** A holder as one part. */
  static Part of(HolderBody holder) {
    return new Part(
        Role.HOLDER,
        holder.ref(),
        holder.origin(),
        holder.family().id(),
        holder.spindleInterface().id(),
        "",
        NONE,
        holder.boreM(),
        holder.projectionM(),
        holder.price(),
        holder.ratings().massKg(),
        holder.faceContact(),
        holder.throughCoolant(),
        holder.sourceKey());
  }

  static Part of(Extension extension) {
    return new Part(
        Role.EXTENSION,
        extension.ref(),
        extension.data().origin(),
        extension.family().id(),
        "",
        "",
        extension.shankDiameterM(),
        extension.boreM(),
        extension.lengthM(),
        extension.price(),
        extension.data().ratings().massKg(),
        false,
        extension.data().throughCoolant(),
        extension.sourceKey());
  }

  static Part of(Sleeve sleeve) {
    return new Part(
        Role.SLEEVE,
        sleeve.ref(),
        sleeve.data().origin(),
        "",
        "",
        "",
        sleeve.outerDiameterM(),
        sleeve.boreM(),
        NONE,
        sleeve.price(),
        sleeve.data().ratings().massKg(),
        false,
        sleeve.data().throughCoolant(),
        sleeve.sourceKey());
  }

  static Part of(Adapter adapter) {
    return new Part(
        adapter.isDamped() ? Role.DAMPED_BODY : Role.ADAPTER,
        adapter.ref(),
        adapter.data().origin(),
        "",
        adapter.spindleInterface().id(),
        adapter.coupling().id(),
        NONE,
        NONE,
        adapter.projectionM(),
        adapter.price(),
        adapter.data().ratings().massKg(),
        adapter.faceContact(),
        adapter.data().throughCoolant(),
        adapter.sourceKey());
  }
}
