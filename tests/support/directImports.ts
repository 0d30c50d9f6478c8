import type { Plugin } from "vite";

/** What of the syntax tree is looked at; positions count characters of the code. */
interface Statement {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly source?: { readonly value: unknown; readonly raw?: string | null } | null;
  readonly specifiers?: readonly Specifier[];
  readonly declaration?: { readonly type: string; readonly kind?: string } | null;
}

interface Specifier {
  readonly type: string;
  readonly local: { readonly name?: string };
  readonly imported?: { readonly name?: string };
}

/**
 * Lets the tests run our code as fast as the bundles do. Vitest turns every use of an imported name into a look-up in
 * the other module's object, by name: in the trial's inner loop that costs three to eight times the speed. Here a module
 * keeps what it imports in constants of its own, as a bundle does. That is the same as long as no module exports a
 * variable, which is refused, and none uses what it imports in a circle while it loads, which throws.
 */
export function directImports(): Plugin {
  return {
    name: "direct-imports",
    enforce: "post",
    transform(code, id) {
      if (id.includes("/node_modules/") || !/\.ts$/.test(id)) return null;
      const body = this.parse(code).body as unknown as readonly Statement[];
      return { code: withConstants(code, body), map: null };
    },
  };
}

/** Lines keep their numbers. */
function withConstants(code: string, body: readonly Statement[]): string {
  let out = "";
  let done = 0;
  for (const statement of body) {
    if (statement.declaration?.kind === "let" || statement.declaration?.kind === "var") {
      throw new Error(
        `${code.slice(statement.start, statement.end)}: export a function or an object instead`,
      );
    }
    const constants = constantsOf(statement);
    if (constants === null) continue;
    out += code.slice(done, statement.start) + constants;
    done = statement.end;
  }
  return out + code.slice(done);
}

/** The import with a constant for each name; null where it is none of named things from one of our modules. */
function constantsOf({ type, source, specifiers = [] }: Statement): string | null {
  const from = source?.value;
  if (type !== "ImportDeclaration" || typeof from !== "string" || !from.startsWith(".")) return null;
  if (specifiers.length === 0 || specifiers.some((each) => each.type !== "ImportSpecifier")) return null;
  const names = specifiers.map(({ local, imported }) => ({ own: local.name, theirs: imported?.name }));
  const imports = names.map(({ own, theirs }) => `${theirs} as imported_${own}`).join(", ");
  const constants = names.map(({ own }) => `${own} = imported_${own}`).join(", ");
  return `import { ${imports} } from ${JSON.stringify(from)}; const ${constants};`;
}
