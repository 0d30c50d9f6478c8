import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { clearlyWorse } from "./elimination.ts";
import { byMean, Entrant, simplestFirst } from "./entrant.ts";
import { tradeOffFront } from "./front.ts";
import { LeaderRefining } from "./leaderRefining.ts";
import { FIRST_LOOK, looksUpTo, searchSeed } from "./looks.ts";
import type { RaceSettings } from "./raceSettings.ts";
import { makeAll, type RaceAnswer, type Racing, runSpans, type TrialSpan } from "./raceWork.ts";
import { isTie } from "./tie.ts";

/** What is under way. */
export type RaceStage = "first-look" | "widening" | "racing" | "refining" | "final" | "over";

/** Refinement begins after so many trials, once early and once late. */
const REFINE_AFTER = [100, 400];
/** Leaders that are refined, and refined routines that join the race, each time. */
const LEADERS = 3;
const JOINERS = 9;
/** Ids that enter together: a first answer comes after the first of them. */
const ENTER_TOGETHER = 48;
/** Most routines of a tie, and of each trade-off front, that get fresh trials. */
const MOST_TIED = 12;
/** Simplicity is worth a point of a hundred in the mean score; more, and a short race would recommend poor routines. */
const NO_MATTER = 0.01;
const MOST_ON_FRONT = 10;
/** Parts of the final: all finalists get one before any gets the next. */
const FINAL_PARTS = 20;

/**
 * Finds the best routine. All see the same placements and the same luck; those clearly worse than the leader are dropped
 * (elimination.ts), so that the trials go to the close ones; the leaders' speed and dials are refined by a downhill
 * simplex on trials of their own, and what comes of it joins the race. The winner is settled by the race: of those that
 * it cannot tell from its leader the simplest. Only then do it, its ties and the trade-off fronts get fresh trials, so that
 * the winner's figures are not flattered by having been chosen for them.
 *
 * `run` says what is to be done and is given the answers; it is a function of settings and answers alone, unless it is hurried.
 */
export class Race {
  readonly settings: RaceSettings;
  readonly project: Project;
  stage: RaceStage = "first-look";
  doneTrials = 0;
  /** Trials that went into refining. */
  refiningTrials = 0;
  /** Best of the race's trials; null while there is none. */
  leader: Entrant | null = null;
  readonly #entrants: Entrant[] = [];
  readonly #prints = new Set<string>();
  readonly #ids = new Set<string>();
  #refined = 0;
  #look = 0;
  #isHurried = false;
  #isLate = false;
  /** Ties and winner once the final has begun. */
  #settled: Verdict | null = null;

  constructor(settings: RaceSettings) {
    this.settings = settings;
    this.project = settings.objective.projectFor(settings.project);
  }

  /** All that take part, in the order in which they came. */
  get entrants(): readonly Entrant[] {
    return this.#entrants;
  }

