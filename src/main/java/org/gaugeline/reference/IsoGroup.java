package org.gaugeline.reference;

/**
 * Application groups of workpiece materials (ISO 513): steel, stainless, cast iron, non-ferrous,
 * heat-resistant, hardened.
 */
public enum IsoGroup implements Word {
  P,
  M,
  K,
  N,
  S,
  H;

  @Override
  public String id() {
    return name();
  }
}
