import type { ListingLanguage } from "../../src/report/coder/listing.ts";

/**
 * A tiny interpreter for listings that branch: it reads the text alone and calls what a team would have written itself. Over 300 lines:
 * five languages, each with a parser of its own.
 */

/** The functions and readings a team writes for its robot. */
export interface TeamCode {
  /** A call for its effect; numbers, or the name of a constant. */
  call(name: string, args: readonly (number | string)[]): void;
  read(name: string, args: readonly number[]): number | boolean;
}

type Node =
  | { readonly kind: "call"; readonly name: string; readonly args: readonly (number | string)[] }
  | { readonly kind: "rounds"; readonly atMost: number; readonly body: readonly Node[] }
  | { readonly kind: "leave"; readonly test: Test }
  | { readonly kind: "if"; readonly test: Test; readonly yes: readonly Node[]; readonly no: readonly Node[] };

interface Test {
  readonly reading: string;
  readonly args: readonly number[];
  readonly holds: (value: number | boolean) => boolean;
}

/** @returns false when rounds were left, which is only of interest inside */
function runNodes(nodes: readonly Node[], team: TeamCode): boolean {
  for (const node of nodes) {
    switch (node.kind) {
      case "call":
        team.call(node.name, node.args);
        break;
      case "leave":
        if (node.test.holds(team.read(node.test.reading, node.test.args))) return false;
        break;
      case "rounds":
        for (let round = 0; round < node.atMost; round++) if (!runNodes(node.body, team)) break;
        break;
      case "if": {
        const yes = node.test.holds(team.read(node.test.reading, node.test.args));
        if (!runNodes(yes ? node.yes : node.no, team)) return false;
        break;
      }
      default:
        node satisfies never;
    }
  }
  return true;
}

export function runListing(text: string, language: ListingLanguage | "csv" | "json", team: TeamCode): void {
  runNodes(PARSERS[language](text), team);
}

const PARSERS = {
  python: fromPython,
  c: fromC,
  pseudo: fromSentences,
  csv: fromCsv,
  json: fromJson,
} as const;

/** "not front_bumped()", "!over_wedge()", "distance_mm(1) >= 150", "balls_noted() == 0" */
function testOf(code: string): Test {
  const found = /^(not |!)?(\w+)\(([^)]*)\)(?: (<|>=|>|==) (\S+))?$/.exec(code);
  if (!found) throw new Error(`no question: ${code}`);
  const [, not, reading = "", args = "", sign, limit] = found;
  const than = Number(limit);
  const holds = (value: number | boolean): boolean => {
    if (sign === undefined) return (value === true) !== (not !== undefined);
    const number = Number(value);
    if (sign === "<") return number < than;
    if (sign === ">=") return number >= than;
    return sign === ">" ? number > than : number === than;
  };
  return { reading, args: args === "" ? [] : args.split(",").map(Number), holds };
}

function callNode(name: string, args: string): Node {
  const values = args.split(",").map((each) => each.trim());
  return { kind: "call", name, args: values.map((each) => (/^[A-Z_]+$/.test(each) ? each : Number(each))) };
}

interface Line {
  readonly depth: number;
  readonly code: string;
}

