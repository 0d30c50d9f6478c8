import type { Project } from "../model/project.ts";
import type { Routine } from "../model/routine.ts";
import { Budget } from "./budget.ts";
import { clearlyWorse } from "./elimination.ts";
import { byMean, byMoves, byPromise, byTime, type Entrant } from "./entrant.ts";
import { Field, type Verdict } from "./field.ts";
import { figureOf } from "./figure.ts";
import { finalTrials } from "./finalTrials.ts";
import type { Guests } from "./guests.ts";
import { FIRST_LOOK, looksUpTo, searchSeed, WANTED_LOOK } from "./looks.ts";
import type { Objective } from "./objective.ts";
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
/** Ids that enter together; the first answer comes after the first few, one or two of each pattern. */
const ENTER_FIRST = 16;
const ENTER_TOGETHER = 48;
/** Most routines of a tie, and of each trade-off front, that get fresh trials; fewer where time is short. */
const MOST_TIED = { usual: 12, short: 6 };
const MOST_ON_FRONT = { usual: 10, short: 4 };

/**
 * Finds the best routine. All see the same placements and the same luck; those clearly worse than the leader are dropped
 * (elimination.ts), so that the trials go to the close ones; where time is short, those that promise least are set aside
 * besides (budget.ts). The leaders' speed and dials are refined by a downhill simplex on trials of their own, and what
 * comes of it joins the race. The winner is settled by the race: of those that it cannot tell from its leader the
 * simplest. Only then do it, its ties and the trade-off fronts get fresh trials, so that the winner's figures are not
 * flattered by having been chosen for them.
 *
 * `run` says what is to be done and is given the answers; it is a function of settings and answers alone, unless it is hurried.
 * A little over 300 lines: the stages of one race follow each other on one field and one budget.
 */
export class Race {
  readonly settings: RaceSettings;
  /** Whose trials are run: with the objective's time limit. */
  readonly project: Project;
  readonly budget = new Budget();
  stage: RaceStage = "first-look";
  doneTrials = 0;
  /** Trials that went into refining. */
  refiningTrials = 0;
  readonly #field: Field;
  /** Shown beside it, without a say; set before it runs. Whoever has none need not fetch what makes them. */
  guests: Guests | null = null;
  #refined = 0;
  #look = 0;
  #isHurried = false;
  #isLate = false;
  /** Ties and winner once the final has begun. */
  #settled: Verdict | null = null;
  /** The team's own routines that have yet to come in, once they have changed. */
  #newOwn: readonly Routine[] | null = null;
  /** Trials of the race when those that came after its end began. */
  #lateFrom = 0;

  constructor(settings: RaceSettings) {
    this.settings = settings;
    this.project = settings.objective.projectFor(settings.project);
    this.budget.trials = settings.budgetTrials ?? Number.POSITIVE_INFINITY;
    this.#field = new Field(settings.project, settings.objective);
  }

  /** All that take part, in the order in which they came. */
  get entrants(): readonly Entrant[] {
    return this.#field.entrants;
  }

  /** All that is to be shown: those who take part, and guests. */
  get listed(): readonly Entrant[] {
    return this.guests?.among(this.entrants, this.leader?.trials ?? 0) ?? this.entrants;
  }

  /** Patterns of which a routine could be made, those left out as repeating another's moves included. */
  get patterns(): ReadonlySet<string> {
    return this.#field.patterns;
  }

  get racing(): readonly Entrant[] {
    return this.#field.racing;
  }

  /** Best of the race's trials; null while there is none. */
  get leader(): Entrant | null {
    return this.#field.leader;
  }

  /** Settled when the final begins; before, as it stands. Fresh trials cannot change the winner, but can tell it from a tie. */
  get verdict(): Verdict {
    const { ties, winner } = this.#settled ?? this.#field.verdict;
    if (winner === null || !winner.isFresh) return { ties, winner };
    return { winner, ties: ties.filter((tie) => !isOutrun(tie, winner, this.settings.objective)) };
  }

  get isSettled(): boolean {
    return this.#settled !== null;
  }

  /** Those not told from the leader, it included, the simplest first. */
  get ties(): readonly Entrant[] {
    return this.verdict.ties;
  }

  get winner(): Entrant | null {
    return this.verdict.winner;
  }

