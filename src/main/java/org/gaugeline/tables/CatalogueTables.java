package org.gaugeline.tables;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.gaugeline.assembly.Attachments;
import org.gaugeline.assembly.HolderBody;
import org.gaugeline.assembly.HolderCatalogue;
import org.gaugeline.reference.ReferenceData;
import org.jspecify.annotations.Nullable;

/** Loads the holders that are known without a request. */
public final class CatalogueTables {
  private CatalogueTables() {}

  /**
   * The generic series and the shop's own holders.
   *
   * @param data the reference tables
   * @param shopFolder folder with the shop's holder files, or null for none
   * @throws TableException naming file and line of the first fault
   */
  public static HolderCatalogue load(ReferenceData data, @Nullable Path shopFolder) {
    return load(TableFolder.packaged(), data, shopFolder);
  }

  static HolderCatalogue load(TableFolder folder, ReferenceData data, @Nullable Path shopFolder) {
    HolderCatalogue series = series(folder, data);
    return shopFolder == null ? series : withShop(series, data, shopFolder);
  }

  /** The generic series alone. */
  static HolderCatalogue series(TableFolder folder, ReferenceData data) {
    Map<String, HolderBody> byRef = new LinkedHashMap<>();
    for (HolderBody body : GenericSeries.read(folder, data).bodies()) {
      if (byRef.put(body.ref(), body) != null) {
        throw new TableException("holder-series.csv", 0, "makes '" + body.ref() + "' twice");
      }
    }
    return catalogue(byRef, AttachmentTables.read(folder, data), Map.of(), data);
  }

  /**
   * A catalogue and, after it, the shop's own holders.
   *
   * @throws TableException naming file and line of the first fault
   */
  public static HolderCatalogue withShop(
      HolderCatalogue catalogue, ReferenceData data, Path shopFolder) {
    Map<String, HolderBody> byRef = new LinkedHashMap<>(catalogue.byRef());
    Map<String, Integer> countByRef = new LinkedHashMap<>(catalogue.countByRef());
    addShop(shopFolder, data, byRef, countByRef);
    return catalogue(byRef, catalogue.attachments(), countByRef, data);
  }

  private static HolderCatalogue catalogue(
      Map<String, HolderBody> byRef,
      Attachments attachments,
      Map<String, Integer> countByRef,
      ReferenceData data) {
    return new HolderCatalogue(
        Collections.unmodifiableMap(byRef),
        byInterface(byRef, data),
        attachments,
        Collections.unmodifiableMap(countByRef));
  }

  private static void addShop(
      Path shopFolder,
      ReferenceData data,
      Map<String, HolderBody> byRef,
      Map<String, Integer> countByRef) {
    for (Row row : ShopFiles.rows(shopFolder)) {
      ShopHolder holder = TableReader.guarded(row, r -> ShopHolder.read(r, data));
      String ref = holder.body().ref();
      if (byRef.putIfAbsent(ref, holder.body()) != null) {
        throw row.fault("ref '" + ref + "' stands twice");
      }
      if (holder.count() >= 0) {
        countByRef.put(ref, holder.count());
      }
    }
  }

  private static Map<String, List<HolderBody>> byInterface(
      Map<String, HolderBody> byRef, ReferenceData data) {
    Map<String, List<HolderBody>> byInterface = new LinkedHashMap<>();
    data.interfaces().keySet().forEach(id -> byInterface.put(id, new ArrayList<>()));
    for (HolderBody body : byRef.values()) {
      byInterface.computeIfAbsent(body.spindleInterface().id(), id -> new ArrayList<>()).add(body);
    }
    byInterface.replaceAll((id, bodies) -> List.copyOf(bodies));
    return Collections.unmodifiableMap(byInterface);
  }
}
