package org.gaugeline.http;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.cfg.CoercionAction;
import com.fasterxml.jackson.databind.cfg.CoercionInputShape;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.type.LogicalType;

/** JSON as the contract has it: I-JSON in, no guessing of types. */
final class StrictJson {
  static final int DEEPEST = 32;

  static final JsonFactory FACTORY =
      JsonFactory.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(StreamReadFeature.USE_FAST_DOUBLE_PARSER)
          .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
          .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build())
          .build();

  static final JsonMapper MAPPER = mapper();

  private static final ObjectWriter SENT =
      MAPPER
          .rebuild()
          .defaultPropertyInclusion(
              JsonInclude.Value.construct(JsonInclude.Include.NON_NULL, JsonInclude.Include.ALWAYS))
          .build()
          .writer();

  private StrictJson() {}

  /** Wire records as they were sent: what was absent stays absent. */
  static byte[] asSent(Object wire) {
    try {
      return SENT.writeValueAsBytes(wire);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("what was bound cannot be written", e);
    }
  }

  private static JsonMapper mapper() {
    JsonMapper.Builder builder =
        JsonMapper.builder(FACTORY)
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
            .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
            .propertyNamingStrategy(new MemberNames());
    builder.withCoercionConfigDefaults(
        config -> config.setCoercion(CoercionInputShape.EmptyString, CoercionAction.Fail));
    builder.withCoercionConfig(
        LogicalType.Textual,
        config ->
            config
                .setCoercion(CoercionInputShape.Integer, CoercionAction.Fail)
                .setCoercion(CoercionInputShape.Float, CoercionAction.Fail)
                .setCoercion(CoercionInputShape.Boolean, CoercionAction.Fail)
                .setCoercion(CoercionInputShape.EmptyString, CoercionAction.AsEmpty));
    return builder.build();
  }

  /** {@code interface_} is {@code interface} on the wire. */
  private static final class MemberNames extends PropertyNamingStrategies.NamingBase {
    @Override
    public String translate(String componentName) {
      return memberName(componentName);
    }
  }

  static String memberName(String componentName) {
    return componentName.endsWith("_")
        ? componentName.substring(0, componentName.length() - 1)
        : componentName;
  }
}
