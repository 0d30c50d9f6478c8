import type { dialogTexts } from "../texts/english/dialog.ts";
import type { Workbench } from "./state/workbench.svelte.ts";

/** One keyboard command: the keys as `KeyboardEvent.key` gives them, how they are printed, what they do. */
export interface Shortcut {
  readonly keys: readonly string[];
  readonly printed: string;
  /** What it does, said in texts. */
  readonly does: keyof typeof dialogTexts.does;
  readonly act: (bench: Workbench, event: KeyboardEvent) => void;
}

/** The arrows jump by this much of the run, s; with Shift by a tenth of it. */
const JUMP_S = 1;

const jump = (direction: 1 | -1) => (bench: Workbench, event: KeyboardEvent) => {
  bench.runs.player.seek(bench.runs.player.timeS + direction * (event.shiftKey ? JUMP_S / 10 : JUMP_S));
};

export const SHORTCUTS: readonly Shortcut[] = [
  { keys: [" "], printed: "Space", does: "play", act: (bench) => bench.runs.player.toggle() },
  { keys: ["ArrowRight"], printed: "→", does: "ahead", act: jump(1) },
  { keys: ["ArrowLeft"], printed: "←", does: "back", act: jump(-1) },
  { keys: ["."], printed: ".", does: "nextMove", act: (bench) => bench.runs.player.stepMove(1) },
  { keys: [","], printed: ",", does: "moveBefore", act: (bench) => bench.runs.player.stepMove(-1) },
  { keys: ["+", "="], printed: "+", does: "faster", act: (bench) => bench.runs.player.changeSpeed(1) },
  { keys: ["-"], printed: "−", does: "slower", act: (bench) => bench.runs.player.changeSpeed(-1) },
  {
    keys: ["n", "N"],
    printed: "N",
    does: "next",
    act: (bench) => void bench.runs.show(bench.runs.index + 1),
  },
  {
    keys: ["p", "P"],
    printed: "P",
    does: "previous",
    act: (bench) => void bench.runs.show(bench.runs.index - 1),
  },
  {
    keys: ["f", "F"],
    printed: "F",
    does: "failed",
    act: (bench) => void bench.runs.find("failed"),
  },
  {
    keys: ["w", "W"],
    printed: "W",
    does: "worked",
    act: (bench) => void bench.runs.find("worked"),
  },
  {
    keys: ["l", "L"],
    printed: "L",
    does: "trouble",
    act: (bench) => bench.runs.player.toNextTrouble(),
  },
  {
    keys: ["1", "2", "3", "4", "5", "6", "7", "8", "9"],
    printed: "1 … 9",
    does: "rank",
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
