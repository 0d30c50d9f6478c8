import { HELP_KEY, historyKey, shortcutFor } from "./shortcuts.ts";
import type { Workbench } from "./state/workbench.svelte.ts";

interface KeyUse {
  /** Single keys are commands: not switched off, and no dialog lies over the page. */
  readonly single: boolean;
  /** Shows the list of keys. */
  readonly onhelp: () => void;
}

/** Does what a key means wherever it is pressed on the page. */
export function pressKey(event: KeyboardEvent, bench: Workbench, { single, onhelp }: KeyUse): void {
  const back = historyKey(event);
  const shortcut = back === null && single ? shortcutFor(event) : null;
  if (back === "undo") bench.draft?.undo();
  else if (back === "redo") bench.draft?.redo();
  else if (event.key === HELP_KEY && !isTyped(event)) onhelp();
  else if (shortcut) shortcut.act(bench, event);
  else return;
  event.preventDefault();
}

function isTyped({ target }: KeyboardEvent): boolean {
  return (
    (target instanceof HTMLInputElement && target.type !== "range") || target instanceof HTMLTextAreaElement
  );
}
