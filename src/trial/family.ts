import { BatchTally } from "./batchTally.ts";
import { type Branch, branchesOf } from "./branches.ts";
import type { TrialBatch } from "./outcome.ts";
import type { TrialPlan } from "./plan.ts";
import { result } from "./result.kernel.ts";
import { driveOn, endRun, isTimeUp, openRun } from "./run.kernel.ts";
import { cornerOf, placementOf } from "./run.ts";
import { KeptWorld } from "./world.kernel.ts";

/** Worlds kept at branchings, one inside the other; shared by all families of this worker. */
const worlds: KeptWorld[] = [];

/**
 * Runs trials from … to − 1 of several lists of moves, what they begin with in common once: in the same trial they go bit for bit
 * through the same states until they part, since all luck is drawn by the number of the move. The same as `runBatch` of each.
 *
 * @param plans at least one, of one project without programs, made from one by `withMoves`
 * @throws RangeError for plans that do not share what draws and steers
 */
export function runFamilyBatch(
  plans: readonly TrialPlan[],
  seed: number,
  from: number,
  to: number,
): readonly TrialBatch[] {
  const [whole] = plans;
  if (whole === undefined) return [];
  if (plans.some(({ planner }) => planner !== whole.planner))
    throw new RangeError("plans of a family share their planner");
  const tree = branchesOf(plans.map(({ routine }) => routine.moves));
  const walk = new FamilyWalk(plans.map(() => new BatchTally(from, to)));
  for (let index = from; index < to; index++) {
    const corner = cornerOf(whole, seed, index);
    const here = corner === null ? plans : plans.map((plan) => plan.byCorner[corner] ?? plan);
    const plan = here[0] ?? whole;
    openRun(plan, seed, index, placementOf(plan, seed, index), null);
    walk.run(here, index, tree);
  }
  return walk.tallies.map(({ batch }) => batch);
}

/** Goes through the tree of one trial after the other, depth first. */
class FamilyWalk {
  readonly tallies: readonly BatchTally[];
  private plans: readonly TrialPlan[] = [];
  private index = 0;

  constructor(tallies: readonly BatchTally[]) {
    this.tallies = tallies;
  }

  /** From where trial `index` has been opened. */
  run(plans: readonly TrialPlan[], index: number, tree: Branch): void {
    this.plans = plans;
    this.index = index;
    this.follow(tree, 0);
  }

  /** From the start of a branch to the ends of all its lists. @param depth how many worlds are kept already */
  private follow({ upTo, lists, ends, branches }: Branch, depth: number): void {
    const plan = this.planOf(lists);
    driveOn(plan, upTo);
    const isOver = isTimeUp(plan);
    const ended = result.moves === upTo ? ends : [];
    // All that have moves left when the time is up have come to the same.
    const cut = isOver ? lists.filter((list) => !ended.includes(list)) : [];
    const ways = [
      ...[ended, cut].filter(({ length }) => length > 0).map((alike) => () => this.end(alike)),
      ...(isOver ? [] : branches).map((branch) => () => this.follow(branch, depth + 1)),
    ];
    worlds[depth] ??= new KeptWorld();
    const world = worlds[depth];
    if (ways.length > 1) world.keep(plan);
    for (const [i, go] of ways.entries()) {
      if (i > 0) world.takeUp(plan);
      go();
    }
  }

  private end(alike: readonly number[]): void {
    const plan = this.planOf(alike);
    endRun(plan);
    for (const list of alike) this.tallies[list]?.add(plan, this.index);
  }

  private planOf([first = 0]: readonly number[]): TrialPlan {
    const plan = this.plans[first];
    if (plan === undefined) throw new RangeError(`no plan ${first} in a family of ${this.plans.length}`);
    return plan;
  }
}
