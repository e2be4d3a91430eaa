package org.gaugeline.assembly;

/**
 * What is told of an extension, sleeve or adapter beyond what the catalogue says of such a part.
 *
 * @param own whether it is described by the request
 * @param ratings what is marked or measured
 * @param throughCoolant whether coolant passes
 * @param known its joints, damping and collet
 */
public record PartData(boolean own, Ratings ratings, boolean throughCoolant, Known known) {

  /** A part as it stands in the catalogue. */
  public static final PartData OF_CATALOGUE =
      new PartData(false, Ratings.NONE, true, Known.NOTHING);

  HolderBody.Origin origin() {
    return own ? HolderBody.Origin.REQUEST : HolderBody.Origin.GENERIC;
  }
}