  /** The best routine that senses and the best that does not; null where there is not one of each. Both get fresh trials. */
  get rivals(): { readonly sensing: Entrant; readonly blind: Entrant } | null {
    const sensing = this.#field.bestOf(({ routine }) => routine.program !== undefined);
    const blind = this.#field.bestOf(({ routine }) => routine.program === undefined);
    return sensing && blind ? { sensing, blind } : null;
  }

  /** By the means of the race. */
  front(cost: (entrant: Entrant) => number): readonly Entrant[] {
    return this.#field.front(cost);
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

  /** The team's own routines as they stand now. They come in at the next look; when the race is over, `run` again. */
  setOwn(routines: readonly Routine[]): void {
    this.#newOwn = routines;
  }

  /** Whether there is work to do. */
  get isOpen(): boolean {
    return this.stage !== "over" || this.#newOwn !== null;
  }

  /** From the start; once the race is over, lets in what has changed since. */
  *run(): Racing<void> {
    if (this.stage === "over") {
      yield* this.#letInLate();
      return;
    }
    const { own, mostTrials } = this.settings;
    this.#newOwn ??= own;
    const isHurried = () => this.#isHurried;
    if (this.guests) yield* this.guests.welcome(Math.min(WANTED_LOOK, mostTrials), isHurried);
    yield* this.#letInOwn();
    yield* this.#enter(this.settings.firstIds);
    this.stage = "widening";
    yield* this.#enter(this.settings.moreIds);
    const looks = looksUpTo(mostTrials);
    for (const [i, look] of looks.entries()) {
      this.stage = "racing";
      if (i > 0) this.#thin(look, looks.length - i);
      this.#look = look;
      yield* this.#letInOwn();
      yield* this.#bringTo(this.racing, look);
      if (this.guests) yield* this.guests.bringTo(this.entrants, look, isHurried);
      this.#eliminate();
      if (this.#isTimeToRefine) yield* this.#refineLeaders();
      if (this.#isOutOfTime || this.racing.length < 2) break;
    }
    yield* this.#final();
    this.stage = "over";
  }

  /** A routine that comes after the end runs what the leader has run; as it may be better, ties and winner are settled anew. */
  *#letInLate(): Racing<void> {
    this.stage = "racing";
    this.#isHurried = false;
    this.#isLate = false;
    this.#settled = null;
    this.#lateFrom = this.doneTrials;
    const most = this.leader?.trials ?? this.settings.mostTrials;
    for (const look of looksUpTo(most)) {
      this.#look = look;
      yield* this.#letInOwn();
      yield* this.#bringTo(this.racing, look);
      this.#eliminate();
    }
    yield* this.#final();
    this.stage = "over";
  }

  *#letInOwn(): Racing<void> {
    if (this.#newOwn === null) return;
    const fresh = this.#field.setOwn(this.#newOwn);
    this.#newOwn = null;
    yield* this.#bringTo(fresh, this.#entryTrials);
  }

  *#enter(named: readonly string[]): Racing<void> {
    const ids = named.filter((id) => !this.#field.has(id));
    for (let at = 0; at < ids.length && !this.#isHurried; ) {
      if (this.#look === 0 && this.budget.isFull(this.doneTrials)) break;
      const together = this.entrants.length < ENTER_FIRST ? ENTER_FIRST : ENTER_TOGETHER;
      const routines = yield* makeAll(this.settings.project, ids.slice(at, at + together));
      at += together;
      const fresh = this.#field.add(routines.filter((routine) => routine !== null));
      yield* this.#bringTo(fresh, this.#entryTrials);
    }
  }

  get #entryTrials(): number {
    return Math.max(this.#look, Math.min(FIRST_LOOK, this.settings.mostTrials));
  }

  *#bringTo(entrants: readonly Entrant[], trials: number): Racing<void> {
    const spans = entrants
      .filter((entrant) => entrant.trials < trials)
      .map((of) => ({ of, routine: of.routine, from: of.trials, to: trials }));
    const take = ({ of }: TrialSpan<Entrant>, answer: RaceAnswer): void => {
      this.doneTrials += of.take(answer);
    };
    // However short the time: without a trial there is nothing to say.
    const isOver = () => this.#isHurried && this.doneTrials > 0;
    yield* runSpans(this.project, searchSeed(this.settings.seed, 0), spans, take, isOver);
    this.#field.findLeader();
  }

  #eliminate(): void {
    const { leader } = this;
    if (!leader) return;
    const others = this.racing.filter((each) => each !== leader);
    for (const worse of clearlyWorse(leader, others, this.#mostEntrants)) worse.status = "dropped";
  }

  /** Sets aside what there is no time to follow up to a look. */
  #thin(look: number, looksLeft: number): void {
    const refiningsLeft = REFINE_AFTER.length - this.#refined;
    const stretch = look - this.#look;
    const seats = this.budget.seats(this.doneTrials, stretch, looksLeft, refiningsLeft);
    const { leader } = this;
    const ordered = [...this.racing]
      .filter((each) => each !== leader)
      .sort(byPromise(this.settings.objective));
    for (const each of ordered.slice(Math.max(0, seats - 1))) each.status = "aside";
  }

  get #isOutOfTime(): boolean {
    return this.#isHurried || this.budget.isFinalDue(this.doneTrials);
  }

  /** One alone in the lead is refined early: nothing else is left to do. */
  get #isTimeToRefine(): boolean {
    const after = REFINE_AFTER[this.#refined] ?? Number.POSITIVE_INFINITY;
    const isAlone = this.#refined === 0 && this.racing.length === 1 && this.#look >= FIRST_LOOK;
    return !this.#isOutOfTime && (isAlone || this.#look >= after);
  }

  /** All that may ever take part. */
  get #mostEntrants(): number {
    const { firstIds, moreIds } = this.settings;
    const named = firstIds.length + moreIds.length + JOINERS * REFINE_AFTER.length;
    return Math.max(named + this.settings.own.length, this.entrants.length);
  }

