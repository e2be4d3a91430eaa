package org.gaugeline.mechanics.beam;

import org.gaugeline.mechanics.Require;

/**
 * A tool stack as a cantilever: joints and segments in order from the base (spindle) to the tip.
 * Immutable; may be shared between threads. All section integrals are done once, when it is built.
 */
public final class BeamChain {
  final double[] table;
  final int rows;
  private final double lengthM;
  private final double massKg;
  private final double centroidM;

  private BeamChain(Builder builder) {
    this.table = builder.rows.table;
    this.rows = builder.rows.size;
    this.lengthM = builder.lengthM;
    this.massKg = builder.massKg;
    this.centroidM = builder.massKg > 0 ? builder.momentKgM / builder.massKg : 0;
  }

  /**
   * Starts a chain at its clamped base.
   *
   * @return an empty builder, good for one chain
   */
  public static Builder fromBase() {
    return new Builder();
  }

  /**
   * Builds a chain from its elements.
   *
   * @param elements joints and segments, base first
   * @return the chain
   * @throws IllegalArgumentException if there is no segment
   */
  public static BeamChain of(ChainElement... elements) {
    Builder builder = new Builder();
    for (ChainElement element : elements) {
      if (element instanceof BeamSegment segment) {
        builder.add(segment);
      } else if (element instanceof ElasticJoint joint) {
        builder.add(joint);
      }
    }
    return builder.toTip();
  }

  /**
   * Length from base to tip.
   *
   * @return length, m
   */
  public double lengthM() {
    return lengthM;
  }

  /**
   * Mass of all segments.
   *
   * @return mass, kg
   */
  public double massKg() {
    return massKg;
  }

  /**
   * Distance of the centre of mass from the base; 0 for a chain without mass.
   *
   * @return distance, m
   */
  public double centroidM() {
    return centroidM;
  }

  /** Collects the elements of one chain, base first. */
  public static final class Builder {
    private final ChainRows rows = new ChainRows();
    private double lengthM;
    private double massKg;
    private double momentKgM;
    private boolean done;

    private Builder() {}

    /**
     * Adds a joint on the tip side of what is there.
     *
     * @param joint the joint
     * @return this
     */
    public Builder add(ElasticJoint joint) {
      open();
      rows.addJoint(joint);
      return this;
    }

    /**
     * Adds a segment on the tip side of what is there.
     *
     * @param segment the segment
     * @return this
     */
    public Builder add(BeamSegment segment) {
      open();
      rows.addSegment(segment);
      double l = segment.lengthM();
      double start = Section.massKgPerM(segment, segment.startDiameterM());
      double end = Section.massKgPerM(segment, segment.endDiameterM());
      double middle =
          Section.massKgPerM(segment, (segment.startDiameterM() + segment.endDiameterM()) / 2);
      // ρA is quadratic along a cone, so Simpson's rule is exact for the mass and its moment.
      double mass = l / 6 * (start + 4 * middle + end);
      massKg += mass;
      momentKgM += mass * lengthM + l * l / 6 * (2 * middle + end);
      lengthM += l;
      return this;
    }

    /**
     * Adds a whole chain on the tip side of what is there; its section integrals are taken over.
     *
     * @param part the chain
     * @return this
     */
    public Builder add(BeamChain part) {
      open();
      rows.addAll(part.table, part.rows);
      massKg += part.massKg;
      momentKgM += part.massKg * (lengthM + part.centroidM);
      lengthM += part.lengthM;
      return this;
    }

    /**
     * Ends the chain at the free tip; the builder takes nothing more.
     *
     * @return the chain
     * @throws IllegalArgumentException if no segment was added
     */
    public BeamChain toTip() {
      open();
      Require.positive("lengthM of the chain", lengthM);
      done = true;
      return new BeamChain(this);
    }

    private void open() {
      if (done) {
        throw new IllegalStateException("this chain has already been ended at its tip");
      }
    }
  }
}
