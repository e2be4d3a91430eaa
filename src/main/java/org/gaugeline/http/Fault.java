package org.gaugeline.http;

import java.util.Map;

/**
 * One fault of a request.
 *
 * @param pointer JSON pointer (RFC 6901) into the body
 * @param code kebab code
 * @param detail value, bound and likely cause
 * @param parameters the numbers and words of the detail, in the order of writing
 */
record Fault(String pointer, String code, String detail, Map<String, Object> parameters) {

  /** The same fault where its body is a part of another. */
  Fault below(String at) {
    return new Fault(at + pointer, code, detail, parameters);
  }
}
