import type { Workbench } from "./state/workbench.svelte.ts";

/** One keyboard command: the keys as `KeyboardEvent.key` gives them, how they are printed, what they do. */
export interface Shortcut {
  readonly keys: readonly string[];
  readonly printed: string;
  readonly words: string;
  readonly act: (bench: Workbench, event: KeyboardEvent) => void;
}

/** The arrows jump by this much of the run, s; with Shift by a tenth of it. */
const JUMP_S = 1;

const jump = (direction: 1 | -1) => (bench: Workbench, event: KeyboardEvent) => {
  bench.runs.player.seek(bench.runs.player.timeS + direction * (event.shiftKey ? JUMP_S / 10 : JUMP_S));
};

export const SHORTCUTS: readonly Shortcut[] = [
  { keys: [" "], printed: "Space", words: "play or pause", act: (bench) => bench.runs.player.toggle() },
  { keys: ["ArrowRight"], printed: "→", words: "1 s ahead (with Shift 0.1 s)", act: jump(1) },
  { keys: ["ArrowLeft"], printed: "←", words: "1 s back (with Shift 0.1 s)", act: jump(-1) },
  { keys: ["."], printed: ".", words: "to the next move", act: (bench) => bench.runs.player.stepMove(1) },
  { keys: [","], printed: ",", words: "to the move before", act: (bench) => bench.runs.player.stepMove(-1) },
  { keys: ["+", "="], printed: "+", words: "faster", act: (bench) => bench.runs.player.changeSpeed(1) },
  { keys: ["-"], printed: "−", words: "slower", act: (bench) => bench.runs.player.changeSpeed(-1) },
  {
    keys: ["n", "N"],
    printed: "N",
    words: "next placement of the balls",
    act: (bench) => void bench.runs.show(bench.runs.index + 1),
  },
  {
    keys: ["p", "P"],
    printed: "P",
    words: "previous placement",
    act: (bench) => void bench.runs.show(bench.runs.index - 1),
  },
  {
    keys: ["f", "F"],
    printed: "F",
    words: "show one that failed",
    act: (bench) => void bench.runs.find("failed"),
  },
  {
    keys: ["w", "W"],
    printed: "W",
    words: "show one that worked",
    act: (bench) => void bench.runs.find("worked"),
  },
  {
    keys: ["l", "L"],
    printed: "L",
    words: "to the next jam or loss in this run",
    act: (bench) => bench.runs.player.toNextTrouble(),
  },
  {
    keys: ["1", "2", "3", "4", "5", "6", "7", "8", "9"],
    printed: "1 … 9",
    words: "choose the routine of that rank",
    act: (bench, event) => {
      const candidate = bench.ranking.candidates[Number(event.key) - 1];
      if (candidate) bench.choose(candidate.routine.id);
    },
  },
];

/** Undo or redo, wherever the press goes: what is typed in a field has its place in the same history. */
export function historyKey(event: KeyboardEvent): "undo" | "redo" | null {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return null;
  const key = event.key.toLowerCase();
  if (key === "z") return event.shiftKey ? "redo" : "undo";
  return key === "y" && !event.shiftKey ? "redo" : null;
}

/** The key that opens the list; it works even when single keys are switched off in the list. */
export const HELP_KEY = "?";

/**
 * The command a key press means, or null where the press belongs to the element it goes to: what a person types in a
 * field, Space on a button, keys with Ctrl, Alt or Meta. The time slider is handed over: its arrows jump as everywhere.
 */
export function shortcutFor(event: KeyboardEvent): Shortcut | null {
  if (event.ctrlKey || event.altKey || event.metaKey || event.isComposing) return null;
  const target = event.target instanceof Element ? event.target : null;
  if (
    target?.closest(
      "[data-keys], select, textarea, dialog, input:not([type=range]):not([type=radio]):not([type=checkbox])",
    )
  )
    return null;
  if (event.key === " " && target?.closest("button, summary, a, input:not([type=range]), label")) return null;
  if (event.key.startsWith("Arrow") && target?.closest("input[type=radio]")) return null;
  return SHORTCUTS.find((shortcut) => shortcut.keys.includes(event.key)) ?? null;
}
