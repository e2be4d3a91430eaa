package org.gaugeline.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.ProfileSection;
import org.gaugeline.assembly.Ratings;
import org.gaugeline.reference.ArborSize;
import org.gaugeline.reference.ClampingFamily;
import org.gaugeline.reference.ColletSize;
import org.gaugeline.reference.ContactMode;
import org.gaugeline.reference.GripModel;
import org.gaugeline.reference.ReferenceData;
import org.gaugeline.reference.ShankSize;
import org.gaugeline.reference.SpindleInterface;
import org.jspecify.annotations.Nullable;

/**
 * One row of a shop's holder file: a body and how many there are. A profile is written {@code
 * length:start:end:bore;…} in mm from the gauge plane outward; its lengths must add up to the
 * projection.
 *
 * @param body the holder
 * @param count how many; −1 where the file does not say
 */
record ShopHolder(HolderBody body, int count) {
  static final Set<String> REQUIRED =
      Set.of("ref", "family", "interface", "projectionMm", "profile");
  static final Set<String> KNOWN =
      Set.of(
          "ref",
          "family",
          "interface",
          "faceContact",
          "boreMm",
          "colletSize",
          "projectionMm",
          "profile",
          "minInsertionMm",
          "maxInsertionMm",
          "throughCoolant",
          "massKg",
          "maxSpindleSpeedRpm",
          "balanceGrade",
          "balanceSpeedRpm",
          "residualUnbalanceGmm",
          "runoutUm",
          "nutTorqueNm",
          "interferenceUm",
          "frictionCoefficient",
          "clampingTorqueNm",
          "axialHoldN",
          "price",
          "count");

  /** Key of the source that a shop's own description counts as. */
  static final String SOURCE = "shop-file";

  private static final double SUM_TOLERANCE_M = 1e-5;
  private static final double SAME_BORE_M = 2e-5;

  static ShopHolder read(Row row, ReferenceData data) {
    ClampingFamily family = row.refer("family", data.families());
    SpindleInterface end = row.refer("interface", data.interfaces());
    ColletSize collet = row.has("colletSize") ? row.refer("colletSize", data.colletSizes()) : null;
    double bore = bore(row, family, collet);
    double projection = row.positiveSi("projectionMm");
    GripModel model = family.gripModel();
    boolean setByFlat = model == GripModel.SIDE_LOCK || model == GripModel.INCLINED_SIDE_LOCK;
    boolean pilot = model == GripModel.ARBOR || model == GripModel.DISC_ARBOR;
    double standardMin =
        pilot ? pilotM(bore, data) : standardInsertion(bore, collet, data, setByFlat);
    double standardMax = pilot ? standardMin : standardInsertion(bore, collet, data, true);
    double min = row.has("minInsertionMm") ? row.positiveSi("minInsertionMm") : standardMin;
    double max =
        row.has("maxInsertionMm")
            ? row.positiveSi("maxInsertionMm")
            : Math.max(min, Math.min(standardMax, projection));
    if (min > max) {
      throw row.fault("minInsertionMm must be ≤ maxInsertionMm");
    }
    HolderBody body =
        new HolderBody(
            row.text("ref"),
            HolderBody.Origin.SHOP,
            family,
            end,
            faceContact(row, end),
            bore,
            collet,
            projection,
            sections(row, projection),
            min,
            max,
            ratings(row),
            row.optionalSi("price"),
            !row.has("throughCoolant") || row.flag("throughCoolant"),
            SOURCE);
    return new ShopHolder(body, count(row));
  }

  private static double bore(Row row, ClampingFamily family, @Nullable ColletSize collet) {
    if (family.gripModel().usesCollet()) {
      if (collet == null && !row.has("boreMm")) {
        throw row.fault("a " + family.id() + " holder needs colletSize");
      }
    } else if (collet != null) {
      throw row.fault("a " + family.id() + " holder takes no colletSize");
    }
    return collet != null && !row.has("boreMm") ? collet.maxBoreM() : row.positiveSi("boreMm");
  }

  private static boolean faceContact(Row row, SpindleInterface end) {
    return row.has("faceContact")
        ? row.flag("faceContact")
        : end.nativeContact() != ContactMode.TAPER_ONLY;
  }

  private static int count(Row row) {
    if (!row.has("count")) {
      return -1;
    }
    int count = row.integer("count");
    if (count < 0) {
      throw row.fault("count must be ≥ 0, was " + count);
    }
    return count;
  }

  /** Length of an arbor's pilot; of a bore that no table has, as long as it is wide. */
  private static double pilotM(double bore, ReferenceData data) {
    ArborSize size = data.arborOfBore(bore, 0);
    return size == null ? bore : size.pilotLengthM();
  }

  /** The screw of a side-lock must meet the flat, so there the least is the deepest. */
  private static double standardInsertion(
      double bore, @Nullable ColletSize collet, ReferenceData data, boolean deepest) {
    if (collet != null) {
      return collet.colletLengthM()
          * data.practice(deepest ? "colletDepthPerLength" : "leastGripShare");
    }
    for (ShankSize shank : data.shankSizes()) {
      if (Math.abs(shank.diameterM() - bore) < SAME_BORE_M) {
        return deepest ? shank.lengthM() : shank.minInsertionM();
      }
    }
    return bore * data.practice(deepest ? "boreDepthPerDiameter" : "leastGripPerDiameter");
  }

  private static Ratings ratings(Row row) {
    return new Ratings(
        row.optionalSi("maxSpindleSpeedRpm"),
        row.optionalSi("balanceGrade") * 1e-3,
        row.optionalSi("balanceSpeedRpm"),
        row.optionalSi("residualUnbalanceGmm"),
        row.optionalSi("runoutUm"),
        row.optionalSi("massKg"),
        row.optionalSi("nutTorqueNm"),
        row.optionalSi("interferenceUm"),
        row.optionalSi("frictionCoefficient"),
        row.optionalSi("clampingTorqueNm"),
        row.optionalSi("axialHoldN"));
  }

  private static List<ProfileSection> sections(Row row, double projection) {
    List<ProfileSection> sections = new ArrayList<>();
    double sum = 0;
    for (String part : row.text("profile").split(";")) {
      ProfileSection section = section(row, part.strip());
      sections.add(section);
      sum += section.lengthM();
    }
    if (Math.abs(sum - projection) > SUM_TOLERANCE_M) {
      throw row.fault(
          "profile lengths add up to "
              + sum * 1e3
              + " mm, projectionMm is "
              + row.text("projectionMm"));
    }
    return List.copyOf(sections);
  }

  private static ProfileSection section(Row row, String part) {
    String[] numbers = part.split(":");
    if (numbers.length != 4) {
      throw row.fault("profile section '" + part + "' is not length:start:end:bore");
    }
    double[] m = new double[4];
    for (int i = 0; i < m.length; i++) {
      try {
        m[i] = Double.parseDouble(numbers[i].strip()) * 1e-3;
      } catch (NumberFormatException e) {
        throw row.fault("profile section '" + part + "' has a bad number", e);
      }
    }
    return new ProfileSection(m[0], m[1], m[2], m[3]);
  }
}
