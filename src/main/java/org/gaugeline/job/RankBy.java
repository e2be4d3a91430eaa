package org.gaugeline.job;

import org.gaugeline.reference.Word;

/** What orders assemblies of equal standing. */
public enum RankBy implements Word {
  FIT("fit"),
  COST("cost");

  private final String id;

  RankBy(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }
}
