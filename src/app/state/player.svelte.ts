import { moveAt } from "../../trial/playback.ts";
import { isTrouble } from "../../view/trouble.ts";
import type { ViewRun } from "../../view/zoneView.ts";

export const SPEEDS = [0.25, 0.5, 1, 2, 4, 8] as const;
/** A longer frame is a hidden or stalled page, s: the run waits instead of jumping. */
const LONGEST_FRAME_S = 0.1;

/** Closer to the end counts as the end, s: a slider's last place may be a rounding short of it. */
const END_S = 1e-3;

/** How long before a trouble a jump to it ends, s. */
const LEAD_S = 0.5;

/** Playing a recorded run: where in time, how fast, running or not. */
export class Player {
  run = $state.raw<ViewRun | null>(null);
  timeS = $state(0);
  playing = $state(false);
  speed = $state<number>(1);
  /** The drawing keeps the robot in its middle. */
  follow = $state(false);
  /** The floor that the pusher has passed over is shaded. */
  swept = $state(false);
  readonly durationS = $derived(this.run?.recording.durationS ?? 0);
  readonly atEnd = $derived(this.run !== null && this.timeS >= this.durationS);
  /** Index of the move under way, −1 without a run. */
  readonly move = $derived(this.run ? moveAt(this.run.recording, this.timeS) : -1);
  /** Called when playing reaches the end of the run. */
  onEnd: () => void = () => {};
  #frame = 0;
  #lastMs = 0;

  /** Puts another run on, standing at its start. */
  show(run: ViewRun | null): void {
    this.pause();
    this.run = run;
    this.timeS = 0;
  }

  play(): void {
    if (!this.run) return;
    if (this.atEnd) this.timeS = 0;
    if (this.playing) return;
    this.playing = true;
    this.#lastMs = performance.now();
    this.#frame = requestAnimationFrame(this.#tick);
  }

  pause(): void {
    this.playing = false;
    cancelAnimationFrame(this.#frame);
  }

  toggle(): void {
    if (this.playing) this.pause();
    else this.play();
  }

  /** Jumps to a second of the run, held inside its duration. */
  seek(timeS: number): void {
    this.timeS = timeS > this.durationS - END_S ? this.durationS : Math.max(0, timeS);
  }

  /** To the start of the next move, or back to the start of this one, then of the one before. */
  stepMove(direction: 1 | -1): void {
    if (!this.run) return;
    this.pause();
    const starts = this.run.recording.moveStartS;
    if (direction > 0) {
      this.seek(starts[this.move + 1] ?? this.durationS);
      return;
    }
    const start = starts[this.move] ?? 0;
    const before = starts[this.move - 1] ?? 0;
    this.seek(this.timeS - start > 0.05 ? start : before);
  }

  /** To a little before the next jam, or ball that leaves the wedge or the zone; from the last one to the first. */
  toNextTrouble(): void {
    const troubles = (this.run?.recording.events ?? []).filter(isTrouble);
    const next = troubles.find(({ timeS }) => timeS - LEAD_S > this.timeS + END_S) ?? troubles[0];
    if (!next) return;
    this.pause();
    this.seek(next.timeS - LEAD_S);
  }

  changeSpeed(direction: 1 | -1): void {
    const place = (SPEEDS as readonly number[]).indexOf(this.speed);
    this.speed = SPEEDS[Math.min(Math.max(0, place + direction), SPEEDS.length - 1)] ?? 1;
  }

  readonly #tick = (nowMs: number): void => {
    if (!this.playing) return;
    const elapsedS = Math.min(LONGEST_FRAME_S, Math.max(0, nowMs - this.#lastMs) / 1000);
    this.#lastMs = nowMs;
    this.seek(this.timeS + elapsedS * this.speed);
    if (this.atEnd) {
      this.pause();
      this.onEnd();
      return;
    }
    this.#frame = requestAnimationFrame(this.#tick);
  };
}
