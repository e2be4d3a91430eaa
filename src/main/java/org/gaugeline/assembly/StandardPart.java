package org.gaugeline.assembly;

import java.util.Locale;
import org.gaugeline.reference.InterfaceKind;
import org.gaugeline.reference.SpindleInterface;
import org.jspecify.annotations.Nullable;

/**
 * A small part that is asked for by the name of its standard: it belongs to an assembly and is no
 * body of it.
 *
 * @param ref what to ask for
 * @param endId the spindle end that it goes with; empty for what stands behind a shank
 * @param shankDiameterM the shank that it goes with, m; NaN for what goes with a spindle end
 * @param throughCoolant whether coolant passes
 */
public record StandardPart(
    Role role,
    String ref,
    String endId,
    double shankDiameterM,
    boolean throughCoolant,
    String sourceKey) {
  private static final double SAME_M = 2e-5;

  /** The knob by which a drawbar pulls a steep taper. */
  public static StandardPart knob(SpindleInterface end, boolean through) {
    return new StandardPart(
        Role.RETENTION_KNOB,
        "knob-" + low(end) + (through ? "-through" : "-solid"),
        end.id(),
        Double.NaN,
        through,
        end.sourceKey());
  }

  /** The tube by which a hollow taper gets its coolant. */
  public static StandardPart tube(SpindleInterface end) {
    return new StandardPart(
        Role.COOLANT_TUBE, "tube-" + low(end), end.id(), Double.NaN, true, end.sourceKey());
  }

  /** What catches a shank axially: the part that its grooves lock into, or a screw behind it. */
  public static StandardPart behind(Role role, double shankDiameterM) {
    String size = String.format(Locale.ROOT, "%.4g", shankDiameterM * 1e3);
    return new StandardPart(
        role, role.id() + "-" + size, "", shankDiameterM, true, "grip-practice");
  }

  /** The part of a role at a spindle end; null where it takes none such. */
  static @Nullable StandardPart atEnd(Role role, SpindleInterface end, boolean through) {
    if (role == Role.RETENTION_KNOB && end.kind() == InterfaceKind.STEEP_TAPER) {
      return knob(end, through);
    }
    return role == Role.COOLANT_TUBE && end.kind() == InterfaceKind.HOLLOW_TAPER ? tube(end) : null;
  }

  /** Whether it goes where another one goes. */
  boolean fitsLike(StandardPart other) {
    boolean sameShank =
        Double.isNaN(shankDiameterM) || Math.abs(shankDiameterM - other.shankDiameterM) < SAME_M;
    return role == other.role && endId.equals(other.endId) && sameShank;
  }

  /** As it is listed in an answer. */
  public Part part() {
    return Part.standard(role, ref, shankDiameterM, sourceKey);
  }

  private static String low(SpindleInterface end) {
    return end.id().toLowerCase(Locale.ROOT);
  }
}
