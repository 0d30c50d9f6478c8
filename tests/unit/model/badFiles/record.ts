import { type BadFile, bad } from "./badFile.ts";

const RUN = { routine: "lanes", placement: [{ xMm: 100, yMm: 200 }] };

const decision = (change: object, project?: object) => (f: { record?: unknown }) => {
  const { record: _record, ...inner } = structuredClone(f) as Record<string, unknown>;
  const inputs = { project: { ...inner, ...project }, seed: 1, trials: 300 };
  const entry = { date: "2031-04-09", kind: "fix", title: "A wider plate", figures: ["+4 of 100"], inputs };
  f.record = { decisions: [{ ...entry, ...change }] };
};

export const RECORD: readonly BadFile[] = [
  bad("bad-date", "record.decisions[0].date", "a month that is none", decision({ date: "2031-13-01" })),
  bad("unknown-choice", "record.decisions[0].kind", "an unknown kind", decision({ kind: "feeling" })),
  bad("wrong-type", "record.decisions[0].figures[0]", "a bare number", decision({ figures: [4] })),
  bad(
    "unknown-key",
    "record.decisions[0].inputs.project.record",
    "a record in a carried project",
    decision({}, { record: {} }),
  ),
  bad("out-of-range", "record.practice[0].home", "fewer than no balls", (f) => {
    Object.assign(f, { record: { practice: [{ ...RUN, home: -1 }] } });
  }),
  bad("unknown-key", "record.practice[0].homes", "a misspelt key", (f) => {
    Object.assign(f, { record: { practice: [{ ...RUN, homes: 1 }] } });
  }),
];
