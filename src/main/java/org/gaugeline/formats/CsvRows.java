package org.gaugeline.formats;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvGenerator;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import org.jspecify.annotations.Nullable;

/** Rows of RFC 4180, each handed on whole. */
final class CsvRows {
  private static final CsvFactory CSV =
      CsvFactory.builder()
          .enable(CsvGenerator.Feature.STRICT_CHECK_FOR_QUOTING)
          .enable(StreamWriteFeature.FLUSH_PASSED_TO_STREAM)
          .build();

  private static final CsvSchema SCHEMA = schema();

  private final OutputStream out;
  private final ByteArrayOutputStream pending = new ByteArrayOutputStream(1024);
  private @Nullable CsvGenerator csv;

  CsvRows(OutputStream out) {
    this.out = out;
  }

  private static CsvSchema schema() {
    CsvSchema.Builder schema = CsvSchema.builder();
    for (CsvColumn column : CsvColumn.values()) {
      schema.addColumn(column.title());
    }
    return schema.setUseHeader(true).setLineSeparator("\r\n").build();
  }

  void write(CsvRow row) throws IOException {
    CsvGenerator rows = generator();
    rows.writeStartArray();
    for (CsvColumn column : CsvColumn.values()) {
      rows.writeString(row.cell(column));
    }
    rows.writeEndArray();
    rows.flush();
    pending.writeTo(out);
    pending.reset();
  }

  private CsvGenerator generator() throws IOException {
    if (csv == null) {
      csv = CSV.createGenerator(pending, JsonEncoding.UTF8);
      csv.setSchema(SCHEMA);
    }
    return csv;
  }
}
