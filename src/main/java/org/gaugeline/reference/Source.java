package org.gaugeline.reference;

/**
 * Where numbers come from.
 *
 * @param key short name that rows refer to
 * @param kind weight of the source
 * @param citation author, title, edition or date
 * @param licence terms under which the numbers are used
 * @param note how it was taken over, validity, what to check
 */
public record Source(String key, SourceKind kind, String citation, String licence, String note) {}
