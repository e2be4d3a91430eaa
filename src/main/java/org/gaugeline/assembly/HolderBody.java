package org.gaugeline.assembly;

import java.util.List;
import org.gaugeline.reference.ClampingFamily;
import org.gaugeline.reference.ColletSize;
import org.gaugeline.reference.GripModel;
import org.gaugeline.reference.SpindleInterface;
import org.jspecify.annotations.Nullable;

/**
 * A holder as it is bought: from the spindle end to its front face, nut included.
 *
 * @param ref catalogue id
 * @param origin where the description comes from
 * @param family how it holds the tool
 * @param spindleInterface its spindle end
 * @param faceContact whether its flange is made to touch the spindle face
 * @param boreM bore diameter; for collets and jaws the largest shank
 * @param colletSize the collet it takes; absent for fixed bores
 * @param projectionM gauge plane to front face, nut included
 * @param sections profile from the gauge plane outward
 * @param minInsertionM least gripped length
 * @param maxInsertionM deepest the shank can go
 * @param ratings what is marked or measured, replacing what is predicted
 * @param price price in the shop's currency; NaN where unknown
 * @param sourceKey source of the description
 * @param parts components from the spindle outward; none for a holder in one piece
 * @param seams joints between them, from the gauge plane outward
 * @param damper tuned mass inside; null for none
 * @param known what no catalogue says of it
 */
public record HolderBody(
    String ref,
    Origin origin,
    ClampingFamily family,
    SpindleInterface spindleInterface,
    boolean faceContact,
    double boreM,
    @Nullable ColletSize colletSize,
    double projectionM,
    List<ProfileSection> sections,
    double minInsertionM,
    double maxInsertionM,
    Ratings ratings,
    double price,
    boolean throughCoolant,
    String sourceKey,
    List<Part> parts,
    List<Seam> seams,
    @Nullable Damper damper,
    Known known) {
  private static final double WHOLE_M = 1e-3;
  private static final double SAME_M = 2e-5;

  /** A holder in one piece. */
  public HolderBody(
      String ref,
      Origin origin,
      ClampingFamily family,
      SpindleInterface spindleInterface,
      boolean faceContact,
      double boreM,
      @Nullable ColletSize colletSize,
      double projectionM,
      List<ProfileSection> sections,
      double minInsertionM,
      double maxInsertionM,
      Ratings ratings,
      double price,
      boolean throughCoolant,
      String sourceKey) {
    this(
        ref,
        origin,
        family,
        spindleInterface,
        faceContact,
        boreM,
        colletSize,
        projectionM,
        sections,
        minInsertionM,
        maxInsertionM,
        ratings,
        price,
        throughCoolant,
        sourceKey,
        List.of(),
        List.of(),
        null,
        Known.NOTHING);
  }

  /** The same under another name. */
  HolderBody named(String otherRef) {
    return with(otherRef, origin, sections, ratings, price, throughCoolant, damper, known);
  }

  /** The same with what is known better of what holds the tool in it. */
  HolderBody knowing(Ratings better, Known more, boolean coolantPasses, double otherPrice) {
    return with(
        ref,
        Origin.REQUEST,
        sections,
        ratings.with(better),
        otherPrice,
        coolantPasses,
        damper,
        known.with(more));
  }

  /** The same, stopping the coolant. */
  HolderBody stoppingCoolant() {
    return with(ref, origin, sections, ratings, price, false, damper, known);
  }

  /** The same with a tuned mass inside. */
  HolderBody damped(Damper mass, List<ProfileSection> hollowed) {
    return with(ref, origin, hollowed, ratings, price, throughCoolant, mass, known);
  }

  private HolderBody with(
      String otherRef,
      Origin otherOrigin,
      List<ProfileSection> otherSections,
      Ratings otherRatings,
      double otherPrice,
      boolean coolantPasses,
      @Nullable Damper otherDamper,
      Known otherKnown) {
    return new HolderBody(
        otherRef,
        otherOrigin,
        family,
        spindleInterface,
        faceContact,
        boreM,
        colletSize,
        projectionM,
        otherSections,
        minInsertionM,
        maxInsertionM,
        otherRatings,
        otherPrice,
        coolantPasses,
        sourceKey,
        parts,
        seams,
        otherDamper,
        otherKnown);
  }

  /** Components from the spindle outward. */
  public List<Part> components() {
    return parts.isEmpty() ? List.of(Part.of(this)) : parts;
  }

  /** Where a description comes from. */
  public enum Origin {
    /** the built-in generic series */
    GENERIC,
    /** the shop's mounted files */
    SHOP,
    /** the request itself */
    REQUEST
  }

  /** The thinnest shank that it may take, m; 0 for jaws. */
  double leastShankM() {
    if (family.gripModel() == GripModel.JAWS) {
      return 0;
    }
    ColletSize collet = colletSize;
    return collet == null ? boreM : collet.minBoreM();
  }

  /**
   * Whether this holder can take a shank of that diameter (0.02 mm for fixed bores); jaws close on
   * any that goes in.
   */
  public boolean takes(double shankDiameterM) {
    if (family.gripModel() == GripModel.JAWS) {
      return shankDiameterM <= boreM + 1e-9;
    }
    ColletSize collet = colletSize;
    return collet == null
        ? Math.abs(shankDiameterM - boreM) < SAME_M
        : shankDiameterM >= collet.minBoreM() - 1e-9
            && shankDiameterM <= boreM + 1e-9
            && colletCloses(collet, shankDiameterM);
  }

  /** Whether the collet that was named closes on a shank of that diameter, as far as is known. */
  private boolean colletCloses(ColletSize collet, double shankDiameterM) {
    double closed = colletClosesByM(shankDiameterM);
    return closed > -SAME_M && closed < collet.collapseM() + SAME_M;
  }

  /**
   * How far a collet closes from its nominal bore onto a shank: from the bore that was named, else
   * from the next size made: collets come in steps of what they close, a millimetre at most.
   */
  public double colletClosesByM(double shankDiameterM) {
    Known.GivenCollet chosen = known.collet();
    if (chosen != null && !Double.isNaN(chosen.boreM())) {
      return chosen.boreM() - shankDiameterM;
    }
    ColletSize collet = colletSize;
    double step = collet == null ? WHOLE_M : Math.min(WHOLE_M, collet.collapseM());
    return Math.ceil(shankDiameterM / step - 1e-6) * step - shankDiameterM;
  }
}
