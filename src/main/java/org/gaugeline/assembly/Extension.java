package org.gaugeline.assembly;

import java.util.List;
import org.gaugeline.reference.ClampingFamily;
import org.gaugeline.reference.ColletSize;
import org.jspecify.annotations.Nullable;

/**
 * A slim holder with a cylindrical shank that another holder grips: reach for one joint more.
 *
 * @param ref catalogue id
 * @param family how its nose holds the tool
 * @param boreM bore; for collets the largest shank
 * @param collet the collet that it takes; null for fixed bores
 * @param shankDiameterM its own shank
 * @param shankLengthM length of that shank
 * @param lengthM front face of the holder before it to its own front face, nut included
 * @param sections profile of that length from the holder outward
 * @param minInsertionM least gripped length of the tool
 * @param maxInsertionM deepest that the tool goes
 * @param price guide price
 * @param sourceKey source of the description
 * @param data what is told of it beyond that
 */
public record Extension(
    String ref,
    ClampingFamily family,
    double boreM,
    @Nullable ColletSize collet,
    double shankDiameterM,
    double shankLengthM,
    double lengthM,
    List<ProfileSection> sections,
    double minInsertionM,
    double maxInsertionM,
    double price,
    String sourceKey,
    PartData data) {}
