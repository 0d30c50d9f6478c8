import { parse } from "svelte/compiler";
import ts from "typescript";

/**
 * Words for people that stand in program text instead of in src/texts: string literals and parts of templates, and in
 * components also what is read aloud. What is thrown is left out (a caller's bug speaks English), and so are types,
 * imports, keys and codes that are only compared. A finding is "line: what".
 */
export function looseTextFindings(path: string, text: string): string[] {
  const found = path.endsWith(".svelte") ? inComponent(text) : inScript(text, 0);
  return found.map(({ at, words }) => `${text.slice(0, at).split("\n").length}: ${words}`);
}

interface Loose {
  readonly at: number;
  readonly words: string;
}

/** Names of keys and of typefaces, and this program's own: they look like labels and are none. */
const NAMES = new Set(["Wedgeward", "Space", "Infinity"]);

/** Whether it reads like words for people: two beside each other, or one that begins like a label. */
function speaks(text: string): boolean {
  const words = text
    .replace(/<style>[\s\S]*?<\/style>/g, "")
    // Tags, also where a value cuts them in two.
    .replace(/<[^>]*(>|$)/g, "")
    .replace(/^"[^<>]*=("|[^<>]*>)/, "")
    .replace(/[\w-]+="[^"]*("|$)/g, "");
  // Media queries, lists of typefaces.
  if (/^\([\w-]+: [\w-]+\)$|\bserif\b/.test(words)) return false;
  return /[a-z]{2,}[,;:.]? +[a-z]{2,}/i.test(words) || isLabel(words.trim());
}

function isLabel(word: string): boolean {
  return /^[A-Z][a-z]{2,}[.:!?…]?$/.test(word) && !NAMES.has(word);
}

/** Comments are for engineers. */
const HOW = {
  languageVersion: ts.ScriptTarget.ES2023,
  jsDocParsingMode: ts.JSDocParsingMode.ParseNone,
};

function inScript(text: string, offset: number): Loose[] {
  const file = ts.createSourceFile("a.ts", text, HOW, true);
  const found: Loose[] = [];
  const visit = (node: ts.Node): void => {
    if (isUnspoken(node)) return;
    if (ts.isStringLiteralLike(node) || isTemplatePart(node)) {
      const isFound = speaks(node.text) || (isShown(node) && /[a-z]{3}/i.test(node.text));
      if (isFound) found.push({ at: offset + node.getStart(file), words: node.text });
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

function isTemplatePart(node: ts.Node): node is ts.TemplateHead | ts.TemplateMiddle | ts.TemplateTail {
  return ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node);
}

/** Functions that take a selector, a query or a key, and no words. */
const WORDLESS = /^(closest|matches|matchMedia|querySelector(All)?|includes|startsWith|endsWith|getContext)$/;

function isUnspoken(node: ts.Node): boolean {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isTypeNode(node)) return true;
  if (ts.isSourceFile(node)) return false;
  if (ts.isThrowStatement(node)) return true;
  if (ts.isNewExpression(node)) return /Error$/.test(node.expression.getText());
  const { parent } = node;
  if (ts.isCaseClause(parent)) return parent.expression === node;
  if (ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent)) return parent.name === node;
  if (ts.isBinaryExpression(parent)) return /^[!=]==$/.test(parent.operatorToken.getText());
  if (!ts.isCallExpression(parent) || parent.expression === node) return false;
  return WORDLESS.test(calledBy(parent));
}

function calledBy({ expression }: ts.CallExpression): string {
  return ts.isPropertyAccessExpression(expression) ? expression.name.text : expression.getText();
}

/** Functions that write words into a drawing, and which of their arguments that is. */
const WRITERS: ReadonlyMap<string, number> = new Map([
  ["label", 0],
  ["textAt", 2],
]);

/** Where any word is shown, also a small one: a label in the drawing, a property of words. */
function isShown(node: ts.Node): boolean {
  const { parent } = node;
  if (ts.isConditionalExpression(parent) || ts.isParenthesizedExpression(parent)) return isShown(parent);
  if (ts.isCallExpression(parent)) return node === parent.arguments[WRITERS.get(calledBy(parent)) ?? -1];
  return ts.isPropertyAssignment(parent) && SAID.test(parent.name.getText());
}

/** Properties and attributes that hold words for people. */
const SAID = /^"?(words|title|label|hint|message|description|alt|placeholder|aria-label|aria-description)"?$/;

function inComponent(text: string): Loose[] {
  const { fragment, instance, module } = parse(text, { modern: true });
  const found: Loose[] = [];
  const script = (start: number, end: number) => found.push(...inScript(text.slice(start, end), start));
  for (const each of [module, instance]) {
    if (each) script(text.indexOf(">", each.start) + 1, text.lastIndexOf("<", each.end - 1));
  }
  const visit = (node: unknown, isSaid: (text: string) => boolean): void => {
    if (typeof node !== "object" || node === null) return;
    if (!isMarkup(node)) for (const each of Object.values(node)) visit(each, isSaid);
    else if (node.type === "Text") {
      if (isSaid(node.data)) found.push({ at: node.start, words: node.data.trim() });
    } else if (node.type === "ExpressionTag") script(node.start + 1, node.end - 1);
    else if (node.type !== "Attribute") for (const each of Object.values(node)) visit(each, isRead);
    else if (!UNREAD.test(node.name)) visit([...Object.values(node)], SAID.test(node.name) ? isRead : speaks);
  };
  visit(fragment, isRead);
  return found;
}

/** Whatever stands between tags is read; units and signs need no language. */
function isRead(text: string): boolean {
  return /[a-z]{3}/i.test(text) && !NAMES.has(text.trim());
}

/** Attributes of several words that nobody reads. */
const UNREAD = /^(class|style|d|points|transform|viewBox|aria-labelledby|aria-describedby)$/;

interface MarkupNode {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly data: string;
  readonly name: string;
}

function isMarkup(value: object): value is MarkupNode {
  return "type" in value && "start" in value && "end" in value;
}
