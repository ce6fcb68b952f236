package org.cotyla.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * What somebody writes as NAME=VALUE. A name that is given twice is not lost, as it is in a map.
 */
record NamedValue(String name, String value) {

  /** Reads one from a command line. */
  static final class Converter implements ITypeConverter<NamedValue> {
    @Override
    public NamedValue convert(String text) {
      int equals = text.indexOf('=');
      if (equals < 1) {
        throw new TypeConversionException("`" + text + "` has no = behind a name");
      }
      return new NamedValue(text.substring(0, equals).strip(), text.substring(equals + 1).strip());
    }
  }
}