  *#refineLeaders(): Racing<void> {
    this.stage = "refining";
    const round = this.#refined++;
    const leaders = unlike([...this.racing].sort(byMean(this.settings.objective))).slice(0, LEADERS);
    const [answer] = yield [{ kind: "refiner" }];
    if (answer?.kind !== "refiner") return;
    const refining = new answer.Refining(
      this.settings,
      searchSeed(this.settings.seed, 1 + round),
      this.budget.refining,
    );
    const onTrials = (trials: number): void => {
      this.doneTrials += trials;
      this.refiningTrials += trials;
    };
    const tried = yield* refining.run(
      leaders.map(({ id }) => id),
      onTrials,
      () => this.#isHurried,
    );
    const best = tried.flatMap((each) => each.slice(0, Math.ceil(JOINERS / LEADERS)));
    yield* this.#enter(best.map(({ id }) => id));
    this.#eliminate();
  }

  *#final(): Racing<void> {
    this.stage = "final";
    const { mostTrials, seed } = this.settings;
    const count = (trials: number): void => {
      this.doneTrials += trials;
    };
    const isOver = () => this.#isLate || this.budget.isSpent(this.doneTrials - this.#lateFrom);
    yield* finalTrials(this.project, seed, this.#finalists(), mostTrials, count, isOver);
    if (this.guests) yield* this.guests.finish(this.entrants, () => this.#isLate);
  }

  /** The winner is settled here, by the trials of the race alone. */
  #finalists(): readonly Entrant[] {
    this.#settled = this.#field.verdict;
    const pace = this.budget.isShort ? "short" : "usual";
    const most = this.settings.mostTied ?? MOST_TIED[pace];
    const tied = [...this.ties].sort(byMean(this.settings.objective)).slice(0, most);
    const winner = this.winner === null ? [] : [this.winner];
    const fronts = [this.front(byTime), this.front(byMoves)];
    // The dear end of a front is what a team is most likely to choose from.
    const ends = fronts.flatMap((front) => front.slice(-MOST_ON_FRONT[pace]));
    const { rivals } = this;
    return [...new Set([...winner, ...tied, ...ends, ...(rivals ? [rivals.sensing, rivals.blind] : [])])];
  }
}

/** Whether the fresh trials of both tell that an entrant is worse than the winner. */
function isOutrun(entrant: Entrant, winner: Entrant, objective: Objective): boolean {
  if (entrant === winner || !entrant.isFresh) return false;
  const [its, best] = [entrant.freshScores, winner.freshScores];
  return objective.isBetter(figureOf(best).value, figureOf(its).value) && !isTie(best, its);
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
