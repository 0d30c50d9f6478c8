import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { EXACT_MATH, IMPURE_GLOBALS, LOCALE_METHODS, ROOMS, type Room } from "./rooms.ts";

/** Reads source text, never runs it. A finding is "line: what". */

export const top = fileURLToPath(new URL("../..", import.meta.url));

/** Paths, relative to the project, of the files below a directory that hold program text. */
export function programFiles(directory: string): string[] {
  return readdirSync(`${top}${directory}`, { recursive: true, encoding: "utf8" })
    .map((name) => `${directory}/${name.split("\\").join("/")}`)
    .filter((path) => /\.(ts|js|mjs|svelte)$/.test(path))
    .sort();
}

export const read = (path: string): string => readFileSync(`${top}${path}`, "utf8");

/** The program text of a file: of a component, its scripts. Lines keep their numbers. */
function scriptOf(path: string, text: string): string {
  if (!path.endsWith(".svelte")) return text;
  const blank = (part: string): string => part.replace(/[^\n]/g, " ");
  let script = "";
  let end = 0;
  for (const match of text.matchAll(/<script\b[^>]*>([\s\S]*?)<\/script>/g)) {
    const body = match[1] ?? "";
    const start = match.index + match[0].indexOf(">") + 1;
    script += blank(text.slice(end, start)) + body;
    end = start + body.length;
  }
  return script + blank(text.slice(end));
}

/** Imports of a file that the table does not allow. */
export function importFindings(path: string, text: string): string[] {
  const room = roomOf(path);
  if (!room) return ["1: the file is in no room of tests/support/rooms.ts"];
  const script = scriptOf(path, text);
  return ts.preProcessFile(script, true, true).importedFiles.flatMap(({ fileName, pos }) => {
    const fault = fileName.startsWith(".") ? pathFault(path, room, fileName) : packageFault(room, fileName);
    return fault ? [`${script.slice(0, pos).split("\n").length}: ${fault}`] : [];
  });
}

function roomOf(path: string): Room | undefined {
  const name = path.split("/")[1];
  return path.split("/").length > 2 ? ROOMS.find((room) => room.name === name) : undefined;
}

function pathFault(path: string, room: Room, specifier: string): string | null {
  const target = new URL(specifier, `file:///${path}`).pathname.slice(1);
  if (target.startsWith("fields/")) return room.core ? `${room.name} reads ${target}` : null;
  const other = roomOf(target);
  if (!other) return `${specifier} leads out of src`;
  if (!/\.[a-z]+(\?[a-z&=]+)?$/.test(specifier)) return `${specifier} has no file extension`;
  const isAbove = ROOMS.indexOf(other) > ROOMS.indexOf(room);
  const isApart = room.apart?.includes(other.name) ?? false;
  return isAbove || isApart ? `${room.name} imports ${other.name} (${specifier})` : null;
}

function packageFault(room: Room, specifier: string): string | null {
  const isAllowed = room.packages.some((name) =>
    name.endsWith("*") ? specifier.startsWith(name.slice(0, -1)) : `${specifier}/`.startsWith(`${name}/`),
  );
  return isAllowed ? null : `${room.name} imports the package ${specifier}`;
}

/** Places in the text of a core room whose result could differ between runs, machines or engines. */
export function purityFindings(path: string, text: string): string[] {
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.ES2023, true);
  const findings: string[] = [];
  const visit = (node: ts.Node): void => {
    const fault = purityFault(node);
    if (fault) findings.push(`${file.getLineAndCharacterOfPosition(node.getStart(file)).line + 1}: ${fault}`);
    ts.forEachChild(node, visit);
  };
  visit(file);
  return findings;
}

function purityFault(node: ts.Node): string | null {
  if (ts.isBinaryExpression(node)) {
    const operator = node.operatorToken.kind;
    const isPower =
      operator === ts.SyntaxKind.AsteriskAsteriskToken ||
      operator === ts.SyntaxKind.AsteriskAsteriskEqualsToken;
    return isPower ? "** differs between engines" : null;
  }
  if (!ts.isIdentifier(node)) return null;
  if (ts.isPropertyAccessExpression(node.parent) && node.parent.name === node) {
    return LOCALE_METHODS.has(node.text) ? `${node.text} depends on the machine's language` : null;
  }
  if (node.text === "Math") return mathFault(node);
  return IMPURE_GLOBALS.has(node.text) && isReference(node) ? `${node.text} is not pure` : null;
}

function mathFault(node: ts.Identifier): string | null {
  const { parent } = node;
  if (!ts.isPropertyAccessExpression(parent) || parent.expression !== node)
    return "Math other than as Math.name";
  return EXACT_MATH.has(parent.name.text) ? null : `Math.${parent.name.text} differs between engines`;
}

/** Whether the name stands for a value here, and not for a property, a key or a type member of that name. */
function isReference(node: ts.Identifier): boolean {
  const { parent } = node;
  const isName =
    (ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent) || ts.isMethodDeclaration(parent)) &&
    parent.name === node;
  return !isName;
}

/** Property tests whose run could not be repeated because they state no seed. */
export function seedFindings(path: string, text: string): string[] {
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.ES2023, true);
  const findings: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && /^fc\.(assert|check|sample)$/.test(node.expression.getText(file))) {
      const options = node.arguments[1];
      if (!options || !statesSeed(options, file)) {
        findings.push(
          `${file.getLineAndCharacterOfPosition(node.getStart(file)).line + 1}: fc.assert without a seed`,
        );
      }
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return findings;
}

/** An object literal with a seed, or a name under which the same file keeps one. */
function statesSeed(options: ts.Expression, file: ts.SourceFile): boolean {
  if (ts.isObjectLiteralExpression(options)) {
    return options.properties.some(
      (part) =>
        part.name?.getText(file) === "seed" ||
        (ts.isSpreadAssignment(part) && statesSeed(part.expression, file)),
    );
  }
  if (!ts.isIdentifier(options)) return false;
  const kept = file.statements
    .filter(ts.isVariableStatement)
    .flatMap((statement) => [...statement.declarationList.declarations])
    .find((declaration) => declaration.name.getText(file) === options.text);
  return kept?.initializer !== undefined && statesSeed(unwrapped(kept.initializer), file);
}

const unwrapped = (value: ts.Expression): ts.Expression =>
  ts.isAsExpression(value) || ts.isSatisfiesExpression(value) ? value.expression : value;