function bodyOf(text: string, remark: RegExp): readonly Line[] {
  const body = text.slice(text.search(/^(def routine\(\):|void routine\(void\) \{)$/m));
  return body
    .split("\n")
    .slice(1)
    .map((line) => line.replace(remark, "").trimEnd())
    .filter((line) => line.trim() !== "")
    .map((line) => ({ depth: line.search(/\S/), code: line.trim() }));
}

function fromPython(text: string): readonly Node[] {
  const lines = bodyOf(text, /#.*$/);
  let at = 0;
  const block = (depth: number): Node[] => {
    const nodes: Node[] = [];
    while (at < lines.length && lines[at]!.depth === depth) {
      const { code } = lines[at++]!;
      const rounds = /^for \w+ in range\((\d+)\):$/.exec(code);
      const branch = /^if (.*):$/.exec(code);
      const call = /^(\w+)\((.*)\)$/.exec(code);
      if (rounds) nodes.push({ kind: "rounds", atMost: Number(rounds[1]), body: block(lines[at]!.depth) });
      else if (branch && lines[at]!.code === "break") {
        at++;
        nodes.push({ kind: "leave", test: testOf(branch[1]!) });
      } else if (branch) {
        const yes = block(lines[at]!.depth);
        const isElse = lines[at]?.depth === depth && lines[at]?.code === "else:";
        if (isElse) at++;
        nodes.push({ kind: "if", test: testOf(branch[1]!), yes, no: isElse ? block(lines[at]!.depth) : [] });
      } else if (call) nodes.push(callNode(call[1]!, call[2]!));
      else if (code !== "pass") throw new Error(`not understood: ${code}`);
    }
    return nodes;
  };
  return block(lines[0]?.depth ?? 0);
}

function fromC(text: string): readonly Node[] {
  const lines = bodyOf(text, /\/\/.*$/).map(({ code }) => code);
  let at = 0;
  const block = (): Node[] => {
    const nodes: Node[] = [];
    for (; at < lines.length; ) {
      const code = lines[at++]!;
      if (code === "}" || code === "} else {") return nodes;
      const rounds = /^for \(int \w+ = 0; \w+ < (\d+); \w+\+\+\) \{$/.exec(code);
      const leave = /^if \((.*)\) break;$/.exec(code);
      const branch = /^if \((.*)\) \{$/.exec(code);
      const call = /^(\w+)\((.*)\);$/.exec(code);
      if (rounds) nodes.push({ kind: "rounds", atMost: Number(rounds[1]), body: block() });
      else if (leave) nodes.push({ kind: "leave", test: testOf(leave[1]!) });
      else if (branch) {
        const yes = block();
        const no = lines[at - 1] === "} else {" ? block() : [];
        nodes.push({ kind: "if", test: testOf(branch[1]!), yes, no });
      } else if (call) nodes.push(callNode(call[1]!, call[2]!));
      else throw new Error(`not understood: ${code}`);
    }
    return nodes;
  };
  return block();
}

const N = "(-?[0-9.]+)";
const CORNER = "\\(wedge (upper|lower) (left|right)\\)";
const SENTENCES: readonly (readonly [RegExp, (w: readonly string[]) => Node])[] = [
  [
    new RegExp(`^go to x ${N} mm, y ${N} mm, facing ${N} deg, at ${N} mm/s ${CORNER}$`),
    ([x, y, deg, speed, up, side]) =>
      callOf("go_to", Number(x), Number(y), Number(deg), Number(speed), corner(up, side)),
  ],
  [
    new RegExp(`^look around: turn (left|right) ${N} deg at ${N} deg/s and note every ball ${CORNER}$`),
    ([way, deg, rate, up, side]) => callOf("scan", signed(way, deg), Number(rate), corner(up, side)),
  ],
  [
    new RegExp(`^fetch the noted ball that takes least time, at ${N} mm/s ${CORNER}$`),
    ([speed, up, side]) => callOf("fetch", Number(speed), corner(up, side)),
  ],
  [
    new RegExp(`^drive (forward|backward) to the wall ${N} mm and push on ${N} mm at ${N} mm/s$`),
    ([way, mm, extra, speed]) => callOf("drive_to_wall", signed(way, mm), signed(way, extra), Number(speed)),
  ],
  [
    new RegExp(`^drive (forward|backward) ${N} mm at ${N} mm/s$`),
    ([way, mm, speed]) => callOf("drive", signed(way, mm), Number(speed)),
  ],
  [
    new RegExp(`^turn (left|right) ${N} deg at ${N} deg/s$`),
    ([way, deg, rate]) => callOf("turn", signed(way, deg), Number(rate)),
  ],
  [
    new RegExp(`^curve (left|right) ${N} deg over ${N} mm (forward|backward) at ${N} mm/s$`),
    ([side, deg, mm, way, speed]) => callOf("curve", signed(way, mm), signed(side, deg), Number(speed)),
  ],
  [new RegExp(`^wait ${N} s$`), ([s]) => callOf("wait", Number(s))],
];

function callOf(name: string, ...args: (number | string)[]): Node {
  return { kind: "call", name, args };
}

function signed(word: string | undefined, number: string | undefined): number {
  return Number(number) * (word === "backward" || word === "right" ? -1 : 1);
}

function corner(up: string | undefined, side: string | undefined): string {
  return `${up}_${side}`.toUpperCase();
}

const QUESTIONS: readonly (readonly [RegExp, (w: readonly string[]) => string])[] = [
  [/^a ball is noted$/, () => "balls_noted() > 0"],
  [/^no ball is noted$/, () => "balls_noted() == 0"],
  [/^a ball is in the pusher$/, () => "ball_in_pusher()"],
  [/^no ball is in the pusher$/, () => "!ball_in_pusher()"],
  [/^the floor below is the wedge$/, () => "over_wedge()"],
  [/^the floor below is plain$/, () => "!over_wedge()"],
  [/^the (front|back) has run into something$/, ([side]) => `${side}_bumped()`],
  [/^the (front|back) has run into nothing$/, ([side]) => `!${side}_bumped()`],
  [/^distance sensor (\d+) reads less than (\S+) mm$/, ([n, mm]) => `distance_mm(${n}) < ${mm}`],
  [/^distance sensor (\d+) reads (\S+) mm or more$/, ([n, mm]) => `distance_mm(${n}) >= ${mm}`],
  [/^less than (\S+) s are left$/, ([s]) => `seconds_left() < ${s}`],
  [/^(\S+) s or more are left$/, ([s]) => `seconds_left() >= ${s}`],
];

function questionOf(words: string): Test {
  for (const [pattern, code] of QUESTIONS) {
    const match = pattern.exec(words);
    if (match) return testOf(code(match.slice(1)));
  }
  throw new Error(`no question: ${words}`);
}

function fromSentences(text: string): readonly Node[] {
  // The steps begin behind the empty line.
  const all = text.split("\n");
  const lines = all.slice(all.indexOf("") + 1).map((line) => {
    const [, label = "", code = ""] = /^( *\d*\.? )(.*)$/.exec(line) ?? [];
    return { depth: label.length + code.search(/\S/), code: code.trim() };
  });
  let at = 0;
  const block = (depth: number): Node[] => {
    const nodes: Node[] = [];
    while (at < lines.length && lines[at]!.depth === depth && lines[at]!.code !== "otherwise:") {
      const { code } = lines[at++]!;
      const rounds = /^repeat at most (\d+) times(?:, until (.*))?:$/.exec(code);
      const branch = /^if (.*):$/.exec(code);
      if (rounds) {
        const leave: Node[] = rounds[2] ? [{ kind: "leave", test: questionOf(rounds[2]) }] : [];
        nodes.push({ kind: "rounds", atMost: Number(rounds[1]), body: [...leave, ...block(depth + 2)] });
      } else if (branch) {
        const yes = block(depth + 2);
        const isElse = lines[at]?.depth === depth && lines[at]?.code === "otherwise:";
        if (isElse) at++;
        nodes.push({ kind: "if", test: questionOf(branch[1]!), yes, no: isElse ? block(depth + 2) : [] });
      } else nodes.push(sentence(code));
    }
    return nodes;
  };
  return block(lines[0]?.depth ?? 0);
}

function sentence(code: string): Node {
  for (const [pattern, make] of SENTENCES) {
    const match = pattern.exec(code);
    if (match) return make(match.slice(1));
  }
  throw new Error(`not understood: ${code}`);
}

/** The params of each function, in order. */
const PARAMS: Readonly<Record<string, readonly string[]>> = {
  drive: ["mm", "mm_per_s"],
  turn: ["deg", "deg_per_s"],
  curve: ["mm", "deg", "mm_per_s"],
  drive_to_wall: ["mm", "extra_mm", "mm_per_s"],
  wait: ["s"],
  scan: ["deg", "deg_per_s", "corner"],
  fetch: ["mm_per_s", "corner"],
  go_to: ["x_mm", "y_mm", "deg", "mm_per_s", "corner"],
};

function argumentOf(text: string | number | undefined): number | string {
  const isName = typeof text === "string" && text.includes("-") && /[a-z]/.test(text);
  return isName ? text.toUpperCase().replace("-", "_") : Number(text);
}

interface AskedJson {
  readonly reading: string;
  readonly sensor: number | null;
  readonly lessThan: number | null;
  readonly wanted: string;
}

function askedTest({ reading, sensor, lessThan, wanted }: AskedJson): Test {
  const yes = wanted === "yes";
  const holds = (value: number | boolean): boolean => {
    if (lessThan !== null) return Number(value) < lessThan === yes;
    return (typeof value === "number" ? value > 0 : value) === yes;
  };
  return { reading, args: sensor === null ? [] : [sensor], holds };
}

function fromCsv(text: string): readonly Node[] {
  const [header = "", ...rest] = text.trimEnd().split("\n");
  const names = header.split(",");
  const rows = rest.map((line) => {
    const cells = line.split(",");
    return new Map(names.map((name, i) => [name, cells[i] ?? ""]));
  });
  const numberOrNull = (cell: string | undefined): number | null => (cell ? Number(cell) : null);
  const asked = (row: ReadonlyMap<string, string>): Test =>
    askedTest({
      reading: row.get("ask") ?? "",
      sensor: numberOrNull(row.get("sensor")),
      lessThan: numberOrNull(row.get("less_than")),
      wanted: row.get("wanted") ?? "",
    });
  const block = (inside: string, on: string): Node[] =>
    rows
      .filter((row) => row.get("inside") === inside && row.get("on") === on)
      .map((row): Node => {
        const [name = "", step = ""] = [row.get("do"), row.get("step")];
        if (name === "repeat") {
          const leave: Node[] = row.get("ask") === "" ? [] : [{ kind: "leave", test: asked(row) }];
          return { kind: "rounds", atMost: Number(row.get("at_most")), body: [...leave, ...block(step, "")] };
        }
        if (name === "if")
          return { kind: "if", test: asked(row), yes: block(step, "yes"), no: block(step, "no") };
        return callOf(name, ...(PARAMS[name] ?? []).map((param) => argumentOf(row.get(param))));
      });
  return block("", "");
}

interface JsonLine {
  readonly call?: string;
  readonly args?: Readonly<Record<string, number | string>>;
  readonly repeat?: { readonly atMost: number; readonly until: AskedJson | null };
  readonly steps?: readonly JsonLine[];
  readonly if?: AskedJson;
  readonly yes?: readonly JsonLine[];
  readonly no?: readonly JsonLine[];
}

function fromJson(text: string): readonly Node[] {
  const block = (lines: readonly JsonLine[] = []): Node[] =>
    lines.map((line): Node => {
      if (line.repeat) {
        const { atMost, until } = line.repeat;
        const leave: Node[] = until === null ? [] : [{ kind: "leave", test: askedTest(until) }];
        return { kind: "rounds", atMost, body: [...leave, ...block(line.steps)] };
      }
      if (line.if) return { kind: "if", test: askedTest(line.if), yes: block(line.yes), no: block(line.no) };
      const name = line.call ?? "";
      return callOf(name, ...(PARAMS[name] ?? []).map((param) => argumentOf(line.args?.[param])));
    });
  return block((JSON.parse(text) as { readonly steps: readonly JsonLine[] }).steps);
}
