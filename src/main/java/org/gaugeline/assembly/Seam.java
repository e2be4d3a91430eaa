package org.gaugeline.assembly;

import org.gaugeline.reference.SpindleInterface;
import org.gaugeline.reference.Spread;

/**
 * A joint inside a composed body, beside the spindle joint before it and the tool joint after it.
 * Each one adds runout, tilt and flexibility to everything in front of it.
 */
public sealed interface Seam {

  /** Where it is, from the gauge plane, m. */
  double atM();

  /** The same seam behind a body that is longer by so much. */
  Seam shifted(double byM);

  /**
   * The shank of an extension in a holder.
   *
   * @param host what grips the shank
   * @param shankDiameterM the shank
   * @param insertionM gripped length
   * @param joint what was measured of it
   */
  record Clamped(double atM, HolderBody host, double shankDiameterM, double insertionM, Joint joint)
      implements Seam {
    @Override
    public Seam shifted(double byM) {
      return new Clamped(atM + byM, host, shankDiameterM, insertionM, joint);
    }
  }

  /**
   * A modular coupling.
   *
   * @param coupling the interface that the part nearer the spindle offers
   * @param head the end of what is put into it: the same, if it fits
   * @param maxSpeedRadPerS speed marked on the part nearer the spindle; NaN for none
   * @param joint what was measured of it
   */
  record Coupled(
      double atM,
      SpindleInterface coupling,
      SpindleInterface head,
      double maxSpeedRadPerS,
      Joint joint)
      implements Seam {
    @Override
    public Seam shifted(double byM) {
      return new Coupled(atM + byM, coupling, head, maxSpeedRadPerS, joint);
    }
  }

  /**
   * A reduction sleeve between bore and tool.
   *
   * @param tirM runout that it adds at its mouth; p05 is unused
   * @param gripShare share of the holder's pressure that reaches the tool
   * @param outerDiameterM its outside
   * @param hostBoreM the bore that it is put into
   * @param maxSpeedRadPerS speed marked on it; NaN for none
   */
  record Sleeved(
      double atM,
      Spread tirM,
      Spread gripShare,
      double outerDiameterM,
      double hostBoreM,
      double maxSpeedRadPerS)
      implements Seam {
    @Override
    public Seam shifted(double byM) {
      return new Sleeved(atM + byM, tirM, gripShare, outerDiameterM, hostBoreM, maxSpeedRadPerS);
    }
  }
}
