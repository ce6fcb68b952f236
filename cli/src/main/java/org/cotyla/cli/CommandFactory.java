package org.cotyla.cli;

import picocli.CommandLine;
import picocli.CommandLine.IFactory;

/** Makes the commands, and hands each its surroundings. */
record CommandFactory(Terminal terminal) implements IFactory {

  @Override
  public <K> K create(Class<K> type) throws Exception {
    try {
      // A command takes its surroundings in its one constructor.
      return type.getDeclaredConstructor(Terminal.class).newInstance(terminal);
    } catch (NoSuchMethodException takesNone) {
      return CommandLine.defaultFactory().create(type);
    }
  }
}
