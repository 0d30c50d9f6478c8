import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { byMean, Entrant, simplestFirst } from "./entrant.ts";
import { tradeOffFront } from "./front.ts";
import type { Objective } from "./objective.ts";
import { isTie } from "./tie.ts";

/** Simplicity is worth a point of a hundred in the mean score; more, and a short race would recommend poor routines. */
const NO_MATTER = 0.01;

/** What a race has settled. */
export interface Verdict {
  /** Those not told from the leader, it included, the simplest first. */
  readonly ties: readonly Entrant[];
  /** The routine to recommend: of those that tie and are as good as the leader for all that matters, the simplest. */
  readonly winner: Entrant | null;
}

/** All that take part in a race, each once. */
export class Field {
  /** Best of the race's trials; null while there is none. */
  leader: Entrant | null = null;
  /** Of all that was added, whether it stayed or not. */
  readonly patterns = new Set<string>();
  readonly #project: Project;
  readonly #objective: Objective;
  #entrants: Entrant[] = [];
  readonly #prints = new Set<string>();
  readonly #ids = new Set<string>();
  readonly #ownIds = new Set<string>();

  constructor(project: Project, objective: Objective) {
    this.#project = project;
    this.#objective = objective;
  }

  /** In the order in which they came. */
  get entrants(): readonly Entrant[] {
    return this.#entrants;
  }

  get racing(): readonly Entrant[] {
    return this.#entrants.filter(({ status }) => status === "racing");
  }

  has(id: string): boolean {
    return this.#ids.has(id);
  }

  /** Routines of the catalogue; those that repeat another one's id or moves are left out. @returns those that are new */
  add(routines: readonly Routine[]): readonly Entrant[] {
    const fresh = routines.filter((routine) => {
      const print = printOf(routine);
      this.patterns.add(routine.pattern);
      if (this.#ids.has(routine.id) || this.#prints.has(print)) return false;
      this.#ids.add(routine.id);
      this.#prints.add(print);
      return true;
    });
    return this.#enter(fresh);
  }

  /**
   * The team's own routines as they stand now: those that changed start anew, those that are gone leave. They may repeat
   * a routine of the catalogue: somebody wants to see where they come in. @returns those that are new
   */
  setOwn(routines: readonly Routine[]): readonly Entrant[] {
    const now = new Map(routines.map((routine) => [routine.id, printOf(routine)]));
    const stays = ({ id, routine }: Entrant) => !this.#ownIds.has(id) || now.get(id) === printOf(routine);
    this.#entrants = this.#entrants.filter(stays);
    const there = new Set(this.#entrants.map(({ id }) => id));
    for (const id of [...this.#ownIds]) if (!there.has(id)) this.#forget(id);
    const fresh = routines.filter(({ id }) => !this.#ids.has(id));
    for (const { id } of fresh) {
      this.#ids.add(id);
      this.#ownIds.add(id);
    }
    this.findLeader();
    return this.#enter(fresh);
  }

  /** The best of those that have run most trials. */
  findLeader(): void {
    const contenders = this.#contenders;
    const most = contenders.reduce((trials, entrant) => Math.max(trials, entrant.trials), 0);
    const far = contenders.filter(({ trials }) => trials === most && trials > 0);
    this.leader = [...far].sort(byMean(this.#objective))[0] ?? null;
  }

  get verdict(): Verdict {
    const { leader } = this;
    if (!leader) return { ties: [], winner: null };
    const far = this.#contenders.filter(({ trials }) => trials === leader.trials);
    const ties = far.filter(({ scores }) => isTie(leader.scores, scores)).sort(simplestFirst);
    const near = ties.find(({ mean }) => Math.abs(leader.mean - mean) <= NO_MATTER);
    // Where nothing succeeds at all, the one that comes nearest is worth more than the simplest.
    return { ties, winner: leader.mean > 0 ? (near ?? leader) : leader };
  }

  /**
   * The front of cost and worth among all that can be run, cheapest first. Worth is what the figures promise at least:
   * the luck of a few trials does not put anyone on it.
   */
  front(cost: (entrant: Entrant) => number): readonly Entrant[] {
    const isHigher = this.#objective.isBetter(1, 0);
    const offers = this.#entrants.flatMap((entrant) => {
      const { status, figures } = entrant;
      if (status === "failed" || figures === null) return [];
      const { value, low, high } = figures.figure;
      // What never works is no offer, however cheap.
      if (isHigher && value === 0) return [];
      return [{ entrant, cost: cost(entrant), worth: isHigher ? low : -high }];
    });
    return tradeOffFront(offers).map(({ entrant }) => entrant);
  }

  /** The best of a kind: of those that were never given up, if there are any. */
  bestOf(isOfKind: (entrant: Entrant) => boolean): Entrant | null {
    const known = this.#entrants.filter(
      (each) => each.status !== "failed" && each.trials > 0 && isOfKind(each),
    );
    const followed = known.filter(({ status }) => status === "racing" || status === "final");
    const mean = byMean(this.#objective);
    return [...(followed.length > 0 ? followed : known)].sort(mean)[0] ?? null;
  }

  /** Those that may be the best, or were among them when the final began. */
  get #contenders(): readonly Entrant[] {
    return this.#entrants.filter(({ status }) => status === "racing" || status === "final");
  }

  #enter(routines: readonly Routine[]): readonly Entrant[] {
    const fresh = routines.map((routine) => new Entrant(this.#project, this.#objective, routine));
    this.#entrants.push(...fresh);
    return fresh;
  }

  #forget(id: string): void {
    this.#ids.delete(id);
    this.#ownIds.delete(id);
  }
}

/** What a routine does. A program is what its lines are, not what it drives when it sees nothing. */
function printOf({ program, moves }: Routine): string {
  return JSON.stringify(program ?? moves);
}
