package org.cotyla.cli;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/** Work that goes on beside other work until somebody needs what it came to. */
final class Beside<T> implements AutoCloseable {

  private final FutureTask<T> task;

  private Beside(FutureTask<T> task) {
    this.task = task;
  }

  static <T> Beside<T> start(String name, Callable<T> work) {
    FutureTask<T> task = new FutureTask<>(work);
    Thread thread = new Thread(task, name);
    thread.setDaemon(true);
    thread.start();
    return new Beside<>(task);
  }

  /** Waits for what it came to; what it threw unchecked is thrown here. */
  T result() {
    try {
      return task.get();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("the work was stopped", stopped);
    } catch (ExecutionException failed) {
      if (failed.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw new IllegalStateException(failed.getCause());
    }
  }

  /** Stops it if it is not done. */
  @Override
  public void close() {
    task.cancel(true);
  }
}
