import type { PointMm } from "../../model/zone.ts";
import { drawingTexts as t } from "../../texts/english/drawing.ts";
import { lengthText } from "../../texts/lengths.ts";
import type { Draft } from "../project/draft.svelte.ts";
import { readForm } from "../project/draft.svelte.ts";
import { withValue } from "../project/form.ts";
import type { Workbench } from "../state/workbench.svelte.ts";
import type { Handle } from "./handle.ts";

export function ballWords(ball: number, { xMm, yMm }: PointMm): string {
  return t.at(t.ball(ball + 1), lengthText(xMm), lengthText(yMm));
}

/** The balls of a run at its start; each can be laid elsewhere. */
export function ballHandles(placement: readonly PointMm[]): readonly Handle[] {
  return placement.map((at, ball) => ({
    id: `run-ball-${ball}`,
    words: ballWords(ball, at),
    at,
    axis: "both",
    look: "ghost",
    move: (form, to) => {
      const positionsMm = placement.map((each, i) => (i === ball ? [to.xMm, to.yMm] : [each.xMm, each.yMm]));
      return withValue(form, "rules.layout", { kind: "fixed", positionsMm });
    },
  }));
}

/** Lays the balls of the run on show where a changed form puts them, if they can lie there; the project stays as it is. */
export function layingTable(bench: Workbench, draft: Draft): Pick<Draft, "tryChange"> {
  return {
    tryChange: (change) => {
      const read = readForm(change(draft.form));
      if (!read.ok) return false;
      const { project } = read.value;
      void bench.runs.lay({ project, seed: bench.runs.seed, words: t.byHand });
      return true;
    },
  };
}
