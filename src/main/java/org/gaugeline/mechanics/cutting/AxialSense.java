package org.gaugeline.mechanics.cutting;

/** What the helix does along the axis. */
public enum AxialSense {
  /** Helix hand equals cutting hand: the helix pulls the tool out of its holder. */
  PULLS_OUT(1),
  /** No axial force from the helix is counted. */
  NEUTRAL(0),
  /** Helix hand opposes cutting hand: the helix pushes the tool into its holder. */
  PUSHES_IN(-1);

  private final int sign;

  AxialSense(int sign) {
    this.sign = sign;
  }

  /** +1 out of the holder, −1 into it, 0 for none. */
  int sign() {
    return sign;
  }
}