  /** Those not told from the leader, it included, the simplest first: settled when the final begins. */
  get ties(): readonly Entrant[] {
    return (this.#settled ?? this.#verdict()).ties;
  }

  /** The routine to recommend: of those that tie and are as good as the leader for all that matters, the simplest. */
  get winner(): Entrant | null {
    return (this.#settled ?? this.#verdict()).winner;
  }

  get racing(): readonly Entrant[] {
    return this.#entrants.filter(({ status }) => status === "racing");
  }

  /** Goes to the final after the work under way. */
  hurry(): void {
    this.#isHurried = true;
  }

  /** Ends the final after the work under way. */
  wrapUp(): void {
    this.#isHurried = true;
    this.#isLate = true;
  }

  *run(): Racing<void> {
    const { own, firstIds, moreIds, mostTrials } = this.settings;
    yield* this.#join(own);
    yield* this.#enter(firstIds);
    this.stage = "widening";
    yield* this.#enter(moreIds);
    for (const look of looksUpTo(mostTrials)) {
      this.stage = "racing";
      this.#look = look;
      yield* this.#bringTo(this.racing, look);
      this.#eliminate();
      if (this.#isTimeToRefine) yield* this.#refineLeaders();
      if (this.#isHurried || this.racing.length < 2) break;
    }
    yield* this.#final();
    this.stage = "over";
  }

  /** Means of the race; the front of cost and worth among all that can be run. */
  front(cost: (entrant: Entrant) => number): readonly Entrant[] {
    const { objective } = this.settings;
    const sign = objective.isBetter(1, 0) ? 1 : -1;
    const runnable = this.#entrants.filter(({ status, trials }) => status !== "failed" && trials > 0);
    const offers = runnable.map((entrant) => ({ entrant, cost: cost(entrant), worth: sign * entrant.mean }));
    return tradeOffFront(offers).map(({ entrant }) => entrant);
  }

  *#enter(ids: readonly string[]): Racing<void> {
    for (let at = 0; at < ids.length && !this.#isHurried; at += ENTER_TOGETHER) {
      const routines = yield* makeAll(this.settings.project, ids.slice(at, at + ENTER_TOGETHER));
      yield* this.#join(routines.filter((routine) => routine !== null));
    }
  }

  /** Routines that repeat another one's id or moves are left out. */
  *#join(routines: readonly Routine[]): Racing<void> {
    const fresh: Entrant[] = [];
    for (const routine of routines) {
      // A program is what its lines are, not what it drives when it sees nothing.
      const print = JSON.stringify(routine.program ?? routine.moves);
      if (this.#ids.has(routine.id) || this.#prints.has(print)) continue;
      this.#ids.add(routine.id);
      this.#prints.add(print);
      fresh.push(new Entrant(this.project, this.settings.objective, routine));
    }
    this.#entrants.push(...fresh);
    yield* this.#bringTo(fresh, Math.max(this.#look, Math.min(FIRST_LOOK, this.settings.mostTrials)));
  }

  *#bringTo(entrants: readonly Entrant[], trials: number): Racing<void> {
    const spans = entrants
      .filter((entrant) => entrant.trials < trials)
      .map((of) => ({ of, routine: of.routine, from: of.trials, to: trials }));
    const take = ({ of }: TrialSpan<Entrant>, answer: RaceAnswer): void => {
      if (of.status === "failed") return;
      if (answer.kind === "ran") {
        of.add(answer.batch);
        this.doneTrials += answer.batch.to - answer.batch.from;
      } else of.fail(answer.kind === "failed" ? answer.reason : "no answer");
    };
    yield* runSpans(this.project, searchSeed(this.settings.seed, 0), spans, take, () => this.#isHurried);
    this.#findLeader();
  }

  #findLeader(): void {
    const most = this.racing.reduce((trials, entrant) => Math.max(trials, entrant.trials), 0);
    const far = this.racing.filter(({ trials }) => trials === most);
    this.leader = [...far].sort(byMean(this.settings.objective))[0] ?? null;
  }

  #eliminate(): void {
    const { leader } = this;
    if (!leader) return;
    const others = this.racing.filter((each) => each !== leader);
    for (const worse of clearlyWorse(leader, others, this.#mostEntrants)) worse.status = "dropped";
  }

  /** One alone in the lead is refined early: nothing else is left to do. */
  get #isTimeToRefine(): boolean {
    const after = REFINE_AFTER[this.#refined] ?? Number.POSITIVE_INFINITY;
    const isAlone = this.#refined === 0 && this.racing.length === 1 && this.#look >= FIRST_LOOK;
    return !this.#isHurried && (isAlone || this.#look >= after);
  }

  /** All that may ever take part. */
  get #mostEntrants(): number {
    const { own, firstIds, moreIds } = this.settings;
    return own.length + firstIds.length + moreIds.length + JOINERS * REFINE_AFTER.length;
  }

  *#refineLeaders(): Racing<void> {
    this.stage = "refining";
    const round = this.#refined++;
    const leaders = unlike([...this.racing].sort(byMean(this.settings.objective))).slice(0, LEADERS);
    const refining = new LeaderRefining(this.settings, searchSeed(this.settings.seed, 1 + round));
    const isOver = () => this.#isHurried;
    const onTrials = (trials: number): void => {
      this.doneTrials += trials;
      this.refiningTrials += trials;
    };
    const tried = yield* refining.run(
      leaders.map(({ id }) => id),
      onTrials,
      isOver,
    );
    const best = tried.flatMap((each) => each.slice(0, Math.ceil(JOINERS / LEADERS)));
    const ids = best.map(({ id }) => id).filter((id) => !this.#ids.has(id));
    yield* this.#enter(ids.slice(0, JOINERS));
    this.#eliminate();
  }

  *#final(): Racing<void> {
    this.stage = "final";
    const { mostTrials, seed } = this.settings;
    const finalists = this.#finalists();
    for (let part = 1; part <= FINAL_PARTS && !this.#isLate; part++) {
      const from = Math.floor((mostTrials * (part - 1)) / FINAL_PARTS);
      const to = Math.floor((mostTrials * part) / FINAL_PARTS);
      const spans = finalists.map((of) => ({ of, routine: of.routine, from, to }));
      const parts = new Map<Entrant, RaceAnswer[]>();
      yield* runSpans(this.project, seed, spans, ({ of }, answer) => {
        parts.set(of, [...(parts.get(of) ?? []), answer]);
      });
      for (const [of, answers] of parts) {
        for (const answer of answers) {
          if (answer.kind !== "ran") continue;
          of.finalBatches.push(answer.batch);
          this.doneTrials += answer.batch.to - answer.batch.from;
        }
        of.status = "final";
      }
    }
  }

  /** The winner is settled here, by the trials of the race alone. */
  #finalists(): readonly Entrant[] {
    this.#settled = this.#verdict();
    const most = this.settings.mostTied ?? MOST_TIED;
    const tied = [...this.ties].sort(byMean(this.settings.objective)).slice(0, most);
    const winner = this.winner === null ? [] : [this.winner];
    const fronts = [this.front(({ durationS }) => durationS), this.front(({ moves }) => moves)];
    // The dear end of a front is what a team is most likely to choose from.
    return [...new Set([...winner, ...tied, ...fronts.flatMap((front) => front.slice(-MOST_ON_FRONT))])];
  }

  #verdict(): Verdict {
    const { leader } = this;
    if (!leader) return { ties: [], winner: null };
    const far = this.racing.filter(({ trials }) => trials === leader.trials);
    const ties = far.filter(({ scores }) => isTie(leader.scores, scores)).sort(simplestFirst);
    const near = ties.find(({ mean }) => Math.abs(leader.mean - mean) <= NO_MATTER);
    return { ties, winner: near ?? leader };
  }
}

interface Verdict {
  readonly ties: readonly Entrant[];
  readonly winner: Entrant | null;
}

/** The first of each variant: its other speeds and dials are what refining looks at anyway. */
function unlike(entrants: readonly Entrant[]): readonly Entrant[] {
  const seen = new Set<string>();
  return entrants.filter(({ id }) => {
    const variant = id.replace(/-v\d+(-at-.*)?$/, "");
    const isNew = !seen.has(variant);
    seen.add(variant);
    return isNew;
  });
}
