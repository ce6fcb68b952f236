package org.cotyla.audit;

/** Something and how often. */
public record NamedCount(String name, long count) {}
