package org.cotyla.finite;

import java.math.BigInteger;
import java.util.Arrays;
import org.sat4j.core.Vec;
import org.sat4j.core.VecInt;
import org.sat4j.pb.IPBSolver;
import org.sat4j.pb.SolverFactory;
import org.sat4j.specs.ContradictionException;
import org.sat4j.specs.IVec;
import org.sat4j.specs.IVecInt;
import org.sat4j.specs.TimeoutException;

/**
 * The solver for clauses and weighted sums of Sat4j: learns from conflicts, keeps what it learned
 * between searches, and is bounded by a number of conflicts, so that an answer never hangs on the
 * speed of a machine.
 */
final class Sat4jSolver implements BooleanSolver {

  private final IPBSolver solver = SolverFactory.newPBResMixedConstraintsObjective();
  private final int conflictsAtMost;
  private int unknowns;
  private boolean contradiction;
  private boolean[] found = new boolean[0];

  Sat4jSolver(int conflictsAtMost) {
    this.conflictsAtMost = conflictsAtMost;
  }

  @Override
  public int unknown() {
    unknowns = solver.nextFreeVarId(true);
    solver.registerLiteral(unknowns);
    return unknowns;
  }

  @Override
  public void atLeastOne(int... literals) {
    if (literals.length == 0) {
      contradiction = true;
      return;
    }
    try {
      solver.addClause(new VecInt(literals.clone()));
    } catch (ContradictionException impossible) {
      contradiction = true;
    }
  }

  @Override
  public void atLeast(int[] literals, BigInteger[] weights, BigInteger degree) {
    IVec<BigInteger> coefficients = new Vec<>(weights.clone());
    try {
      solver.addPseudoBoolean(new VecInt(literals.clone()), coefficients, true, degree);
    } catch (ContradictionException impossible) {
      contradiction = true;
    }
  }

  @Override
  public Verdict solve(int... assumed) {
    if (contradiction) {
      return Verdict.IMPOSSIBLE;
    }
    solver.setTimeoutOnConflicts(conflictsAtMost);
    try {
      if (!solver.isSatisfiable(new VecInt(assumed.clone()))) {
        return Verdict.IMPOSSIBLE;
      }
    } catch (TimeoutException limit) {
      return Verdict.UNDECIDED;
    }
    found = new boolean[unknowns + 1];
    for (int literal : solver.model()) {
      if (literal > 0 && literal <= unknowns) {
        found[literal] = true;
      }
    }
    return Verdict.FOUND;
  }

  @Override
  public int[] conflicting() {
    IVecInt core = contradiction ? null : solver.unsatExplanation();
    return core == null ? new int[0] : Arrays.copyOf(core.toArray(), core.size());
  }

  @Override
  public boolean holds(int literal) {
    return found[Math.abs(literal)] == literal > 0;
  }
}
