package org.gaugeline.tables;

import java.util.List;
import org.gaugeline.reference.ItemSymbol;
import org.gaugeline.reference.ReferenceData;

/** Reads what the property symbols of ISO 13399 stand for. */
public final class SymbolTables {
  static final String FILE = "iso-13399-symbols.csv";
  private static final List<String> COLUMNS =
      List.of("symbol", "item", "path", "meaning", "sourceKey");

  private SymbolTables() {}

  /** All symbols in table order: the first row of a path wins where several are given. */
  public static List<ItemSymbol> load(ReferenceData data) {
    return TableReader.table(FILE, TableFolder.packaged().read(FILE), COLUMNS).stream()
        .map(
            row ->
                new ItemSymbol(
                    row.text("symbol"),
                    row.word("item", ItemSymbol.Item.values()),
                    row.text("path"),
                    row.text("meaning"),
                    row.refer("sourceKey", data.sources()).key()))
        .toList();
  }
}
